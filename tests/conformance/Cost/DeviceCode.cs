using System.Reflection;
using System.Runtime.Loader;
using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>The builds for the device, loaded into the PC's runtime, with or without the meter in them.</summary>
internal sealed class DeviceCode : AssemblyLoadContext
{
    private const string BenchName = "CostBench";
    private const string LibraryName = "mscorlib";

    private readonly Dictionary<string, Assembly> _assemblies = new(StringComparer.Ordinal);

    public DeviceCode(bool isMetered)
    {
        using var resolver = new DeviceResolver();
        var instrumenter = new Instrumenter();
        var images = new List<AssemblyDefinition>();
        foreach (var file in DeviceAssemblies.Product.Append(BenchName + ".dll"))
        {
            var image = resolver.Read(file);
            images.Add(image);
            if (isMetered)
            {
                instrumenter.Instrument(image, IsCounted);
            }
        }

        foreach (var file in DeviceAssemblies.Declarations)
        {
            var image = resolver.Read(file);
            images.Add(image);
            LibraryStandIn.Fill(image, isMetered);
        }

        Methods = instrumenter.Methods;
        foreach (var image in images)
        {
            _assemblies[image.Name.Name] = Load(image);
        }
    }

    /// <summary>Gets the counted methods by their number.</summary>
    public IReadOnlyList<string> Methods { get; }

    /// <summary>Gives a public static method of the bench.</summary>
    /// <typeparam name="T">Its signature.</typeparam>
    /// <param name="type">Its type, below the bench's namespace.</param>
    /// <param name="method">Its name.</param>
    public T Bench<T>(string type, string method)
        where T : Delegate =>
        _assemblies[BenchName]
            .GetType($"NanoDustSwitch.CostBench.{type}", throwOnError: true)!
            .GetMethod(method)!
            .CreateDelegate<T>();

    protected override Assembly? Load(AssemblyName assemblyName)
    {
        ArgumentNullException.ThrowIfNull(assemblyName);
        return assemblyName.Name == typeof(Meter).Assembly.GetName().Name
            ? typeof(Meter).Assembly
            : _assemblies.GetValueOrDefault(assemblyName.Name!);
    }

    // The bench's board and its driving are no part of what a device executes.
    private static bool IsCounted(TypeDefinition type) =>
        type.Module.Assembly.Name.Name != BenchName || type.Namespace.EndsWith(".Counted", StringComparison.Ordinal);

    private Assembly Load(AssemblyDefinition image)
    {
        // The PC's library of the same name; it has all that the device's has.
        var library = image.MainModule.AssemblyReferences.Single(reference => reference.Name == LibraryName);
        library.Version = new Version(4, 0, 0, 0);
        library.PublicKeyToken = [0xb7, 0x7a, 0x5c, 0x56, 0x19, 0x34, 0xe0, 0x89];
        using var stream = new MemoryStream();
        image.Write(stream);
        stream.Position = 0;
        return LoadFromStream(stream);
    }
}
