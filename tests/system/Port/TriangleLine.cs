using NanoDustSwitch.Simulator.Board;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>A line whose reading tells its time: a triangle of 50 Hz.</summary>
internal sealed class TriangleLine : Line
{
    private const double Rest = 1650;
    private const double Height = 1000;
    private const double Period = 20_000;

    /// <inheritdoc/>
    public override int FullScale => 4095;

    /// <inheritdoc/>
    public override int MicrovoltsACount => 806;

    /// <summary>Gets the longest time between two readings since <see cref="Forget"/>, in microseconds.</summary>
    public long LongestGap { get; private set; }

    private long Last { get; set; } = -1;

    /// <summary>Gives the line's count at a time.</summary>
    /// <param name="microseconds">The time.</param>
    /// <returns>The count.</returns>
    public static double At(double microseconds)
    {
        double part = microseconds % Period / Period;
        return Rest + (Height * ((4 * Math.Abs(part - 0.5)) - 1));
    }

    /// <summary>Forgets the gaps so far.</summary>
    public void Forget() => LongestGap = 0;

    /// <inheritdoc/>
    public override int Read(long now)
    {
        LongestGap = Last < 0 ? 0 : Math.Max(LongestGap, now - Last);
        Last = now;
        return (int)At(now);
    }

    /// <inheritdoc/>
    public override void Advance(long now)
    {
    }

    /// <inheritdoc/>
    public override void SetRelayLine(long now, bool high)
    {
    }
}
