using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says in one sentence why the vacuum is on or off, and what to do about a fault.</summary>
public sealed class WhyWord : Word
{
    private readonly DetectionCore _core;
    private readonly WhyText _why;
    private readonly StayWatch _stay;
    private readonly Controls _controls;

    /// <summary>Initializes a new instance of the <see cref="WhyWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="why">Writes why the vacuum is on or off.</param>
    /// <param name="stay">Knows what may keep the vacuum on for long.</param>
    /// <param name="controls">Tells whether a hand switched the vacuum on while a tool ran.</param>
    public WhyWord(DetectionCore core, WhyText why, StayWatch stay, Controls controls)
        : base("why", "why", "why the vacuum is on or off, in a sentence")
    {
        _core = core;
        _why = why;
        _stay = stay;
        _controls = controls;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        _why.Answer(console.Output, console.Now);
        WriteStay(console.Output, console.Now);
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

    // Once the vacuum has been on for a minute, a line or two of what may keep it on.
    private void WriteStay(TextOutput output, long now)
    {
        StayReason reason = _stay.Reason(now);
        switch (reason)
        {
            case StayReason.None:
                return;
            case StayReason.ByHandWithTool:
            case StayReason.ByHand:
                output.Text("by hand for ").Number((now - _core.Vacuum.Since) / Time.Minute).Text(" min");
                if (_controls.IsOnInCut)
                {
                    output.Text(", switched on in the middle of a cut");
                }

                output.Text(reason == StayReason.ByHandWithTool ? "; a tool runs"
                    : _controls.IsOnInCut ? "; the tool has stopped: 'vacuum auto' ends it"
                    : "; no tool runs: 'vacuum auto' ends it").End();
                return;
        }

        output.Text("on for ").Number(_stay.OnFor(now) / Time.Minute).Text(" min; ");
        if (reason == StayReason.Changing)
        {
            output.Text("the current changes, as with a tool at work").End();
            return;
        }

        output.Text("steady at ").Amperes(_core.Milliamperes).Text(" for the last ").Number(_stay.SteadyFor(now) / Time.Minute)
            .Text(" min, ").Amperes(_stay.Most).Text(" at most").End();
        if (reason == StayReason.VacuumsOwn)
        {
            output.Text("    as much as the vacuum draws: its own wire may run through the tool's sensor").End();
            return;
        }

        output.Text(reason == StayReason.Fallen ? "    the tool may have stopped: " : "    if no tool runs: ")
            .Text("a lamp, charger or compressor on its line");
        if (_core.VacuumMilliamperes < 0)
        {
            output.Text(", or the vacuum's own wire, in or beside its sensor");
        }

        output.End();
    }
}
