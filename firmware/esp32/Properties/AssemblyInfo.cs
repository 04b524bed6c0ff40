using System.Reflection;

[assembly: AssemblyTitle("NanoDustSwitch.Esp32")]
[assembly: AssemblyProduct("nanoDustSwitch")]
[assembly: AssemblyCopyright("Copyright 2026 the nanoDustSwitch authors")]
[assembly: AssemblyVersion("0.1.0.0")]
[assembly: AssemblyFileVersion("0.1.0.0")]
