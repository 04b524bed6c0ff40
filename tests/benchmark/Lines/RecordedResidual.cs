using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>
/// What is left of a raw motor current of the open ITSC recordings (repository ibarram/ITSC), 1,000 a second, 60 Hz, without its
/// harmonics: the first phase of the first healthy motor. The project does not carry them; the variable DUST_RECORDINGS names
/// their folder.
/// </summary>
internal static class RecordedResidual
{
    private const double Rate = 1000;
    private const double Hertz = 60;
    private const string File = "SC_HLT_001.csv";

    /// <summary>Reads it.</summary>
    /// <returns>Its course, of 1 rms; none where it is not there.</returns>
    public static double[] Read()
    {
        string? root = Environment.GetEnvironmentVariable("DUST_RECORDINGS");
        string path = Path.Combine(root ?? "", "itsc", "raw", File);
        return string.IsNullOrEmpty(root) || !System.IO.File.Exists(path)
            ? []
            : MainsResidual.Of(Recording.Read(path, 1), Rate, Hertz);
    }
}
