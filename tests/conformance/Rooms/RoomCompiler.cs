using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using NanoDustSwitch.ConformanceTests.Projects;

namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>Compiles the sources of the rooms in memory, so that each name in them can be asked for what it stands for.</summary>
/// <param name="rooms">All rooms.</param>
internal sealed class RoomCompiler(IReadOnlyList<Room> rooms)
{
    // What the SDK adds to a project with ImplicitUsings.
    private const string GlobalUsings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; "
        + "global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;";

    private static readonly string[] s_left = ["bin/", "obj/", "device/", "declarations/"];

    private static readonly MetadataReference[] s_desktop =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(file => !Path.GetFileName(file).StartsWith("NanoDustSwitch.", StringComparison.Ordinal))
            .Select(file => MetadataReference.CreateFromFile(file)),
    ];

    private static MetadataReference[] Device =>
    [
        .. DeviceAssemblies.Declarations.Append("mscorlib.dll").Select(file => MetadataReference.CreateFromFile(DeviceAssemblies.PathOf(file))),
    ];

    private readonly Dictionary<(Room Room, bool IsDevice), CSharpCompilation> _compiled = [];

    /// <summary>Compiles a room with the rooms that it may use.</summary>
    /// <param name="room">The room.</param>
    /// <returns>Its sources; their paths are those from the repository's root.</returns>
    public CSharpCompilation Compile(Room room) => Compile(room, room.IsDeviceOnly);

    /// <summary>Compiles a source in the place of another, or beside those of a room.</summary>
    /// <param name="room">The room.</param>
    /// <param name="path">Where the source would be, from the room's folder.</param>
    /// <param name="text">The source.</param>
    /// <returns>All sources of the room with this one.</returns>
    public CSharpCompilation CompileWith(Room room, string path, string text) => Compile(room).AddSyntaxTrees(Parse($"{room.Folder}/{path}", text));

    private static SyntaxTree Parse(string path, string text) =>
        CSharpSyntaxTree.ParseText(text, new CSharpParseOptions(LanguageVersion.Latest), path);

    private CSharpCompilation Compile(Room room, bool isDevice)
    {
        if (_compiled.TryGetValue((room, isDevice), out var known))
        {
            return known;
        }

        var friends = string.Concat(rooms.Select(one => $"[assembly: System.Runtime.CompilerServices.InternalsVisibleTo(\"{one.Assembly}\")] "));
        var sources = Repository.Sources(room.Folder)
            .Where(path => !Array.Exists(s_left, folder => path.StartsWith(folder, StringComparison.Ordinal)))
            .Select(path => Parse($"{room.Folder}/{path}", Repository.ReadText($"{room.Folder}/{path}")));
        var compilation = CSharpCompilation.Create(
            room.Assembly,
            [.. sources, Parse("", isDevice ? "" : GlobalUsings + friends)],
            [
                .. isDevice ? Device : s_desktop,
                .. room.Uses.Select(used => Compile(rooms.Single(one => one.Folder == used), isDevice).ToMetadataReference()),
            ],
            new CSharpCompilationOptions(OutputKind.ConsoleApplication, allowUnsafe: true, nullableContextOptions: NullableContextOptions.Enable));
        _compiled.Add((room, isDevice), compilation);
        return compilation;
    }
}
