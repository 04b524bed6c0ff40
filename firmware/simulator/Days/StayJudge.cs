using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>
/// Finds a vacuum that would not stop: it is on for more than two seconds past what run-on and person allow, while no tool runs.
/// A contact that is welded is not the switch's doing, so the coil is looked at.
/// </summary>
/// <param name="shop">The shop.</param>
internal sealed class StayJudge(VirtualShop shop)
{
    private const long Patience = 2_000_000;

    // While the slow lane listens a stop is seen half a second later.
    private const long SlowLane = 500_000;
    private const long StretchedRunOn = 60_000_000;

    // By then a vacuum that feeds the tool's sensor must have been found.
    private const long Coupled = 180_000_000;

    // Levels are good to 8 %, and a quarter of the noise adds to what is seen, as in Judge.
    private const double LeastShare = 0.8;
    private const double NoiseShare = 0.25;

    private long _reasonAt;
    private bool _wasOn;
    private bool _isTold;

    /// <summary>Tells whether the sensor sees so much of the running vacuum that it may be taken for a tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="stopBelow">Stop level, A.</param>
    /// <returns>True when it may.</returns>
    public static bool IsCoupled(VirtualShop shop, double stopBelow) => IsCoupled(shop, stopBelow, 0);

    /// <summary>Looks after a step.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="core">The core.</param>
    /// <param name="settings">The settings in force.</param>
    /// <returns>What is wrong, told once; null when nothing is.</returns>
    public string? Look(long now, DetectionCore core, SettingValues settings)
    {
        bool isOn = shop.Driver.IsEnergised(now);
        double stopBelow = settings[SettingId.StopBelow] / 1000.0;

        // What the sensor shows by mistake begins a run-on anew, as a tool does.
        if ((isOn && !_wasOn) || core.Vacuum.State == VacuumState.ByHand
            || shop.Sensor.Wild != null || shop.Sensor.Sparks != null
            || shop.ToolsAlone.Rms >= (LeastShare * stopBelow) - Added(shop))
        {
            _reasonAt = now;
            _isTold = false;
        }

        _wasOn = isOn;
        long runOn = core.Vacuum.IsStretched ? StretchedRunOn
            : core.Vacuum.RunOnAfter(settings[SettingId.RunOn]) * 1000L;
        long longest = runOn + Patience + SlowLane + (IsCoupled(shop, stopBelow, shop.ToolsAlone.Rms) ? Coupled : 0);
        if (!isOn || _isTold || now - _reasonAt <= longest)
        {
            return null;
        }

        _isTold = true;
        return $"WOULD NOT STOP: on for {(now - _reasonAt) / 1e6:0.0} s without a tool";
    }

    /// <summary>The box has come up again.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    public void Reset(long now) => _reasonAt = now;

    // With what stands there besides, a smaller share is enough.
    private static bool IsCoupled(VirtualShop shop, double stopBelow, double standing) => shop.IsVacuumThroughToolSensor
        || (shop.Sensor.Crosstalk != 0
            && (Math.Abs(shop.Sensor.Crosstalk) * shop.Vacuum.RatedAmperes / shop.Sensor.Turns) + standing
                >= (LeastShare * stopBelow) - Added(shop));

    private static double Added(VirtualShop shop) => shop.Sensor.HumAmperes + (NoiseShare * shop.Sensor.NoiseAmperes);
}
