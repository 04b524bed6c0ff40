namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The driver between the board and the relay's coil: a diode pump that holds the coil only while its line toggles.
/// </summary>
/// <remarks>
/// It stands for 3.3 V through 330 ohm and 1 µF into two Schottky diodes with 1 µF and 330 kohm behind them, reduced to
/// first order after a circuit simulation of our own: 3.0 V while it runs; stuck high 2.4 V after 150 ms and under 1.2 V after
/// 0.6 s; stuck low 1.87 V after 150 ms. A high line leaves both capacitors to be drained (0.66 s), a low one only the second
/// (0.33 s), and each rising edge shares the first one's charge with the second. The coil's levels are of our own choosing:
/// one lone pulse, as pins make at boot, stays below pull-in.
/// </remarks>
public sealed class HeartbeatDriver
{
    private const double FullVolts = 3.0;
    private const double PullInVolts = 2.0;
    private const double ReleaseVolts = 1.2;
    private const double HighMicroseconds = 660_000.0;
    private const double LowMicroseconds = 330_000.0;
    private const double RefillMicroseconds = 330.0;
    private const double ChargeShare = 0.5;

    private readonly double _highMicroseconds;
    private readonly double _lowMicroseconds;
    private bool _commanded;
    private bool _level;
    private bool _energised;
    private double _volts;
    private long _at;
    private long _releaseAt = long.MaxValue;

    /// <summary>Makes a driver at rest.</summary>
    /// <param name="timeFactor">Its time constants against nominal: 1, or 0.64 to 1.44 where both parts are off by 20 %.</param>
    public HeartbeatDriver(double timeFactor = 1.0)
    {
        if (!(timeFactor > 0.0 && timeFactor <= 100.0))
        {
            throw new ArgumentOutOfRangeException(nameof(timeFactor), "above 0 and at most 100");
        }

        _highMicroseconds = HighMicroseconds * timeFactor;
        _lowMicroseconds = LowMicroseconds * timeFactor;
    }

    /// <summary>What is wrong with the line.</summary>
    public LineFault Fault { get; private set; }

    /// <summary>Virtual time at which the coil last changed, µs.</summary>
    public long ChangedAt { get; private set; }

    private double Drain => _level ? _highMicroseconds : _lowMicroseconds;

    /// <summary>Puts the board's line high or low.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="high">The level.</param>
    public void SetLine(long now, bool high)
    {
        _commanded = high;
        Drive(now);
    }

    /// <summary>Breaks or mends the line.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="fault">What is wrong from now on.</param>
    public void SetFault(long now, LineFault fault)
    {
        Fault = fault;
        Drive(now);
    }

    /// <summary>The box has lost its power: coil and pump are without voltage, and nobody drives the line.</summary>
    /// <param name="now">Virtual time, µs.</param>
    public void LosePower(long now)
    {
        if (IsEnergised(now))
        {
            _energised = false;
            ChangedAt = now;
        }

        _commanded = false;
        _level = false;
        _volts = 0.0;
        _at = now;
        _releaseAt = long.MaxValue;
    }

    /// <summary>Whether the coil is energised.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <returns>True while it holds.</returns>
    public bool IsEnergised(long now)
    {
        // The time of release is known in advance, so that asking costs one compare and no exponential.
        if (now >= _releaseAt)
        {
            ChangedAt = _releaseAt;
            _releaseAt = long.MaxValue;
            _energised = false;
        }

        return _energised;
    }

    /// <summary>Voltage of the pump.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <returns>0 to 3 V.</returns>
    public double Volts(long now) => _volts * Math.Exp(-Math.Max(0L, now - _at) / Drain);

    private void Drive(long now)
    {
        // Undriven, the first capacitor has no path, which is as good as low.
        bool level = Fault == LineFault.None ? _commanded : Fault == LineFault.StuckHigh;
        if (level == _level)
        {
            return;
        }

        bool held = IsEnergised(now);
        double volts = Volts(now);
        if (level)
        {
            // After a very short low the first capacitor has not got its charge back yet.
            double refilled = 1.0 - Math.Exp(-Math.Max(0L, now - _at) / RefillMicroseconds);
            volts += ChargeShare * refilled * (FullVolts - volts);
        }

        _level = level;
        _volts = volts;
        _at = now;
        if (!held && volts >= PullInVolts)
        {
            _energised = true;
            ChangedAt = now;
        }

        if (_energised)
        {
            _releaseAt = now + (long)(Drain * Math.Log(volts / ReleaseVolts));
        }
    }
}
