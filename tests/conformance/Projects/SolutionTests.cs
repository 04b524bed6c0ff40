namespace NanoDustSwitch.ConformanceTests.Projects;

[TestClass]
public class SolutionTests
{
    private const string Nfproj = "detection-core/device/DetectionCore.nfproj";

    private static readonly Dictionary<string, string> s_nfprojs =
        ProjectTwin.All.Select(path => new ProjectTwin(path)).ToDictionary(
            twin => $"{twin.Room}/{ProjectTwin.DeviceFolder}/{twin.Name}.nfproj",
            twin => ProjectXml.Property(twin.Nfproj, "ProjectGuid") ?? "");

    private static readonly string s_solution = Repository.ReadText(Repository.Solution);

    [TestMethod]
    public void TheSolutionBuildsTheNfprojForTheDeviceAlone() =>
        Findings.AssertNone(SolutionRule.Findings(s_solution, s_nfprojs));

    [TestMethod]
    [DataRow("Device|Any CPU.ActiveCfg")]
    [DataRow("Device|Any CPU.Build.0")]
    [DataRow("Device|Any CPU.Deploy.0")]
    [DataRow("Debug|Any CPU.ActiveCfg")]
    public void AMissingLineIsFound(string key)
    {
        var line = $"{s_nfprojs[Nfproj]}.{key} = ";
        AssertFound($"{Nfproj}: the solution lacks     {line}", s_solution.Replace(line, "else = ", StringComparison.Ordinal));
    }

    [TestMethod]
    [DataRow("Debug|Any CPU.Build.0 = Debug|Any CPU")]
    [DataRow("Release|Any CPU.Build.0 = Release|Any CPU")]
    public void ANfprojThatTheSdkIsToBuildIsFound(string line)
    {
        line = $"{s_nfprojs[Nfproj]}.{line}";
        AssertFound($"{Nfproj}: the solution has extra {line}", s_solution + line);
    }

    [TestMethod]
    public void ACsprojThatIsBuiltForTheDeviceIsFound()
    {
        const string DetectionCore = "{445F530C-178A-4E39-AC2A-F41B1CD10FC3}";
        const string Line = $"{DetectionCore}.Device|Any CPU.Build.0 = Release|Any CPU";
        AssertFound($"detection-core/DetectionCore.csproj: the solution has extra {Line}", s_solution + Line);
    }

    [TestMethod]
    [DataRow($"{Nfproj}: not in the solution")]
    [DataRow("Else.nfproj: in the solution")]
    public void ANfprojThatTheSolutionLacksAndOneThatIsNotComparedAreFound(string words) =>
        AssertFound(words, s_solution.Replace(@"device\DetectionCore.nfproj", @"device\Else.nfproj", StringComparison.Ordinal));

    [TestMethod]
    public void AnotherTypeOfProjectIsFound() =>
        AssertFound("its type is", s_solution.Replace("11A8DD76", "FAE04EC0", StringComparison.Ordinal));

    [TestMethod]
    public void AnotherIdIsFound() =>
        AssertFound(
            $"{Nfproj}: is",
            s_solution.Replace(s_nfprojs[Nfproj], "{00000000-0000-0000-0000-000000000000}", StringComparison.Ordinal));

    private static void AssertFound(string words, string solution) =>
        Findings.AssertFound(words, SolutionRule.Findings(solution, s_nfprojs));
}
