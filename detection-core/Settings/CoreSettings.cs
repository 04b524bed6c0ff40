namespace NanoDustSwitch.Detection;

/// <summary>What the core needs to know from the settings; handed over once, and again when they change.</summary>
public sealed class CoreSettings
{
    /// <summary>Value of <see cref="StartDelayMilliseconds"/> that means: after the start surge.</summary>
    public const int AfterSurge = -1;

    /// <summary>Longest wait for the end of a start surge, in milliseconds.</summary>
    public const int LongestSurgeMilliseconds = 2000;

    /// <summary>Rms current at which a tool counts as running, in mA.</summary>
    public int StartAtMilliamperes;

    /// <summary>Rms current below which it counts as stopped, in mA; under <see cref="StartAtMilliamperes"/>.</summary>
    public int StopBelowMilliamperes;

    /// <summary>Buckets in a row that make a start.</summary>
    public int ConfirmBuckets;

    /// <summary>Time from the tool's start to the vacuum's in ms, or <see cref="AfterSurge"/>.</summary>
    public int StartDelayMilliseconds;

    /// <summary>Time the vacuum runs on after the tool's stop, in ms.</summary>
    public int RunOnMilliseconds;

    /// <summary>Shortest time between the relay's opening and its next closing, in ms.</summary>
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

    /// <summary>Turns of the vacuum's wire through a sensor of its own, like the tool's; 0 where none is fitted.</summary>
    public int VacuumTurns;

    /// <summary>Swing of the idle line from which the noise floor starts, as the rms current of a sine, in mA.</summary>
    public int NoiseMilliamperes;
}
