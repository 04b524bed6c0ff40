using System.Xml.Linq;
using NanoDustSwitch.ConformanceTests.Rooms;
using NanoDustSwitch.ConformanceTests.Texts;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>
/// A project that was added, for example of a second board, and forgotten where projects are listed: each finding names the
/// place that is missing.
/// </summary>
[TestClass]
public class ProjectPlacesTests
{
    private const string Board = "firmware/else/Else.csproj";

    // The image has its own tests, and its packages are not to be had everywhere.
    private static readonly List<string> s_projects =
    [
        .. TextFiles.All.Keys.Where(path =>
            path.EndsWith(".csproj", StringComparison.Ordinal) && path != "firmware/esp32/image/Image.csproj"),
    ];

    [TestMethod]
    public void EveryProjectIsInTheSolution() => Findings.AssertNone(NotInTheSolution(s_projects));

    [TestMethod]
    public void EveryRoomOfTheProductIsInTheTable() => Findings.AssertNone(NotInTheTable(s_projects));

    [TestMethod]
    public void EveryRoomForTheDeviceIsComparedAndChecked() =>
        Findings.AssertNone(s_projects.SelectMany(path => NotChecked(path, ProjectXml.Read(path))));

    [TestMethod]
    public void EveryBoardIsTriedAgainstFakes() => Findings.AssertNone(NotTried(RoomTable.All));

    [TestMethod]
    public void AForgottenBoardIsFound()
    {
        Findings.AssertFound($"{Board}: not in nanoDustSwitch.sln", NotInTheSolution([Board]));
        Findings.AssertFound($"{Board}: not in tests/conformance/Rooms/RoomTable.cs", NotInTheTable([Board]));
        Findings.AssertFound("not tried by a project in tests", NotTried([new(Board, [], []) { IsDeviceOnly = true }]));

        var project = ProjectXml.Read("firmware/esp32/Esp32.csproj");
        project.Descendants("AssemblyName").Single().Value = "NanoDustSwitch.Else";
        var findings = NotChecked(Board, project).ToList();
        Findings.AssertFound("has no twin firmware/else/device/Else.nfproj", findings);
        Findings.AssertFound($"{Board}: not in ProjectTwin.All", findings);
        Findings.AssertFound("NanoDustSwitch.Else.dll is not in DeviceAssemblies.Product", findings);
        Findings.AssertFound($"{Board}: no DeviceProject of tests/conformance/ConformanceTests.csproj", findings);
    }

    private static IEnumerable<string> NotInTheSolution(IEnumerable<string> projects)
    {
        var solution = Repository.ReadText(Repository.Solution).Replace('\\', '/');
        return projects.Where(path => !solution.Contains($"\"{path}\"", StringComparison.Ordinal))
            .Select(path => $"{path}: not in {Repository.Solution}; copy another project's lines, 'dotnet sln add' writes more");
    }

    private static IEnumerable<string> NotInTheTable(IEnumerable<string> projects) => projects
        .Where(path => IsProduct(path) && RoomTable.All.All(room => room.Project != path))
        .Select(path => $"{path}: not in tests/conformance/Rooms/RoomTable.cs, so nothing says what it may use");

    // What compiles for the device and is no test and no declaration goes to a board.
    private static IEnumerable<string> NotChecked(string path, XDocument project)
    {
        var frameworks = project.Descendants("TargetFramework").Concat(project.Descendants("TargetFrameworks"));
        if (!IsProduct(path) || !frameworks.Any(element => element.Value.Contains("netstandard2.0", StringComparison.Ordinal)))
        {
            yield break;
        }

        var (room, name) = (path[..path.LastIndexOf('/')], Path.GetFileNameWithoutExtension(path));
        var twin = $"{room}/{ProjectTwin.DeviceFolder}/{name}.nfproj";
        if (!TextFiles.All.ContainsKey(twin))
        {
            yield return $"{path}: has no twin {twin}, so it cannot be put on a board";
        }

        if (!ProjectTwin.All.Contains($"{room}/{name}"))
        {
            yield return $"{path}: not in ProjectTwin.All, so nobody compares it with its .nfproj";
        }

        var assembly = $"{ProjectXml.Property(project, "AssemblyName")}.dll";
        if (!DeviceAssemblies.Product.Contains(assembly))
        {
            yield return $"{path}: {assembly} is not in DeviceAssemblies.Product, so the device rules do not look at it";
        }

        const string Checks = "tests/conformance/ConformanceTests.csproj";
        var built = ProjectXml.Read(Checks).Descendants()
            .Where(element => element.Name.LocalName is "DeviceProject" or "PlainDeviceProject");
        if (!built.Any(element => Path.GetRelativePath(Repository.Root, PathIn(Checks, element)).Replace('\\', '/') == path))
        {
            yield return $"{path}: no DeviceProject of {Checks}, so its assembly is not there to be checked";
        }
    }

    private static IEnumerable<string> NotTried(IEnumerable<Room> rooms)
    {
        var compiled = s_projects.Where(path => path.StartsWith("tests/", StringComparison.Ordinal))
            .SelectMany(path => ProjectXml.Read(path).Descendants("Compile").Where(item => item.Attribute("Include") is not null)
                .Select(item => Path.GetDirectoryName(PathIn(path, item))))
            .ToHashSet();
        return rooms.Where(room => room.IsDeviceOnly && !compiled.Contains(Repository.PathOf(room.Folder)))
            .Select(room => $"{room.Folder}: not tried by a project in tests, which compiles it against fakes as tests/board");
    }

    private static bool IsProduct(string path) =>
        !path.StartsWith("tests/", StringComparison.Ordinal) && !path.Contains("/declarations/", StringComparison.Ordinal);

    private static string PathIn(string project, XElement item) =>
        Repository.PathOf($"{project}/../{item.Attribute("Include")!.Value.Replace('\\', '/')}");
}
