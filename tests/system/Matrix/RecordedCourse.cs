using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>
/// Noise of an open recording (repository ibarram/ITSC, raw signals of a 3/4 hp motor running idle, which the project does not
/// carry): what is left without its mains harmonics, so the residual of a running motor. The variable DUST_RECORDINGS names its
/// folder.
/// </summary>
internal static class RecordedCourse
{
    /// <summary>Values a second.</summary>
    public const double Rate = 1000;

    private const double Hertz = 60;

    /// <summary>Finds it.</summary>
    /// <returns>The course, 1 rms; null where the recording is not here.</returns>
    public static double[]? Find()
    {
        string path = Path.Combine(Environment.GetEnvironmentVariable("DUST_RECORDINGS") ?? "", "itsc", "raw", "SC_HLT_001.csv");
        return File.Exists(path) ? MainsResidual.Of(Recording.Read(path, 1), Rate, Hertz) : null;
    }
}
