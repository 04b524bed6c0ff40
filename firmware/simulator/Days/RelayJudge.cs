using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>
/// Looks whether the relay rests for as long as it must after every opening, and whether it comes back while a tool goes on.
/// </summary>
/// <param name="shop">The shop, with the driver and the coil.</param>
internal sealed class RelayJudge(VirtualShop shop)
{
    // A look for the vacuum's own current, a collection and the window after it are over by then.
    private const long Patience = 1_000_000;

    private long _gap;
    private long _longestDelay;
    private bool _wasFed;
    private long _releasedAt = long.MinValue / 2;
    private long _offSince = -1;

    /// <summary>Gets the longest time from the command to open until the relay may close again, in microseconds.</summary>
    public long Rest => RelayGate.LongestHoldMicroseconds + _gap;

    /// <summary>Takes the settings in force.</summary>
    /// <param name="settings">The settings.</param>
    public void Use(SettingValues settings)
    {
        _gap = settings[SettingId.RestartGap] * 1000L;
        _longestDelay = 1000L * Math.Max(settings[SettingId.StartDelay], CoreSettings.LongestSurgeMilliseconds);
    }

    /// <summary>Looks at the coil after a step.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <returns>What is wrong; null when nothing is.</returns>
    public string? LookAtCoil(long now)
    {
        bool isFed = shop.Driver.IsEnergised(now);
        if (isFed == _wasFed)
        {
            return null;
        }

        _wasFed = isFed;
        long rested = shop.Driver.ChangedAt - _releasedAt;
        if (!isFed)
        {
            _releasedAt = shop.Driver.ChangedAt;
        }

        return isFed && rested < _gap ? $"the relay rested for {rested / 1000} ms only" : null;
    }

    /// <summary>Looks whether a vacuum that was on for the tool is off for longer than anything that is right.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="isOff">Whether it is off, and the tool goes on and nothing excuses it.</param>
    /// <returns>What is wrong, told once; null when nothing is.</returns>
    public string? LookForReturn(long now, bool isOff)
    {
        if (!isOff || _offSince < 0)
        {
            _offSince = isOff ? now : -1;
            return null;
        }

        if (now - _offSince <= Rest + _longestDelay + Patience)
        {
            return null;
        }

        _offSince = long.MaxValue / 2;
        return "the vacuum went off while the tool ran, and did not come back";
    }
}
