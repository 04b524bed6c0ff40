using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;

namespace NanoDustSwitch.Inspector.Tune;

/// <summary>The settings that tell the quiet line from every tool with the largest margin.</summary>
/// <remarks>
/// As far above the quiet line as below the smallest tool: their geometric mean. The distances that the switch itself keeps from
/// both, and stop-below, are the sums of <c>teach</c>.
/// </remarks>
internal sealed class TunedSettings
{
    // Shown with two decimals.
    private const int Step = 10;

    /// <summary>Initializes a new instance of the <see cref="TunedSettings"/> class.</summary>
    /// <param name="quiet">What the line shows at most without a tool, in mA.</param>
    /// <param name="tool">What the smallest tool shows at least, in mA.</param>
    public TunedSettings(int quiet, int tool)
    {
        int between = (int)Math.Round(Math.Sqrt((double)quiet * tool) / Step) * Step;
        TaughtLevels levels = new(quiet, quiet, tool, between, between);
        IsPossible = levels.IsPossible;
        StartAt = levels.StartAt;
        StopBelow = levels.StopBelow;
        Noise = Math.Min(quiet, SettingsTable.Row(SettingId.Noise).Greatest);
    }

    /// <summary>Gets a value indicating whether the switch can tell them apart.</summary>
    public bool IsPossible { get; }

    /// <summary>Gets start-at in mA.</summary>
    public int StartAt { get; }

    /// <summary>Gets stop-below in mA.</summary>
    public int StopBelow { get; }

    /// <summary>Gets noise in mA.</summary>
    public int Noise { get; }

    /// <summary>Gets the lines for the board's console, which takes them in this order whatever it is set to.</summary>
    public IReadOnlyList<string> Lines =>
    [
        // Out of the way first: start-at must stay above stop-below at every step.
        SettingChoice.Text(SettingId.StopBelow, SettingsTable.Row(SettingId.StopBelow).Least),
        SettingChoice.Text(SettingId.StartAt, StartAt),
        SettingChoice.Text(SettingId.StopBelow, StopBelow),
        SettingChoice.Text(SettingId.Noise, Noise),
        "save",
    ];

    /// <summary>Puts them into other settings.</summary>
    /// <param name="made">The other settings.</param>
    /// <returns>A copy with these levels.</returns>
    public SettingValues In(SettingValues made)
    {
        SettingValues values = new();
        values.CopyFrom(made);
        values[SettingId.StartAt] = StartAt;
        values[SettingId.StopBelow] = StopBelow;
        values[SettingId.Noise] = Noise;
        return values;
    }
}
