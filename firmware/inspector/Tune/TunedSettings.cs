using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Board;

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

    private readonly TaughtLevels _levels;

    /// <summary>Initializes a new instance of the <see cref="TunedSettings"/> class.</summary>
    /// <param name="quiet">What the line shows at most without a tool, in mA.</param>
    /// <param name="tool">What the smallest tool shows at least, in mA.</param>
    public TunedSettings(int quiet, int tool)
    {
        int between = (int)Math.Round(Math.Sqrt((double)quiet * tool) / Step) * Step;
        _levels = new TaughtLevels(quiet, quiet, tool, between, between);
        Noise = TaughtLevels.NoiseFor(quiet);
    }

    /// <summary>Gets a value indicating whether the switch can tell them apart.</summary>
    public bool IsPossible => _levels.IsPossible;

    /// <summary>Gets start-at in mA.</summary>
    public int StartAt => _levels.StartAt;

    /// <summary>Gets stop-below in mA.</summary>
    public int StopBelow => _levels.StopBelow;

    /// <summary>Gets noise in mA.</summary>
    public int Noise { get; }

    /// <summary>Gets the lines for the board's console, which takes them in this order whatever it is set to.</summary>
    public IReadOnlyList<string> Lines =>
    [
        // Out of the way first: start-at must stay above stop-below at every step.
        FirmwareText.Line(SettingId.StopBelow, SettingsTable.Row(SettingId.StopBelow).Least),
        FirmwareText.Line(SettingId.StartAt, StartAt),
        FirmwareText.Line(SettingId.StopBelow, StopBelow),
        FirmwareText.Line(SettingId.Noise, Noise),
        "save",
    ];

    /// <summary>Puts them into a draft of settings.</summary>
    /// <param name="draft">The draft.</param>
    public void PutInto(SettingsDraft draft) => _levels.PutInto(draft, Noise);

    /// <summary>Gives the settings of a recording with these levels in them.</summary>
    /// <param name="source">The recording.</param>
    /// <returns>The settings.</returns>
    public SettingValues In(ReplaySource source)
    {
        SettingsDraft draft = new(source.Settings);
        PutInto(draft);
        return SettingsOnPc.Checked(draft, source.Gate, $"{source.Name}: ");
    }
}
