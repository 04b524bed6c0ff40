using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Writes ten lines a second for a program to read, as CSV with a header, until a key is pressed.</summary>
public sealed class Watch
{
    /// <summary>
    /// The names of the columns: seconds since the boot; four currents in A; 1 while the tool runs, 1 while the relay is
    /// closed; the state; seconds until the state ends by itself; the present faults as a number in which bit n is the fault
    /// with number n; the figure of the first of these faults; the vacuum's run hours and starts; the number
    /// of the tool that it is probably, as 'tools' lists it, 0 where it is not known.
    /// </summary>
    public const string Header =
        "seconds,amperes,swing,start_at,stop_below,tool,vacuum,state,left,faults,figure,hours,starts,known";

    private const long PeriodMicroseconds = Time.Second / 10;

    // Bytes and not texts, because on the device every use of a text literal makes a new string.
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

    /// <summary>Whether lines are being written.</summary>
    public bool IsOn;

    /// <summary>Initializes a new instance of the <see cref="Watch"/> class.</summary>
    /// <param name="output">Where the lines go.</param>
    /// <param name="core">The core, whose state is shown.</param>
    /// <param name="hours">The vacuum's run hours and starts.</param>
    public Watch(TextOutput output, DetectionCore core, RunHours hours)
    {
        _output = output;
        _core = core;
        _hours = hours;
    }

    /// <summary>Begins to write lines; the first one is the header.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Start(long now)
    {
        IsOn = true;
        _next = now;
        _part = 0;
        _output.Text(Header).End();
    }

    /// <summary>Ends the lines, after completing the one that is under way.</summary>
    public void Stop()
    {
        while (_part != 0)
        {
            Update(_next);
        }

        IsOn = false;
    }

    /// <summary>
    /// Writes the next part of a line when it is time for it. A whole line in one step would leave too large a hole in the
    /// readings.
    /// </summary>
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

                // Lines that were missed while the board was busy are left out.
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
                output.Text(StateText.Of(core)).Byte(Comma);
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
                output.Number(_hours.Starts).Byte(Comma);
                output.Number(core.IsToolRunning ? core.Vacuum.Guess.Tool + 1 : 0).End();
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
