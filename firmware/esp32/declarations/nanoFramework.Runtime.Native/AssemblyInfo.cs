// nanoFramework.Runtime.Native 1.7.11
using System.Reflection;

[assembly: AssemblyVersion("1.7.11.0")]
