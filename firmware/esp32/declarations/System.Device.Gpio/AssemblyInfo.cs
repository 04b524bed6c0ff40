// nanoFramework.System.Device.Gpio 1.1.62
using System.Reflection;

[assembly: AssemblyVersion("1.1.62.0")]
