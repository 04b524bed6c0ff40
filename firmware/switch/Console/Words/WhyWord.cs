using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says in one sentence why the vacuum is on or off, and what to do about a fault.</summary>
public sealed class WhyWord : Word
{
    private readonly DetectionCore _core;
    private readonly WhyText _why;

    /// <summary>Initializes a new instance of the <see cref="WhyWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="why">Writes why the vacuum is on or off.</param>
    public WhyWord(DetectionCore core, WhyText why)
        : base("why", "why", "why the vacuum is on or off, in a sentence")
    {
        _core = core;
        _why = why;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        _why.Answer(console.Output, console.Now);
        _why.WriteStay(console.Output, console.Now);
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        FaultMonitor faults = _core.Faults;
        int at = FaultBits.At(faults.Standing, row);
        if (at < 0)
        {
            return false;
        }

        Fault fault = (Fault)at;
        FaultState state = faults[fault];
        TextOutput output = console.Output;
        output.Text(FaultText.Name(fault)).Text(" since ").Clock(state.Since / Time.Second).Text(": ");
        FaultText.Seen(output, fault, state.Figure).End();
        output.Text("    do: ").Text(FaultText.ToDo(fault)).End();
        output.Text("    ").Text(FaultText.Ends(fault, state.IsLatched))
            .Text(FaultText.StaysOverPowerCut(fault, state.IsLatched) ? ", over a power cut too" : "").End();
        return true;
    }
}
