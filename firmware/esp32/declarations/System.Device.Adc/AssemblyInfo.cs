// nanoFramework.System.Device.Adc 1.1.24
using System.Reflection;

[assembly: AssemblyVersion("1.1.24.44037")]
