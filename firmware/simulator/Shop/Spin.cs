namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// How fast a motor turns (a lamp: how warm it is), as a part of full speed. It runs up exponentially, for that is how the
/// start current falls, and runs down in a straight line.
/// </summary>
/// <param name="runUpSeconds">Time constant of running up.</param>
/// <param name="coastSeconds">Time to come to rest from full speed.</param>
/// <param name="brakeMilliseconds">The same with the brake; 0 where there is none.</param>
internal sealed class Spin(double runUpSeconds, double coastSeconds, double brakeMilliseconds)
{
    private readonly double _runUpMicroseconds = Math.Max(1.0, 1e6 * runUpSeconds);
    private readonly double _coastMicroseconds = Math.Max(1.0, 1e6 * coastSeconds);
    private readonly double _brakeMicroseconds = Math.Max(0.0, 1e3 * brakeMilliseconds);
    private bool _running;
    private bool _braking;
    private long _since;
    private double _speedThen;

    /// <summary>Whether there is a brake at all.</summary>
    internal bool HasBrake => _brakeMicroseconds > 0.0;

    /// <summary>Time since the last change, µs.</summary>
    internal double Elapsed(long now) => Math.Max(0L, now - _since);

    /// <summary>Time since the last change as a part of the braking time.</summary>
    internal double BrakedPart(long now) => Elapsed(now) / _brakeMicroseconds;

    /// <summary>Speed, 0 to 1.</summary>
    internal double At(long now) => _running
        ? 1.0 - ((1.0 - _speedThen) * Math.Exp(-Elapsed(now) / _runUpMicroseconds))
        : Math.Max(0.0, _speedThen - (Elapsed(now) / (_braking ? _brakeMicroseconds : _coastMicroseconds)));

    /// <summary>Goes on from the present speed: driven, braked or left to itself.</summary>
    internal void Change(long now, bool running, bool braking)
    {
        _speedThen = At(now);
        _since = now;
        _running = running;
        _braking = braking;
    }
}
