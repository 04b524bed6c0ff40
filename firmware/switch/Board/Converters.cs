using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Where a healthy sensor rests on a board's converter.</summary>
public static class Converters
{
    // Sensors are biased to the middle of the ESP32 converter's useful span of 150 to 2450 mV, or just below it. A half-wave
    // tool of 12 A on a Hall sensor shifts the mean by less than 0.4 V; 0.85 to 1.75 V leaves room for that.
    private const int LeastRestMillivolts = 850;
    private const int GreatestRestMillivolts = 1750;

    /// <summary>Describes a converter.</summary>
    /// <param name="fullScale">Its greatest count.</param>
    /// <param name="microvoltsACount">Size of a count in µV.</param>
    /// <returns>Its scale and rest band.</returns>
    public static ConverterScale Of(int fullScale, int microvoltsACount)
    {
        return new ConverterScale(fullScale, microvoltsACount, LeastRestMillivolts, GreatestRestMillivolts);
    }
}
