using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>
/// Finds which folder uses which. From the sources and not from the compiled assemblies, in which the name of a constant is its value.
/// </summary>
internal static class FolderUses
{
    /// <summary>Finds them.</summary>
    /// <param name="room">The room whose sources are looked at.</param>
    /// <param name="compilation">Its sources.</param>
    /// <param name="rooms">All rooms.</param>
    /// <returns>Every use of another folder, in this room or another.</returns>
    public static IEnumerable<FolderUse> Of(Room room, CSharpCompilation compilation, IReadOnlyList<Room> rooms)
    {
        foreach (var tree in compilation.SyntaxTrees)
        {
            var model = compilation.GetSemanticModel(tree);
            foreach (var node in tree.GetRoot().DescendantNodes().Where(node => node is SimpleNameSyntax or ImplicitObjectCreationExpressionSyntax))
            {
                foreach (var path in Declarations(model.GetSymbolInfo(node)))
                {
                    var used = rooms.Single(one => path.StartsWith(one.Folder + "/", StringComparison.Ordinal));
                    var (from, to) = (FolderOf(tree.FilePath, room), FolderOf(path, used));
                    if (used != room || from != to)
                    {
                        yield return new FolderUse(
                            tree.FilePath,
                            tree.GetLineSpan(node.Span).StartLinePosition.Line + 1,
                            node is SimpleNameSyntax name ? name.Identifier.Text : "new",
                            used,
                            from,
                            to);
                    }
                }
            }
        }
    }

    private static IEnumerable<string> Declarations(SymbolInfo info)
    {
        var symbol = info.Symbol is IMethodSymbol { ReducedFrom: { } extension } ? extension : info.Symbol;
        return symbol is null or INamespaceSymbol
            ? []
            : symbol.OriginalDefinition.DeclaringSyntaxReferences.Select(reference => reference.SyntaxTree.FilePath).Where(path => path.Length > 0).Distinct();
    }

    private static string FolderOf(string path, Room room) =>
        Path.GetDirectoryName(path[(room.Folder.Length + 1)..]) is { Length: > 0 } folder ? folder.Replace('\\', '/') : Room.Top;
}
