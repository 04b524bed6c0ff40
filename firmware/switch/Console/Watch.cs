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

    private readonly TextOutput _output;
    private readonly DetectionCore _core;
    private readonly RunHours _hours;
    private long _next;
    private int _part;
    private int _faults;
    private int _figure;

    /// <summary>Whether lines are written.</summary>
    public bool IsOn;

    /// <summary>Initializes a new instance of the <see cref="Watch"/> class.</summary>
    /// <param name="output">Where the lines go.</param>
    /// <param name="core">What is shown.</param>
    /// <param name="hours">The vacuum's hours and starts.</param>
    public Watch(TextOutput output, DetectionCore core, RunHours hours)
    {
        _output = output;
        _core = core;
        _hours = hours;
    }

    /// <summary>Begins with the header.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Start(long now)
    {
        IsOn = true;
        _next = now;
        _part = 0;
        _output.Text(Header).End();
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
        DetectionCore core = _core;
        TextOutput output = _output;
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
                output.Fixed(_hours.Seconds / 36, 2).Byte(Comma);
                output.Number(_hours.Starts).End();
                _part = -1;
                break;
        }

        _part++;
    }

    private void LookAtFaults(FaultMonitor faults)
    {
        _faults = faults.Standing;
        int first = FaultBits.Next(_faults, -1);
        _figure = first < 0 ? 0 : faults[(Fault)first].Figure;
    }
}
