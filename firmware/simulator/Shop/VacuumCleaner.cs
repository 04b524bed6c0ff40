namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The shop vacuum behind the relay: a universal motor with a switch of its own and a thermal cut-out.
/// </summary>
/// <param name="ratedAmperes">Running current, A rms; 10 is usual at 120 V (practice), 8 was recorded at 230 V.</param>
/// <param name="hertz">Mains frequency, Hz.</param>
/// <param name="seed">Seed of its brushes' noise.</param>
/// <param name="softSeconds">How long it starts softly, s; 0 where it does not.</param>
/// <param name="flattening">As <see cref="Mains.Flattening"/>.</param>
public sealed class VacuumCleaner(
    double ratedAmperes, double hertz, long seed = 1, double softSeconds = 0.0, double flattening = 0.0)
{
    // Together: the first 0.1 s and the settling of recorded vacuums (open recordings: 2.8 to 3.8 times, within 15 % of the
    // running rms after 0.7 to 0.9 s). All of its load is the fan's.
    private const double StartMultiple = 3.8;
    private const double RunUpSeconds = 0.9;
    private const double RunDownSeconds = 4.0;
    private const double MicrosecondsPerMinute = 60e6;

    private readonly Tool _motor = new(
        new ToolSpecification { Name = "vacuum", RatedAmperes = ratedAmperes, CoastSeconds = RunDownSeconds },
        new UniversalMotor
        {
            StartMultiple = StartMultiple, RunUpSeconds = RunUpSeconds, FrictionPart = 0.0, SoftSeconds = softSeconds,
        },
        hertz,
        seed,
        flattening);

    private long _runMicroseconds;
    private long _last;
    private bool _powered;

    /// <summary>Running current, A rms.</summary>
    public double RatedAmperes => _motor.RatedAmperes;

    /// <summary>Its own switch.</summary>
    public bool IsSwitchOn { get; set; } = true;

    /// <summary>Whether its plug is in.</summary>
    public bool IsPluggedIn { get; set; } = true;

    /// <summary>Whether its thermal cut-out has opened.</summary>
    public bool IsCutOutOpen { get; set; }

    /// <summary>Whether current flows.</summary>
    public bool IsRunning => _motor.IsRunning;

    /// <summary>How long it has run under current, minutes, up to the last <see cref="Update"/>.</summary>
    public double RunMinutes => _runMicroseconds / MicrosecondsPerMinute;

    /// <summary>Moves on to a time.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="contactClosed">Whether the relay feeds it.</param>
    public void Update(long now, bool contactClosed)
    {
        if (_motor.IsRunning)
        {
            _runMicroseconds += Math.Max(0L, now - _last);
        }

        _last = now;
        bool powered = contactClosed && IsPluggedIn && IsSwitchOn && !IsCutOutOpen;
        if (powered == _powered)
        {
            return;
        }

        _powered = powered;
        if (powered)
        {
            _motor.Start(now);
        }
        else
        {
            _motor.Stop(now);
        }
    }

    /// <summary>True rms over the last mains cycle, A, up to the last <see cref="Current"/>.</summary>
    public double RmsAmperes => _motor.RmsAmperes;

    /// <summary>Instantaneous current.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="point">Point of the mains cycle at that time.</param>
    /// <returns>Amperes.</returns>
    public double Current(long now, in MainsPoint point) => _motor.Current(now, point);

    internal void SetLive(long now, bool live) => _motor.SetLive(now, live);
}
