using NanoDustSwitch.Inspector.Replay;

namespace NanoDustSwitch.Inspector.Tune;

/// <summary>A recording that settings are found from.</summary>
/// <param name="source">The recording.</param>
/// <param name="isQuiet">Whether it is of the line without a tool.</param>
/// <param name="shown">What the line shows at most, or the tool at least, in mA.</param>
internal sealed class TunedRecording(ReplaySource source, bool isQuiet, int shown)
{
    /// <summary>Gets the recording.</summary>
    public ReplaySource Source => source;

    /// <summary>Gets a value indicating whether it is of the line without a tool.</summary>
    public bool IsQuiet => isQuiet;

    /// <summary>Gets what the line shows at most, or the tool at least, in mA.</summary>
    public int Milliamperes => shown;

    /// <summary>Gets the replay with the settings that were found; null before.</summary>
    public ReplayRun? Check { get; private set; }

    /// <summary>
    /// Gets a value indicating whether the core does with it what it should: nothing, or find the tool and keep it; and
    /// comes up with no fault.
    /// </summary>
    public bool IsGood => Check is { } run && !run.Faults.Any()
        && (isQuiet ? double.IsNaN(run.SeenAt) : !double.IsNaN(run.SeenAt) && run.Drops == 0);

    /// <summary>Gives how far it is from start-at, as a factor.</summary>
    /// <param name="settings">The settings.</param>
    /// <returns>1 or more on the right side.</returns>
    public double Margin(TunedSettings settings) =>
        isQuiet ? (double)settings.StartAt / Math.Max(1, shown) : (double)shown / settings.StartAt;

    /// <summary>Lets the core decide with settings.</summary>
    /// <param name="settings">The settings.</param>
    public void Try(TunedSettings settings) => Check = new ReplayRun(source, settings.In(source)).Run(_ => { });
}
