namespace NanoDustSwitch.Firmware;

/// <summary>The levels that follow from what was measured.</summary>
/// <remarks>
/// Half the tool's current, or what is set already where that is lower: another tool may need it. Never within the noise, with
/// the same distances that the core keeps from its noise floor. The benchmark says how often noise starts the vacuum at such levels; the random shops that tools do.
/// </remarks>
public sealed class TaughtLevels
{
    private const int StartOverNoisePercent = 225;
    private const int StopOverNoisePercent = 130;
    private const int StopOfStartPercent = 60;
    private const int ToolOverNoisePercent = 275;

    /// <summary>Whether tool and quiet line can be told apart: the tool shows nearly three times the line, 2.75 times.</summary>
    public readonly bool IsPossible;

    /// <summary>Value for start-at in mA.</summary>
    public readonly int StartAt;

    /// <summary>Value for stop-below in mA.</summary>
    public readonly int StopBelow;

    /// <summary>Value for noise in mA.</summary>
    public readonly int Noise;

    /// <summary>Initializes a new instance of the <see cref="TaughtLevels"/> class.</summary>
    /// <param name="quiet">What the line shows at most without the tool, in mA.</param>
    /// <param name="tool">What it shows at least with it, in mA.</param>
    /// <param name="startAt">What start-at is now, in mA.</param>
    /// <param name="stopBelow">What stop-below is now, in mA.</param>
    public TaughtLevels(int quiet, int tool, int startAt, int stopBelow)
    {
        int start = startAt < tool / 2 ? startAt : tool / 2;
        int stop = stopBelow < start * StopOfStartPercent / 100 ? stopBelow : start * StopOfStartPercent / 100;
        StartAt = Within(SettingId.StartAt, start, quiet * StartOverNoisePercent / 100);
        StopBelow = Within(SettingId.StopBelow, stop, quiet * StopOverNoisePercent / 100);
        Noise = Within(SettingId.Noise, quiet, 0);
        IsPossible = tool >= quiet * ToolOverNoisePercent / 100 && StartAt < tool && StopBelow < StartAt && StartAt >= quiet * StartOverNoisePercent / 100;
    }

    private static int Within(SettingId id, int value, int least)
    {
        Setting row = SettingsTable.Row(id);
        int raised = value > least ? value : least;
        return raised < row.Least ? row.Least : raised > row.Greatest ? row.Greatest : raised;
    }
}
