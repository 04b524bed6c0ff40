using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests;

/// <summary>Finds what an assembly refers to among the device's own assemblies, and nowhere else. Each is read once.</summary>
internal sealed class DeviceResolver : IAssemblyResolver
{
    private readonly Dictionary<string, AssemblyDefinition> _assemblies = new(StringComparer.Ordinal);

    public AssemblyDefinition Read(string fileName)
    {
        if (!_assemblies.TryGetValue(fileName, out var assembly))
        {
            var path = DeviceAssemblies.PathOf(fileName);
            assembly = AssemblyDefinition.ReadAssembly(path, new ReaderParameters { AssemblyResolver = this, InMemory = true });
            _assemblies[fileName] = assembly;
        }

        return assembly;
    }

    public AssemblyDefinition Resolve(AssemblyNameReference name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var fileName = name.Name + ".dll";
        return File.Exists(DeviceAssemblies.PathOf(fileName)) ? Read(fileName) : throw new AssemblyResolutionException(name);
    }

    public AssemblyDefinition Resolve(AssemblyNameReference name, ReaderParameters parameters) => Resolve(name);

    public void Dispose()
    {
        foreach (var assembly in _assemblies.Values)
        {
            assembly.Dispose();
        }
    }
}
