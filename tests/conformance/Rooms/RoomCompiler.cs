using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using NanoDustSwitch.ConformanceTests.Projects;

namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>Compiles the sources of the rooms in memory, so that each name in them can be asked for what it stands for.</summary>
internal static class RoomCompiler
{
    // What the SDK adds where a project has ImplicitUsings.
    private const string GlobalUsings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; "
        + "global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;";

    private static readonly string[] s_notCompiled = ["bin/", "obj/", "device/", "declarations/", "image/"];

    private static readonly Dictionary<(Room Room, bool IsForDevice), CSharpCompilation> s_compiled = [];

    private static readonly MetadataReference[] s_desktop =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(file => !Path.GetFileName(file).StartsWith("NanoDustSwitch.", StringComparison.Ordinal))
            .Select(file => MetadataReference.CreateFromFile(file)),
    ];

    private static MetadataReference[] Device =>
    [
        .. DeviceAssemblies.Declarations.Append("mscorlib.dll")
            .Select(file => MetadataReference.CreateFromFile(DeviceAssemblies.PathOf(file))),
    ];

    /// <summary>Compiles a room, with the rooms that its project refers to.</summary>
    public static CSharpCompilation Compile(Room room) => Compile(room, room.IsDeviceOnly);

    /// <summary>Makes a source of a text.</summary>
    /// <param name="path">Where it would be, from the repository's root.</param>
    /// <param name="text">The text.</param>
    public static SyntaxTree Parse(string path, string text) => CSharpSyntaxTree.ParseText(text, path: path);

    private static CSharpCompilation Compile(Room room, bool isForDevice)
    {
        lock (s_compiled)
        {
            if (!s_compiled.TryGetValue((room, isForDevice), out var compilation))
            {
                compilation = CSharpCompilation.Create(
                    room.Assembly,
                    [.. Sources(room), Parse("", isForDevice ? "" : GlobalUsings + Friends())],
                    [
                        .. isForDevice ? Device : s_desktop,
                        .. ReferredTo(room).Select(other => Compile(other, isForDevice).ToMetadataReference()),
                    ],
                    new CSharpCompilationOptions(
                        room.IsProgram ? OutputKind.ConsoleApplication : OutputKind.DynamicallyLinkedLibrary, allowUnsafe: true));
                s_compiled.Add((room, isForDevice), compilation);
            }

            return compilation;
        }
    }

    private static IEnumerable<SyntaxTree> Sources(Room room)
    {
        string root = Repository.PathOf(room.Folder);
        return Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(root, file).Replace('\\', '/'))
            .Where(path => !Array.Exists(s_notCompiled, folder => path.StartsWith(folder, StringComparison.Ordinal)))
            .Select(path => Parse($"{room.Folder}/{path}", Repository.ReadText($"{room.Folder}/{path}")));
    }

    // A project sees what the projects see that it refers to.
    private static IEnumerable<Room> ReferredTo(Room room)
    {
        var named = RoomTable.All.Where(other => room.References().Contains(Path.GetFileName(other.Project))).ToList();
        return named.Concat(named.SelectMany(ReferredTo)).Distinct();
    }

    private static string Friends() => string.Concat(
        RoomTable.All.Select(room => $"[assembly: System.Runtime.CompilerServices.InternalsVisibleTo(\"{room.Assembly}\")] "));
}
