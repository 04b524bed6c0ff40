using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Writes into the timeline what the switch saw and did, and why.</summary>
/// <param name="timeline">The timeline.</param>
internal sealed class Storyteller(List<Entry> timeline)
{
    private VacuumState _state;
    private bool _wasRunning;
    private bool _wasStuck;
    private bool _wasIgnoring;
    private int _tool = ToolGuess.None;
    private int _second = ToolGuess.None;
    private long _startingSince;
    private int _active;

    /// <summary>Gets the timeline.</summary>
    public IReadOnlyList<Entry> Timeline => timeline;

    /// <summary>Gets the number of faults that came up.</summary>
    public int Faults { get; private set; }

    /// <summary>Looks at the switch after a step.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="core">Its core.</param>
    /// <param name="settings">Its settings.</param>
    /// <param name="names">The names of the tools that it knows; null where nobody has given any.</param>
    public void Look(long now, DetectionCore core, SettingValues settings, ToolNames? names = null)
    {
        if (core.Faults.IsVacuumStuck != _wasStuck)
        {
            _wasStuck = core.Faults.IsVacuumStuck;
            Tell(now, $"{StateText.Of(core)}: {(_wasStuck ? WhyText.VacuumRuns : "the vacuum's current has gone")}");
        }

        if (core.IsToolRunning != _wasRunning)
        {
            _wasRunning = core.IsToolRunning;
            Tell(now, _wasRunning ? $"sees a tool: {core.SwingMilliamperes / 1000.0:0.00} A" : "sees the tool stop");
        }

        int tool = core.IsToolRunning ? core.Vacuum.Guess.Tool : ToolGuess.None;
        if (tool != _tool)
        {
            _tool = tool;
            if (tool != ToolGuess.None)
            {
                Tell(now, $"takes it for tool {tool + 1}{NameOf(tool, names)}");
            }
        }

        SecondTool second = core.Vacuum.Second;
        tool = second.IsThere ? second.Tool : ToolGuess.None;
        if (tool != _second)
        {
            _second = tool;
            if (tool != ToolGuess.None)
            {
                Tell(now, $"takes what runs beside it for tool {tool + 1}{NameOf(tool, names)}");
            }
        }

        if (core.Vacuum.Ignored.IsAlone != _wasIgnoring)
        {
            _wasIgnoring = !_wasIgnoring;
            if (_wasIgnoring || core.IsToolRunning)
            {
                Tell(now, _wasIgnoring ? "takes no notice of it" : "takes notice again: something runs beside it");
            }
        }

        if (core.Vacuum.State != _state)
        {
            VacuumState from = _state;
            _state = core.Vacuum.State;
            _startingSince = _state == VacuumState.Starting ? now : _startingSince;
            if (Reason(from, _state, core, settings, now) is { } reason)
            {
                Tell(now, $"{StateText.Name(_state)}: {reason}");
            }
        }

        LookAtFaults(now, core);
    }

    /// <summary>The box has lost its power, or its firmware has come up again.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="text">What the timeline says.</param>
    public void Reset(long now, string text)
    {
        _state = VacuumState.Idle;
        _wasRunning = false;
        _wasStuck = false;
        _wasIgnoring = false;
        _tool = ToolGuess.None;
        _second = ToolGuess.None;
        _active = 0;
        Tell(now, text);
    }

    private static string NameOf(int tool, ToolNames? names) =>
        names is null || names.Book[tool, ToolFigure.Named] == 0 ? ""
            : $" ({Encoding.ASCII.GetString(names.Bytes, tool * ToolNames.Most, ToolNames.Most).TrimEnd('\0')})";

    private string? Reason(
        VacuumState from, VacuumState to, DetectionCore core, SettingValues settings, long now) => (from, to) switch
    {
        (VacuumState.Starting, VacuumState.On) => settings[SettingId.StartDelay] == CoreSettings.AfterSurge
            ? $"the start surge is over, {(now - _startingSince) / 1000.0:0} ms after the tool was seen"
            : $"the start delay of {settings[SettingId.StartDelay]} ms is over",
        (VacuumState.RunOn, VacuumState.On) => "the tool is back within the run-on",
        (_, VacuumState.RunOn) => core.Vacuum.IsStretched
            ? "the vacuum runs for 60 s more, as there were many starts in a minute"
            : $"the vacuum runs for {core.Vacuum.RunOn / 1000.0:0.#} s more",
        (VacuumState.RunOn, VacuumState.Idle) => "vacuum told off, the run-on is over",
        (VacuumState.Starting, VacuumState.Idle) => core.Vacuum.Ignored.IsAlone ? null
            : "vacuum not started, no tool ran after that current",
        (_, VacuumState.ByHand) => "vacuum on",
        (_, VacuumState.UntilStop) => "vacuum told off until the tool stops",
        (_, VacuumState.Held) => "vacuum told off until 'vacuum auto' or a long press",
        (VacuumState.Held, _) => "hold released",
        (_, VacuumState.Fault) => "vacuum told off until the fault has ended",
        _ => null,
    };

    private void LookAtFaults(long now, DetectionCore core)
    {
        int changed = core.Faults.Standing ^ _active;
        _active = core.Faults.Standing;
        for (int i = FaultBits.Next(changed, -1); i >= 0; i = FaultBits.Next(changed, i))
        {
            bool isActive = core.Faults[(Fault)i].IsActive;
            Faults += isActive ? 1 : 0;
            Tell(now, $"fault {(isActive ? "comes up" : "ends")}: {FaultText.Name((Fault)i)}");
        }
    }

    private void Tell(long now, string text) => timeline.Add(new Entry(now, Who.Switch, text));
}
