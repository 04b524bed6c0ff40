using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>
/// Finds which folder uses which. In the sources and not in the compiled assemblies, where nothing but its value is left of a
/// constant.
/// </summary>
internal static class FolderUses
{
    /// <summary>Finds every use of another folder, in this room or in another.</summary>
    /// <param name="room">The room.</param>
    /// <param name="compilation">Its sources.</param>
    /// <param name="tree">The source that is looked at.</param>
    public static IEnumerable<FolderUse> Of(Room room, CSharpCompilation compilation, SyntaxTree tree)
    {
        var model = compilation.GetSemanticModel(tree);
        var names = tree.GetRoot().DescendantNodes()
            .Where(node => node is SimpleNameSyntax or ImplicitObjectCreationExpressionSyntax);
        foreach (var node in names)
        {
            foreach (var path in FilesOf(model.GetSymbolInfo(node).Symbol))
            {
                var used = RoomTable.All.Single(one => path.StartsWith(one.Folder + "/", StringComparison.Ordinal));
                var (from, to) = (FolderOf(room, tree.FilePath), FolderOf(used, path));
                if (used.Folder != room.Folder || from != to)
                {
                    var line = tree.GetLineSpan(node.Span).StartLinePosition.Line + 1;
                    yield return new FolderUse(
                        tree.FilePath, line, node is SimpleNameSyntax name ? name.Identifier.Text : "new", from, used, to);
                }
            }
        }
    }

    // A namespace is at home in many folders, and a name of it alone uses none of them.
    private static IEnumerable<string> FilesOf(ISymbol? symbol)
    {
        var declared = symbol is IMethodSymbol { ReducedFrom: { } extension } ? extension : symbol?.OriginalDefinition;
        declared = declared is { IsImplicitlyDeclared: true, ContainingType: { } type } ? type : declared;
        return declared is null or INamespaceSymbol
            ? []
            : declared.DeclaringSyntaxReferences.Select(reference => reference.SyntaxTree.FilePath)
                .Where(path => path.Length > 0)
                .Distinct();
    }

    private static string FolderOf(Room room, string path)
    {
        var inRoom = path[(room.Folder.Length + 1)..];
        return inRoom.Contains('/', StringComparison.Ordinal) ? inRoom[..inRoom.LastIndexOf('/')] : Room.Top;
    }
}
