using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Ten lines a second that a program can read: CSV with a header, until a key is pressed.</summary>
public sealed class Watch
{
    /// <summary>
    /// The columns: seconds since the boot; currents in A; whether the tool runs and the relay is closed; the state; seconds until it ends
    /// by itself; faults that stand, as the sum of two to the power of their numbers; the figure of the first of them; the vacuum's hours and starts.
    /// </summary>
    public const string Header = "seconds,amperes,swing,start_at,stop_below,tool,vacuum,state,left,faults,figure,hours,starts";

    private const long PeriodMicroseconds = Time.Second / 10;

    // Bytes and not texts: on the device every text that is named in the code is made anew each time.
    private const byte Comma = (byte)',';
    private const byte Nought = (byte)'0';
    private const byte One = (byte)'1';

    private readonly SerialConsole _console;
    private long _next;
    private int _part;
    private int _faults;
    private int _figure;

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
        _console.Say(Header);
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
                _next = now - _next > PeriodMicroseconds ? now + PeriodMicroseconds : _next + PeriodMicroseconds;
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
            case 5:
                output.Byte(core.IsToolRunning ? One : Nought);
                output.Byte(Comma);
                output.Byte(core.IsRelayClosed ? One : Nought);
                output.Byte(Comma);
                output.Text(StateText.Name(core.Vacuum.State)).Byte(Comma);
                break;
            case 6:
                output.Fixed(core.Vacuum.Remaining(now) / (Time.Second / 10), 1).Byte(Comma);
                break;
            case 7:
                LookAtFaults(core.Faults);
                break;
            case 8:
                output.Number(_faults).Byte(Comma);
                output.Number(_figure).Byte(Comma);
                break;
            default:
                output.Fixed(_console.Switch.Hours.Seconds / 36, 2).Byte(Comma);
                output.Number(_console.Switch.Hours.Starts).End();
                _part = -1;
                break;
        }

        _part++;
    }

    private void LookAtFaults(FaultMonitor faults)
    {
        _faults = 0;
        _figure = 0;
        for (int i = FaultMonitor.Count - 1; i >= 0; i--)
        {
            FaultState fault = faults[(Fault)i];
            if (fault.IsActive)
            {
                _faults |= 1 << i;
                _figure = fault.Figure;
            }
        }
    }
}
