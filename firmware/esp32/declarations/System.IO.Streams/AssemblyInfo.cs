// nanoFramework.System.IO.Streams 1.1.96
using System.Reflection;

[assembly: AssemblyVersion("1.1.96.0")]
