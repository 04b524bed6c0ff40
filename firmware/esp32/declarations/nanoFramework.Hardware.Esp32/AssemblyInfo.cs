// nanoFramework.Hardware.Esp32 1.6.40
using System.Reflection;

[assembly: AssemblyVersion("1.6.40.0")]
