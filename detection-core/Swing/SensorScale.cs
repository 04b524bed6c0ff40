namespace NanoDustSwitch.Detection;

/// <summary>Converts between amperes at the tool and what the core counts in: sixteenths of a converter count.</summary>
public sealed class SensorScale
{
    /// <summary>Parts into which a converter count is divided inside the core, so that means keep their fraction.</summary>
    public const int PartsACount = 16;

    // 2·√2 from the rms of a sine to its peak-to-peak, × 1000. A textbook identity.
    private const long SwingOfRms = 2828;

    // What is left of a sine's swing in the pair over eight bucket means, × 1000: sin(π/8)/(π/8) at 50 Hz. At 60 Hz, which falls beside
    // the pair, it ripples from 0.82 to 1.00 by the place on the cycle, and its greatest is what meets a level.
    private const long KeptByThePair = 974;

    // What is left of a sine's rms in 2.5 ms means, × 1000: sin(π/8)/(π/8) = 0.974 at 50 Hz, 0.963 at 60 Hz.
    private const long KeptByBucketMeans = 969;

    private readonly long _microvoltsAnAmpere;
    private readonly long _microvoltsACount;

    /// <summary>Initializes a new instance of the <see cref="SensorScale"/> class.</summary>
    /// <param name="microvoltsAnAmpere">Sensor's gain at the converter pin in µV/A with one turn, for example 23500.</param>
    /// <param name="turns">Turns of the tool's wire through the sensor, 1 or more.</param>
    /// <param name="microvoltsACount">Size of a converter count in µV, for example 806.</param>
    public SensorScale(int microvoltsAnAmpere, int turns, int microvoltsACount)
    {
        _microvoltsAnAmpere = (long)microvoltsAnAmpere * turns;
        _microvoltsACount = microvoltsACount;
    }

    /// <summary>Swing that a sine of some rms current gives.</summary>
    /// <param name="milliamperes">Rms current in mA.</param>
    /// <returns>Swing in sixteenths of a count; true at 50 Hz, within -16 and +2 % at 60 Hz, -26 and +5 % at 45 to 65 Hz, by the place on the cycle; the greatest over a few buckets within -3 and +5 %.</returns>
    public int ToSwing(int milliamperes)
    {
        long divisor = 1000L * 1000 * _microvoltsACount;
        return (int)(((milliamperes * _microvoltsAnAmpere * SwingOfRms * KeptByThePair / 1000 * PartsACount) + (divisor / 2)) / divisor);
    }

    /// <summary>Rms current of the sine that would give a swing.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <returns>Rms current in mA.</returns>
    public int FromSwing(int swing)
    {
        long divisor = _microvoltsAnAmpere * SwingOfRms * KeptByThePair / 1000 * PartsACount;
        return (int)(((swing * (1000L * 1000 * _microvoltsACount)) + (divisor / 2)) / divisor);
    }

    /// <summary>Rms current of the sine that would give a peak-to-peak of single readings.</summary>
    /// <param name="counts">Peak-to-peak in counts.</param>
    /// <returns>Rms current in mA.</returns>
    public int FromPeakToPeak(int counts)
    {
        return (int)(counts * (1000L * 1000 * _microvoltsACount) / (_microvoltsAnAmpere * SwingOfRms));
    }

    /// <summary>Rms current from the rms of bucket means.</summary>
    /// <param name="rms">Rms about the mean in sixteenths of a count.</param>
    /// <returns>Rms current in mA.</returns>
    public int FromRms(int rms)
    {
        return (int)(rms * (1000L * 1000 * _microvoltsACount) / (_microvoltsAnAmpere * PartsACount * KeptByBucketMeans));
    }

    /// <summary>Voltage of a level.</summary>
    /// <param name="level">Level in sixteenths of a count.</param>
    /// <returns>Voltage in mV.</returns>
    public int ToMillivolts(int level)
    {
        return (int)(level * _microvoltsACount / (1000 * PartsACount));
    }
}
