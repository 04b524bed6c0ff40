namespace NanoDustSwitch.Firmware;

/// <summary>The levels for a tool, from what was measured of the tool and of the line without it.</summary>
/// <remarks>
/// Start-at becomes half the tool's current. If a lower one is already set it stays, because another tool may need it. Both
/// levels keep about the same distance from the noise as the core itself keeps from its noise floors. The benchmark measures
/// how often noise starts the vacuum at such levels, and tests with random shops check that tools do start it.
/// </remarks>
public sealed class TaughtLevels
{
    /// <summary>
    /// A tool must show at least this many times what the line shows without it. A sentence in Teacher spells out the number,
    /// and must change with it.
    /// </summary>
    public const int ToolOverQuiet = 3;

    private const int StartOverNoisePercent = 200;
    private const int StopOverNoisePercent = 130;
    private const int StopOfStartPercent = 60;

    /// <summary>Whether tool and quiet line can be told apart, and levels between them can be set.</summary>
    public readonly bool IsPossible;

    /// <summary>Value for start-at in mA.</summary>
    public readonly int StartAt;

    /// <summary>Value for stop-below in mA.</summary>
    public readonly int StopBelow;

    /// <summary>Initializes a new instance of the <see cref="TaughtLevels"/> class.</summary>
    /// <param name="quiet">The most that the line shows without the tool, in mA.</param>
    /// <param name="slowQuiet">The greatest answer of the slow lane without the tool, in mA. A level that is set already need
    /// only be clear of this.</param>
    /// <param name="tool">The least that the line shows with the tool, in mA.</param>
    /// <param name="startAt">What start-at is now, in mA.</param>
    /// <param name="stopBelow">What stop-below is now, in mA.</param>
    public TaughtLevels(int quiet, int slowQuiet, int tool, int startAt, int stopBelow)
    {
        int start = startAt < tool / 2 ? startAt : tool / 2;
        int stop = stopBelow < StopFor(start) ? stopBelow : StopFor(start);
        int leastStart = Least(quiet, slowQuiet, StartOverNoisePercent, startAt);
        StartAt = Within(SettingId.StartAt, start, leastStart);
        StopBelow = Within(SettingId.StopBelow, stop, Least(quiet, slowQuiet, StopOverNoisePercent, stopBelow));
        IsPossible = tool >= quiet * ToolOverQuiet && StartAt < tool && StopBelow < StartAt && StartAt >= leastStart;
    }

    /// <summary>Gives the highest stop-below that goes well with a start-at.</summary>
    /// <param name="startAt">Start-at in mA.</param>
    /// <returns>Stop-below in mA.</returns>
    public static int StopFor(int startAt)
    {
        return startAt * StopOfStartPercent / 100;
    }

    /// <summary>Gives the value for noise: the most that the line shows without the tool, within the setting's range.</summary>
    /// <param name="quiet">The most that the line shows without the tool, in mA.</param>
    /// <returns>Noise in mA.</returns>
    public static int NoiseFor(int quiet)
    {
        return Within(SettingId.Noise, quiet, 0);
    }

    /// <summary>Puts levels and noise into a draft of settings.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="noise">Noise in mA.</param>
    public void PutInto(SettingsDraft draft, int noise)
    {
        draft[SettingId.StartAt] = StartAt;
        draft[SettingId.StopBelow] = StopBelow;
        draft[SettingId.Noise] = noise;
    }

    // A level must be above the noise of a single cycle. One that is set already may stay below that, as long as it is clear of
    // the slow lane's noise: it may have been taught for a tool that only the slow lane finds.
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
