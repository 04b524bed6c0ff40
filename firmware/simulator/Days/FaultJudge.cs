using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Finds faults that nothing in the shop explains.</summary>
/// <param name="shop">The shop.</param>
/// <param name="person">The person.</param>
/// <param name="isSlow">Whether the board is too slow for ordinary buckets.</param>
internal sealed class FaultJudge(VirtualShop shop, Person person, bool isSlow)
{
    // From a cause to its fault.
    private const long Soon = 3_000_000;
    private const long Minute = 60_000_000;
    private const long Hour = 60 * Minute;

    // A pause of the board that may cost a heartbeat; so many boots in a row are a loop.
    private const long Pause = 140_000;
    private const int ManyBoots = 8;

    // A current of nine tenths of what sensor and converter can follow clips with noise on it.
    private const double NearClip = 0.9;
    private const double MuchNoise = 0.25;

    private readonly Queue<long> _commands = new();
    private readonly Queue<long> _pauses = new();
    private int _standing;
    private int _explained;
    private int _boots;
    private bool _wasClosed;
    private long _collected;
    private long _blindAt = -Hour;
    private long _sparksAt = -Hour;
    private long _clippedAt = -Hour;
    private long _stillAt = -Hour;
    private long _stuckAt = -Hour;
    private long _quietAt;

    /// <summary>Gets a value indicating whether a tool has run for longer than the longest run.</summary>
    public bool RanTooLong { get; private set; }

    /// <summary>Looks after a step.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="core">The core.</param>
    /// <param name="settings">The settings in force.</param>
    /// <param name="collected">Time of all garbage collections of the board so far, in microseconds.</param>
    /// <returns>The faults that have come up and that nothing explains.</returns>
    public List<Fault> Look(long now, DetectionCore core, SettingValues settings, long collected)
    {
        NoteCauses(now, core, settings, collected);
        List<Fault> found = [];
        int raised = core.Faults.Standing & ~_standing;
        _standing = core.Faults.Standing;
        for (int i = FaultBits.Next(raised, -1); i >= 0; i = FaultBits.Next(raised, i))
        {
            if (IsExplained((Fault)i, now, settings))
            {
                _explained |= 1 << i;
            }
            else
            {
                _explained &= ~(1 << i);
                found.Add((Fault)i);
            }
        }

        return found;
    }

    /// <summary>Tells whether a fault rightly keeps the vacuum off.</summary>
    /// <param name="faults">The faults.</param>
    /// <returns>True when one does that the shop explains.</returns>
    public bool HoldsRightly(FaultMonitor faults)
    {
        int standing = faults.Standing & _explained;
        for (int i = FaultBits.Next(standing, -1); i >= 0; i = FaultBits.Next(standing, i))
        {
            if (FaultTable.Has((Fault)i, FaultTraits.KeepsVacuumOff))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The box has come up again; what stood before may be recalled.</summary>
    public void Reset() => _boots++;

    private void NoteCauses(long now, DetectionCore core, SettingValues settings, long collected)
    {
        CurrentSensor sensor = shop.Sensor;
        _blindAt = person.HasSwitchBlind ? now : _blindAt;
        _sparksAt = sensor.Sparks is null && sensor.Radio is null && sensor.Wild is null ? _sparksAt : now;
        _stillAt = shop.Vacuum.IsRunning ? _stillAt : now;
        _stuckAt = shop.Vacuum.IsRunning && !shop.Driver.IsEnergised(now) ? now : _stuckAt;
        double peak = shop.ToolLine.PeakToPeak / 2 * sensor.Turns;
        _clippedAt = peak * sensor.MillivoltsPerAmpere >= NearClip * sensor.RestMillivolts
            || (sensor.Kind == SensorKind.Hall && peak >= NearClip * sensor.LimitAmperes) ? now : _clippedAt;
        if (core.IsRelayClosed && !_wasClosed)
        {
            _commands.Enqueue(now);
        }

        if (collected - _collected >= Pause)
        {
            _pauses.Enqueue(now);
        }

        _wasClosed = core.IsRelayClosed;
        _collected = collected;
        Forget(_commands, now - Minute - Soon);
        Forget(_pauses, now - Hour);
        _quietAt = shop.ToolLine.Rms < MuchNoise * settings[SettingId.StopBelow] / 1000.0 ? now : _quietAt;
        RanTooLong = settings[SettingId.LongestRun] > 0 && now - _quietAt >= settings[SettingId.LongestRun] * 1000L;
    }

    private bool IsExplained(Fault fault, long now, SettingValues settings) => fault switch
    {
        Fault.SensorAtRail or Fault.MidpointOut or Fault.SensorFrozen or Fault.ConverterFails or Fault.NoWindow =>
            now - _blindAt <= Soon || now - _sparksAt <= Soon,
        Fault.OverRange => now - _clippedAt <= Soon,
        Fault.Noisy => now - _sparksAt <= Minute || IsNoisy(settings[SettingId.StartAt] / 1000.0),
        Fault.ShortCycling => _commands.Count >= settings[SettingId.StartsAMinute],
        Fault.RanTooLong => RanTooLong,
        Fault.RestartLoop => _boots >= ManyBoots,
        Fault.RelayLine => shop.Driver.Fault != LineFault.None,
        Fault.VacuumIdle => now - _stillAt <= Soon,
        Fault.VacuumStays => now - _stuckAt <= Soon,
        Fault.OwnCurrent => StayJudge.IsCoupled(shop, settings[SettingId.StopBelow] / 1000.0),
        Fault.HeartbeatLost => _pauses.Count >= DetectionCore.MostLostAnHour,
        Fault.SlowBoard => isSlow,
        _ => false,
    };

    private bool IsNoisy(double startAt) => shop.Sensor.NoiseCourse != null
        || shop.Sensor.NoiseAmperes + shop.Sensor.HumAmperes + shop.ToolLine.Rms >= MuchNoise * startAt;

    private static void Forget(Queue<long> times, long before)
    {
        while (times.TryPeek(out long time) && time < before)
        {
            times.Dequeue();
        }
    }
}
