namespace NanoDustSwitch.Firmware;

/// <summary>Turns on the stream of buckets, from which a PC can repeat every decision.</summary>
public sealed class RecordWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="RecordWord"/> class.</summary>
    public RecordWord()
        : base("record", "record", "a recording for a PC to replay; any key ends it")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.StartRecording();
    }
}
