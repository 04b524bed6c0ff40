using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Ten lines a second that a program can read: CSV with a header, until a key is pressed.</summary>
public sealed class Watch
{
    private const long Period = 100000;

    // Bytes and not texts: on the device every text that is named in the code is made anew each time.
    private const byte Comma = (byte)',';
    private const byte Nought = (byte)'0';
    private const byte One = (byte)'1';

    private readonly SerialConsole _console;
    private long _next;
    private int _part;

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
        _part = 0;
        _console.Say("seconds,amperes,swing,start_at,stop_below,tool,vacuum,state");
    }

    /// <summary>Ends it, with a whole line.</summary>
    public void Stop()
    {
        while (_part != 0)
        {
            Update(_next);
        }

        IsOn = false;
    }

    /// <summary>Writes a part of a line when it is time: a whole line in one step would leave a hole in the readings.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        DetectionCore core = _console.Switch.Core;
        TextOutput output = _console.Output;
        switch (_part)
        {
            case 0:
                if (now < _next)
                {
                    return;
                }

                // After a stall the missed lines are left out, not made up for.
                _next = now - _next > Period ? now + Period : _next + Period;
                output.Fixed(now / 10000, 2).Byte(Comma);
                break;
            case 1:
                output.Fixed(core.Milliamperes, 3).Byte(Comma);
                break;
            case 2:
                output.Fixed(core.SwingMilliamperes, 3).Byte(Comma);
                break;
            case 3:
                output.Fixed(core.StartMilliamperes, 3).Byte(Comma);
                break;
            case 4:
                output.Fixed(core.StopMilliamperes, 3).Byte(Comma);
                break;
            default:
                output.Byte(core.IsToolRunning ? One : Nought);
                output.Byte(Comma);
                output.Byte(core.IsRelayClosed ? One : Nought);
                output.Byte(Comma);
                output.Text(StateText.Name(core.Vacuum.State)).End();
                _part = -1;
                break;
        }

        _part++;
    }
}
