using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says in one sentence why the vacuum is on or off, and what to do about a fault.</summary>
public sealed class WhyWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="WhyWord"/> class.</summary>
    public WhyWord()
        : base("why", "why", "why the vacuum is on or off, in a sentence")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        WhyText.Write(console.Output, console.Switch);
        console.Output.End();
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        int standing = 0;
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            FaultState fault = console.Switch.Core.Faults[(Fault)i];
            if (!fault.IsActive)
            {
                continue;
            }

            if (standing == row)
            {
                console.Output.Text(FaultText.Name((Fault)i)).Text(": ").Text(FaultText.ToDo((Fault)i)).End();
                console.Output.Text("    ").Text(FaultText.Ends((Fault)i, fault.IsLatched)).End();
                return true;
            }

            standing++;
        }

        return false;
    }
}
