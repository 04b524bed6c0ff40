using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>
/// Recorded noise, in pieces of an eighth to half a second from anywhere in it, either way up: more time than was recorded, but
/// with no larger peaks than were.
/// </summary>
/// <param name="course">The recording, of 1 rms about 0.</param>
/// <param name="random">Where the pieces are drawn from.</param>
internal sealed class PiecedNoise(double[] course, ShopRandom random) : INoise
{
    private const int Shortest = 125;
    private const int Longest = 500;

    private double _sign;
    private int _at;
    private int _end;

    /// <inheritdoc/>
    public double Next()
    {
        if (_at == _end)
        {
            int length = Shortest + (int)(random.NextDouble() * (Longest - Shortest));
            _at = (int)(random.NextDouble() * (course.Length - length));
            _end = _at + length;
            _sign = random.NextDouble() < 0.5 ? -1 : 1;
        }

        return _sign * course[_at++];
    }
}
