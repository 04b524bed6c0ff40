using System;

namespace NanoDustSwitch.Detection;

/// <summary>The range and the step of a board's converter, and the band in which a healthy sensor rests on it.</summary>
public sealed class ConverterScale
{
    /// <summary>Greatest full scale, that of 12 bits: the power of a larger swing would not fit into 32 bits.</summary>
    public const int MostCounts = 4095;

    /// <summary>Greatest count, for example 4095.</summary>
    public readonly int FullScale;

    /// <summary>Size of a count in µV, for example 806.</summary>
    public readonly int MicrovoltsACount;

    /// <summary>Lower end of the band in which a sensor rests, in mV.</summary>
    public readonly int LeastRestMillivolts;

    /// <summary>Upper end of the band in which a sensor rests, in mV.</summary>
    public readonly int GreatestRestMillivolts;

    /// <summary>Initializes a new instance of the <see cref="ConverterScale"/> class.</summary>
    /// <param name="fullScale">Greatest count, up to <see cref="MostCounts"/>.</param>
    /// <param name="microvoltsACount">Size of a count in µV.</param>
    /// <param name="leastRestMillivolts">Lower end of the rest band in mV.</param>
    /// <param name="greatestRestMillivolts">Upper end of the rest band in mV.</param>
    /// <exception cref="ArgumentException">The converter has more than 12 bits.</exception>
    public ConverterScale(int fullScale, int microvoltsACount, int leastRestMillivolts, int greatestRestMillivolts)
    {
        if (fullScale > MostCounts)
        {
            throw new ArgumentException(
                "a converter of more than 12 bits: hand its readings in as 0 to 4095, shifted right", nameof(fullScale));
        }

        FullScale = fullScale;
        MicrovoltsACount = microvoltsACount;
        LeastRestMillivolts = leastRestMillivolts;
        GreatestRestMillivolts = greatestRestMillivolts;
    }
}
