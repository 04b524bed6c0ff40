namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>Gives the readings of a stretch of time.</summary>
internal sealed class AnyReadings
{
    public const int FullScale = 4095;
    public const int MicrovoltsACount = 806;

    /// <summary>Distance of two readings in microseconds.</summary>
    public const int Distance = 500;

    private const int Rest = 1576;
    private const double CycleMicroseconds = 1e6 / 60;

    private Random _random = new(0);
    private LineKind _kind;
    private int _level;
    private int _amplitude;

    public void Begin(Stretch stretch)
    {
        _random = new Random(stretch.Seed);
        _kind = stretch.Line;
        _level = _kind == LineKind.Walk || _kind == LineKind.Frozen ? _random.Next(FullScale + 1) : Rest;
        _amplitude = _random.Next(20, 2000);
    }

    public bool IsSilent => _kind == LineKind.Silent;

    public int At(long time)
    {
        switch (_kind)
        {
            case LineKind.Quiet:
                return Rest + _random.Next(-3, 4);
            case LineKind.Tool:
                return Math.Clamp(
                    Rest + (int)(_amplitude * Math.Sin(2 * Math.PI * (time % 1000000) / CycleMicroseconds)), 0, FullScale);
            case LineKind.Walk:
                _level = Math.Clamp(_level + _random.Next(-_amplitude, _amplitude + 1), 0, FullScale);
                return _level;
            case LineKind.LowRail:
                return 0;
            case LineKind.HighRail:
                return FullScale;
            case LineKind.Frozen:
                return _level;
            case LineKind.Wild:
                return _random.Next(FullScale + 1);
            case LineKind.Even:
                return Rest + (int)(time / Distance % 5);
            case LineKind.Extremes:
                return Extreme();
            default:
                return -1;
        }
    }

    private int Extreme()
    {
        switch (_random.Next(6))
        {
            case 0:
                return int.MinValue;
            case 1:
                return int.MaxValue;
            case 2:
                return -1;
            case 3:
                return FullScale + 1;
            case 4:
                return _random.Next(int.MinValue, int.MaxValue);
            default:
                return _random.Next(FullScale + 1);
        }
    }
}
