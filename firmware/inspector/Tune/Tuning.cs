using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Tune;

/// <summary>Finds settings from recordings of the quiet line and of each tool, and tries them on every one.</summary>
/// <param name="Recordings">The recordings, those of the quiet line first.</param>
/// <param name="Settings">The settings.</param>
internal sealed record Tuning(IReadOnlyList<TunedRecording> Recordings, TunedSettings Settings)
{
    // The window fills, and the filters of a sensor settle.
    private const double SettleSeconds = 0.5;

    /// <summary>Gets what the line shows at most without a tool, in mA.</summary>
    public int Quiet => Recordings.Where(recording => recording.IsQuiet).Max(recording => recording.Milliamperes);

    /// <summary>Gets the tools too small for the quiet line.</summary>
    public IEnumerable<TunedRecording> TooSmall =>
        Recordings.Where(recording => !recording.IsQuiet && !new TunedSettings(Quiet, recording.Milliamperes).IsPossible);

    /// <summary>Gets a value indicating whether all can be told apart and the core does so.</summary>
    public bool IsGood => Settings.IsPossible && Recordings.All(recording => recording.IsGood);

    /// <summary>Finds them.</summary>
    /// <param name="quiet">Recordings of the line without a tool.</param>
    /// <param name="tools">Recordings of tools.</param>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    /// <returns>What was found.</returns>
    public static Tuning Of(IReadOnlyList<ReplaySource> quiet, IReadOnlyList<ReplaySource> tools, Action<double> progress)
    {
        CheckSensors([.. quiet, .. tools]);
        double steps = 2.0 * (quiet.Count + tools.Count);
        int done = 0;
        List<TunedRecording> recordings = [];
        foreach (ReplaySource source in quiet)
        {
            recordings.Add(new TunedRecording(source, true, Greatest(source)));
            progress(++done / steps);
        }

        int most = recordings.Max(recording => recording.Milliamperes);
        foreach (ReplaySource source in tools)
        {
            int shown = ToolMeasure.Of(source, most);
            recordings.Add(shown > 0
                ? new TunedRecording(source, false, shown)
                : throw new UserException(
                    $"{source.Name} shows no tool: it stays near the quiet line's {most / 1000.0:0.00} A, or is over in half a "
                    + "second; --idle is for recordings with all tools off."));
            progress(++done / steps);
        }

        TunedSettings settings = new(
            most, recordings.Where(recording => !recording.IsQuiet).Min(recording => recording.Milliamperes));
        foreach (TunedRecording recording in recordings.Where(_ => settings.IsPossible))
        {
            recording.Try(settings);
            progress(++done / steps);
        }

        return new Tuning(recordings, settings);
    }

    private static int Greatest(ReplaySource source)
    {
        int greatest = 0;
        source.Run(
            source.Settings,
            (now, core) =>
            {
                if (core.IsWindowValid && now > SettleSeconds - source.Lead && now <= source.Seconds)
                {
                    greatest = Math.Max(greatest, core.SwingMilliamperes);
                }
            });
        return greatest > 0
            ? greatest
            : throw new UserException($"{source.Name} is too short for a quiet line; some seconds are needed.");
    }

    // Levels are of one sensor as it is set; a table's readings go through the default one.
    private static void CheckSensors(IReadOnlyList<ReplaySource> sources)
    {
        foreach (SettingId id in new[] { SettingId.SensorGain, SettingId.Turns })
        {
            ReplaySource? other = sources.FirstOrDefault(source => source.Settings[id] != sources[0].Settings[id]);
            if (other is not null)
            {
                string name = SettingsTable.Row(id).Name;
                throw new UserException(
                    $"{sources[0].Name} and {other.Name} are of different sensors: {name} is "
                    + $"{FirmwareText.Of(id, sources[0].Settings[id])} in one and "
                    + $"{FirmwareText.Of(id, other.Settings[id])} in the other.");
            }
        }
    }
}
