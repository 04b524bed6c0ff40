using System.Text;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// Looks at what a person could see: the vacuum's current, the relay, the console's text. Knows nothing of what the firmware
/// holds for true.
/// </summary>
/// <param name="rig">The shop.</param>
internal sealed class Witness(InjectedRig rig)
{
    private const long ASecond = 1_000_000;

    // A relay needs its time, and a word that is being said when it moves is not false.
    private const long Grace = ASecond / 2;

    private const string Prompt = "\n> ";

    private static readonly string[] s_off = ["off", "held off"];

    private readonly StringBuilder _said = new();
    private long _flowsSince = long.MaxValue;
    private string? _doubted;
    private long _doubtedAt;
    private int _lineAt;

    /// <summary>Gets all that the console has said.</summary>
    public string Said => _said.ToString();

    /// <summary>Gets the line that said "off" while the vacuum drew its current; null for none.</summary>
    public string? FalseOff { get; private set; }

    /// <summary>Gets the time at which a tool last drew its current, in microseconds.</summary>
    public long LastToolAt { get; private set; } = long.MinValue / 2;

    /// <summary>Gets the time at which the button was last pressed, in microseconds.</summary>
    public long LastPressAt { get; private set; } = long.MinValue / 2;

    /// <summary>Gets the time at which the relay was last driven, in microseconds.</summary>
    public long LastDrivenAt { get; private set; } = long.MinValue / 2;

    /// <summary>Lets time pass.</summary>
    /// <param name="microseconds">How long.</param>
    /// <param name="isOver">Ends it sooner.</param>
    /// <returns>True if it ended sooner.</returns>
    public bool Run(long microseconds, Func<bool>? isOver = null)
    {
        for (long end = rig.Time + microseconds; rig.Time < end;)
        {
            Step();
            if (isOver?.Invoke() == true)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Asks at the console.</summary>
    /// <param name="line">The line.</param>
    /// <returns>What the console said meanwhile.</returns>
    public string Ask(string line)
    {
        int from = _said.Length;
        rig.Do(line);
        Run(ASecond, () => _said.Length > from + Prompt.Length
            && _said.ToString(_said.Length - Prompt.Length, Prompt.Length) == Prompt);
        return _said.ToString(from, _said.Length - from);
    }

    /// <summary>Lets a step pass.</summary>
    public void Step()
    {
        rig.Step();
        long now = rig.Time;
        _flowsSince = !rig.Shop.Vacuum.IsRunning ? long.MaxValue : Math.Min(_flowsSince, now);
        LastPressAt = rig.IsButtonDown ? now : LastPressAt;
        LastDrivenAt = rig.Board.IsRelayDriven ? now : LastDrivenAt;
        LastToolAt = rig.IsToolRunning ? now : LastToolAt;
        string text = rig.TakeSaid();
        if (text.Length > 0)
        {
            _said.Append(text);
            Listen(now);
        }

        if (_doubted is not null && now - _doubtedAt > Grace)
        {
            FalseOff ??= _doubted;
        }

        _doubted = _flowsSince == long.MaxValue ? null : _doubted;
    }

    // What is told off is not said to be off; and a typed line comes back, also one that only begins like a word.
    private static bool SaysOff(string line)
    {
        string state = line.StartsWith("vacuum ", StringComparison.Ordinal) ? line["vacuum ".Length..].TrimStart() : line;
        return !line.StartsWith("vacuum off", StringComparison.Ordinal)
            && s_off.Any(off => state.StartsWith(off, StringComparison.Ordinal));
    }

    private void Listen(long now)
    {
        for (int i = _lineAt; i < _said.Length; i++)
        {
            if (_said[i] == '\n')
            {
                string line = _said.ToString(_lineAt, i - _lineAt);
                _lineAt = i + 1;
                if (_doubted is null && now - Grace > _flowsSince && SaysOff(line))
                {
                    _doubted = line;
                    _doubtedAt = now;
                }
            }
        }
    }
}
