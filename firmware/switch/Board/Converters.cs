using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Where a healthy sensor rests on a board's converter.</summary>
public static class Converters
{
    // Sensors are biased to the middle of the ESP32 converter's useful span of 150 to 2450 mV, or just below it. A half-wave
    // tool of 12 A on a Hall sensor shifts the mean by less than 0.4 V; 0.85 to 1.75 V leaves room for that.
    private const int LeastRestMillivolts = 850;
    private const int GreatestRestMillivolts = 1750;

    // Ten volts: more than any converter of a board takes.
    private const int MostMillivolts = 10000;

    /// <summary>Describes a converter.</summary>
    /// <param name="fullScale">Its greatest count.</param>
    /// <param name="microvoltsACount">Size of a count in µV.</param>
    /// <returns>Its scale and rest band.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A sensor could not rest on it. With a wrong scale noise would look like a tool.</exception>
    public static ConverterScale Of(int fullScale, int microvoltsACount)
    {
        long top = (long)fullScale * microvoltsACount / 1000;
        if (fullScale <= 0 || top <= GreatestRestMillivolts || top > MostMillivolts)
        {
            throw new ArgumentOutOfRangeException(nameof(fullScale));
        }

        return new ConverterScale(fullScale, microvoltsACount, LeastRestMillivolts, GreatestRestMillivolts);
    }
}
