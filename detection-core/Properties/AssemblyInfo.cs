using System.Reflection;
using NanoDustSwitch.Detection;

[assembly: AssemblyTitle("NanoDustSwitch.Detection")]
[assembly: AssemblyProduct("nanoDustSwitch")]
[assembly: AssemblyCopyright("Copyright 2026 the nanoDustSwitch authors")]
[assembly: AssemblyVersion(ProductVersion.Text + ".0")]
[assembly: AssemblyFileVersion(ProductVersion.Text + ".0")]
