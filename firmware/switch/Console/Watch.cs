using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Ten lines a second that a program can read: CSV with a header, until a key is pressed.</summary>
public sealed class Watch
{
    private const long Period = 100000;

    private readonly SerialConsole _console;
    private long _next;

    /// <summary>Whether lines are written.</summary>
    public bool IsOn;

    /// <summary>Initializes a new instance of the <see cref="Watch"/> class.</summary>
    /// <param name="console">The console.</param>
    public Watch(SerialConsole console)
    {
        _console = console;
    }

    /// <summary>Begins with the header.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Start(long now)
    {
        IsOn = true;
        _next = now;
        _console.Say("seconds,amperes,swing,start_at,stop_below,tool,vacuum,state");
    }

    /// <summary>Writes a line when it is time.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        if (now < _next)
        {
            return;
        }

        // After a stall the missed lines are left out, not made up for.
        _next = now - _next > Period ? now + Period : _next + Period;
        DetectionCore core = _console.Switch.Core;
        TextOutput output = _console.Output;
        output.Fixed(now / 10000, 2).Text(",");
        output.Fixed(core.Milliamperes, 3).Text(",");
        output.Fixed(core.SwingMilliamperes, 3).Text(",");
        output.Fixed(core.StartMilliamperes, 3).Text(",");
        output.Fixed(core.StopMilliamperes, 3).Text(",");
        output.Number(core.IsToolRunning ? 1 : 0).Text(",");
        output.Number(core.IsRelayClosed ? 1 : 0).Text(",");
        output.Text(StateText.Name(core.Vacuum.State)).End();
    }
}
