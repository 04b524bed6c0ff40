namespace NanoDustSwitch.Detection;

/// <summary>
/// What the core needs to know from the settings. It is handed over at the start, and anew whenever a setting changes.
/// </summary>
public sealed class CoreSettings
{
    /// <summary>
    /// The value of <see cref="StartDelayMilliseconds"/> that stands for "when the tool's start surge is over".
    /// </summary>
    public const int AfterSurge = -1;

    /// <summary>Longest wait for the end of a start surge, in milliseconds.</summary>
    public const int LongestSurgeMilliseconds = 3000;

    /// <summary>Greatest value of <see cref="StartsAMinute"/>.</summary>
    public const int MostStartsAMinute = 30;

    /// <summary>Rms current at which a tool counts as running, in mA.</summary>
    public int StartAtMilliamperes;

    /// <summary>Rms current below which a tool counts as stopped, in mA; less than <see cref="StartAtMilliamperes"/>.</summary>
    public int StopBelowMilliamperes;

    /// <summary>How many buckets in a row must show a tool before it counts as running; 0 counts as 1.</summary>
    public int ConfirmBuckets;

    /// <summary>Time from the tool's start to the vacuum's, in ms, or <see cref="AfterSurge"/>.</summary>
    public int StartDelayMilliseconds;

    /// <summary>Time the vacuum runs on after the tool's stop, in ms.</summary>
    public int RunOnMilliseconds;

    /// <summary>
    /// Shortest time for which the relay's contact is open, in ms; see <see cref="RelayGate.LongestHoldMicroseconds"/>.
    /// </summary>
    public int RestartGapMilliseconds;

    /// <summary>Automatic starts a minute above which the run-on is stretched.</summary>
    public int StartsAMinute;

    /// <summary>Longest run of a tool that the vacuum follows, in ms; 0 for no limit.</summary>
    public int LongestRunMilliseconds;

    /// <summary>Longest time the vacuum stays on by hand, in ms.</summary>
    public int ByHandMilliseconds;

    /// <summary>Sensor's gain at the converter pin, in µV/A with one turn.</summary>
    public int MicrovoltsAnAmpere;

    /// <summary>Turns of the tool's wire through the sensor.</summary>
    public int Turns;

    /// <summary>Turns of the vacuum's wire through a second sensor of the same kind; 0 where none is fitted.</summary>
    public int VacuumTurns;

    /// <summary>
    /// The noise floor to begin with: the swing of the idle line, told as the rms current of the sine that would have the same
    /// swing, in mA.
    /// </summary>
    public int NoiseMilliamperes;

    /// <summary>
    /// Current that the tool's circuit carries for long, in mA. No tool with a cord and a plug runs above it (NEC 210.23(A)), so
    /// a larger current is that of a start.
    /// </summary>
    public int CircuitMilliamperes;
}
