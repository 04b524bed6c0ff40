// nanoFramework.System.IO.FileSystem 1.1.93
using System.Reflection;

[assembly: AssemblyVersion("1.1.93.0")]
