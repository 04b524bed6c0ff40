using NanoDustSwitch.Benchmarks.Report;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>Whether tools are known again, and a load that needs no vacuum is told from tools.</summary>
internal static class ToolsCommand
{
    private const int Shops = 400;
    private const int Loads = 480;
    private const int Others = 1500;
    private const int QuickPart = 6;

    /// <summary>Measures and prints.</summary>
    /// <param name="isQuick">Whether with fewer shops.</param>
    /// <param name="seed">Seed of all chance; the constants were tuned with those up to 72, 86 to 91, 101 and 102.</param>
    /// <returns>The exit code.</returns>
    public static int Run(bool isQuick, int seed)
    {
        Bench bench = new(isQuick, [], (_, _) => { }, seed);
        int part = isQuick ? QuickPart : 1;
        return StudyTable.Print(
        [
            .. NamingStudy.Run(bench, Shops / part),
            .. NoVacuumStudy.Run(bench, Loads / part, Others / part),
            .. KnownDelayStudy.Run(bench, Shops / part),
            .. TwoToolsStudy.Run(bench, Shops / part),
        ]);
    }
}
