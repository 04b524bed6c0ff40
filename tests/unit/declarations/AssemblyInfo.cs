using System.Reflection;

[assembly: AssemblyVersion("3.0.80.0")]
