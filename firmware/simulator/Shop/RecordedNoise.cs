namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Noise that was recorded and not made up: a course of 1 rms that is played in a loop.</summary>
/// <param name="values">The course, at least two values, 1 rms about 0; shared, never written.</param>
/// <param name="rate">Values a second, above 0.</param>
/// <param name="offset">Where in the loop it begins, 0 up to 1; each seed begins elsewhere.</param>
public sealed class RecordedNoise(double[] values, double rate, double offset)
{
    private readonly double _perMicrosecond = rate * 1e-6;
    private readonly double _first = Math.Floor(offset * values.Length);

    /// <summary>The noise at a time, on the straight line between two values.</summary>
    /// <param name="now">Virtual time, µs, 0 or later.</param>
    /// <returns>A number about 0; the line makes it a little less than 1 rms where readings fall between the values.</returns>
    public double At(long now)
    {
        double place = _first + (now * _perMicrosecond);
        double whole = Math.Floor(place);
        int before = (int)(whole % values.Length);
        int after = before + 1 == values.Length ? 0 : before + 1;
        return values[before] + ((place - whole) * (values[after] - values[before]));
    }
}
