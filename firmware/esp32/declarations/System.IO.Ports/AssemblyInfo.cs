// nanoFramework.System.IO.Ports 1.1.139
using System.Reflection;

[assembly: AssemblyVersion("1.1.139.0")]
