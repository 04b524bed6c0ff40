using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Inspector.Spectrum;

/// <summary>A recorded current.</summary>
/// <param name="Seconds">Times of its points, rising.</param>
/// <param name="Amperes">The points; where it rests does not matter.</param>
/// <param name="Slice">Seconds over which each point is a mean; 0 for single readings.</param>
internal sealed record Wave(double[] Seconds, double[] Amperes, double Slice)
{
    /// <summary>Gives the current behind a count of the converter.</summary>
    /// <param name="settings">The settings, with gain and turns of the sensor.</param>
    /// <param name="microvoltsACount">Size of a count in µV.</param>
    /// <returns>A a count.</returns>
    public static double AmperesACount(SettingValues settings, double microvoltsACount) =>
        microvoltsACount / ((double)settings[SettingId.SensorGain] * settings[SettingId.Turns]);
}
