using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// What the device's library lacks the compiler puts into the assembly itself: attributes for 'readonly struct', 'in' and
/// nullable annotations, and a class with the data of array initialisers and the hashes of long switches over texts. They cost
/// room in every image, and nobody has tried that data on the device.
/// </summary>
internal sealed class NoCompilerTypesRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
    [
        .. Uses.TypesOf(assembly).Where(IsTheCompilers).Select(type => $"{type.FullName}: is put in by the compiler"),
        .. Uses.Types(assembly).Where(use => use.Type is TypeDefinition type && IsTheCompilers(type))
            .Select(use => $"{use.Place}: needs {use.Type.FullName}"),
    ];

    // Its classes for lambdas are no matter: they stand within a class of ours.
    private static bool IsTheCompilers(TypeDefinition type) =>
        type.DeclaringType is null
            ? type.Namespace is "Microsoft.CodeAnalysis" or "System.Runtime.CompilerServices"
                || (type.Name.StartsWith('<') && type.Name != "<Module>")
            : IsTheCompilers(type.DeclaringType);
}
