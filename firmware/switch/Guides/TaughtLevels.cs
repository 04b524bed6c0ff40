namespace NanoDustSwitch.Firmware;

/// <summary>The levels that follow from what was measured.</summary>
/// <remarks>
/// Half the tool's current, or what is set already where that is lower: another tool may need it. Never within the noise, by about
/// the distances that the core keeps from its noise floors. The benchmark says how often noise starts the vacuum at such levels; the random shops that tools do.
/// </remarks>
public sealed class TaughtLevels
{
    private const int StartOverNoisePercent = 200;
    private const int StopOverNoisePercent = 130;
    private const int StopOfStartPercent = 60;
    private const int ToolOverNoisePercent = 300;

    /// <summary>Whether tool and quiet line can be told apart: the tool shows three times the line.</summary>
    public readonly bool IsPossible;

    /// <summary>Value for start-at in mA.</summary>
    public readonly int StartAt;

    /// <summary>Value for stop-below in mA.</summary>
    public readonly int StopBelow;

    /// <summary>Initializes a new instance of the <see cref="TaughtLevels"/> class.</summary>
    /// <param name="quiet">What the line shows at most without the tool, in mA.</param>
    /// <param name="slowQuiet">What the slow lane says of it at most, in mA: levels that are set already may lie so low.</param>
    /// <param name="tool">What it shows at least with the tool, in mA.</param>
    /// <param name="startAt">What start-at is now, in mA.</param>
    /// <param name="stopBelow">What stop-below is now, in mA.</param>
    public TaughtLevels(int quiet, int slowQuiet, int tool, int startAt, int stopBelow)
    {
        int start = startAt < tool / 2 ? startAt : tool / 2;
        int stop = stopBelow < start * StopOfStartPercent / 100 ? stopBelow : start * StopOfStartPercent / 100;
        int leastStart = Least(quiet, slowQuiet, StartOverNoisePercent, startAt);
        StartAt = Within(SettingId.StartAt, start, leastStart);
        StopBelow = Within(SettingId.StopBelow, stop, Least(quiet, slowQuiet, StopOverNoisePercent, stopBelow));
        IsPossible = tool >= quiet * ToolOverNoisePercent / 100 && StartAt < tool && StopBelow < StartAt && StartAt >= leastStart;
    }

    // Above the noise of a cycle; or what is set already, as long as the slow lane can have found a tool by it.
    private static int Least(int quiet, int slowQuiet, int percent, int set)
    {
        int least = quiet * percent / 100;
        int slowLeast = slowQuiet * percent / 100;
        int kept = set > slowLeast ? set : slowLeast;
        return kept < least ? kept : least;
    }

    private static int Within(SettingId id, int value, int least)
    {
        Setting row = SettingsTable.Row(id);
        int raised = value > least ? value : least;
        return raised < row.Least ? row.Least : raised > row.Greatest ? row.Greatest : raised;
    }
}
