namespace NanoDustSwitch.Firmware;

/// <summary>Turns on the stream of ten lines a second.</summary>
public sealed class WatchWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="WatchWord"/> class.</summary>
    public WatchWord()
        : base("watch", "watch", "ten lines a second of what it sees; any key ends it")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.Watch.Start(console.Now);
    }
}
