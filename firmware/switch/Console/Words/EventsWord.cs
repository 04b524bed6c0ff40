using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Lists the entries of the event log, oldest first.</summary>
public sealed class EventsWord : Word
{
    private readonly EventLog _log;

    /// <summary>Initializes a new instance of the <see cref="EventsWord"/> class.</summary>
    /// <param name="log">The event log.</param>
    public EventsWord(EventLog log)
        : base("events", "events", "what has happened, oldest first")
    {
        _log = log;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        EventLog log = _log;
        if (row >= log.Count)
        {
            return false;
        }

        LogEntry entry = log.At(row);
        EventText.Write(console.Output, entry);
        console.Output.End();
        if (entry.Kind == LogKind.FaultRaised)
        {
            console.Output.Text("    do: ").Text(FaultText.ToDo((Fault)entry.First)).End();
        }

        return true;
    }
}
