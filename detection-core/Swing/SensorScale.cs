namespace NanoDustSwitch.Detection;

/// <summary>Converts between amperes at the tool and what the core counts in: sixteenths of a converter count.</summary>
public sealed class SensorScale
{
    /// <summary>Into how many parts the core divides a converter count, so that means keep their fraction.</summary>
    public const int PartsACount = 16;

    // The peak-to-peak of a sine is 2·√2 times its rms (textbook identity); × 1000.
    private const long SwingOfRms = 2828;

    // A mean over an eighth of a cycle keeps sin(π/8)/(π/8) = 0.974 of a sine (textbook: the mean of a sine over a window), and
    // at 50 Hz the quadrature pair over eight such means loses nothing more; × 1000. At 60 Hz, which the pair is not tuned to,
    // the result ripples between 0.82 and 1.00 with the place on the cycle where the window begins. Levels are compared with
    // the greatest of it.
    private const long KeptByThePair = 974;

    // The same formula for the rms of 2.5 ms means: 0.974 at 50 Hz, 0.963 at 60 Hz; the middle of the two, × 1000.
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

    /// <summary>Tells the swing that a sine of some rms current gives.</summary>
    /// <remarks>
    /// The measured swing depends on where on the cycle its window begins: at 50 Hz not at all, at 60 Hz it lies within -16 and
    /// +2 % of this one, at 45 to 65 Hz within -26 and +5 %. The greatest of a few buckets lies within -3 and +5 %.
    /// </remarks>
    /// <param name="milliamperes">Rms current in mA.</param>
    /// <returns>Swing in sixteenths of a count.</returns>
    public int ToSwing(int milliamperes)
    {
        long divisor = 1000L * 1000 * _microvoltsACount;
        long swing = milliamperes * _microvoltsAnAmpere * SwingOfRms * KeptByThePair / 1000 * PartsACount;
        return (int)((swing + (divisor / 2)) / divisor);
    }

    /// <summary>Tells the rms current of the sine that would give a swing.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <returns>Rms current in mA.</returns>
    public int FromSwing(int swing)
    {
        long divisor = _microvoltsAnAmpere * SwingOfRms * KeptByThePair / 1000 * PartsACount;
        return (int)(((swing * (1000L * 1000 * _microvoltsACount)) + (divisor / 2)) / divisor);
    }

    /// <summary>Tells the rms current of the sine whose single readings would show a peak-to-peak.</summary>
    /// <param name="counts">Peak-to-peak in counts.</param>
    /// <returns>Rms current in mA.</returns>
    public int FromPeakToPeak(int counts)
    {
        return (int)(counts * (1000L * 1000 * _microvoltsACount) / (_microvoltsAnAmpere * SwingOfRms));
    }

    /// <summary>Tells the rms current behind the rms of bucket means.</summary>
    /// <param name="rms">Rms about the mean in sixteenths of a count.</param>
    /// <returns>Rms current in mA.</returns>
    public int FromRms(int rms)
    {
        return (int)(rms * (1000L * 1000 * _microvoltsACount) / (_microvoltsAnAmpere * PartsACount * KeptByBucketMeans));
    }

    /// <summary>Tells the voltage of a level.</summary>
    /// <param name="level">Level in sixteenths of a count.</param>
    /// <returns>Voltage in mV.</returns>
    public int ToMillivolts(int level)
    {
        return (int)(level * _microvoltsACount / (1000 * PartsACount));
    }
}
