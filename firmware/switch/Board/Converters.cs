using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says at which voltages a healthy sensor may rest, for the converter of a board.</summary>
public static class Converters
{
    // Sensors are biased to the middle of the ESP32 converter's useful span of 150 to 2450 mV, or just below it. A half-wave
    // tool of 12 A on a Hall sensor shifts the mean by less than 0.4 V; 0.85 to 1.75 V leaves room for that.
    private const int LeastRestMillivolts = 850;
    private const int GreatestRestMillivolts = 1750;

    // No converter on such a board takes ten volts.
    private const int MostMillivolts = 10000;

    /// <summary>Describes a converter.</summary>
    /// <param name="fullScale">Its greatest count, for example 4095.</param>
    /// <param name="microvoltsACount">Size of a count in µV, for example 806.</param>
    /// <returns>Its scale, and the band in which a sensor may rest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Full scale is not above the highest resting voltage of 1.75 V, or it is
    /// above 10 V. Such a scale is wrong, and with a wrong scale noise could be taken for a tool.</exception>
    /// <exception cref="ArgumentException">It has more than 12 bits, which the core refuses.</exception>
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
