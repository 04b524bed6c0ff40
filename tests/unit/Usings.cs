// The only place that knows on which side the tests run: the rest names test attributes and Assert without their home.
#if NANOFRAMEWORK_1_0
global using nanoFramework.TestFramework;
#else
global using Microsoft.VisualStudio.TestTools.UnitTesting;
#endif
