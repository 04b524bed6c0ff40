using NanoDustSwitch.Esp32;
using nanoFramework.Hardware.Esp32;

namespace NanoDustSwitch.BoardTests;

/// <summary>
/// A chip in virtual time, below the fakes of the device's libraries: pins, converter, clock, serial port and flash, each of
/// which can be told to fail. The program runs on a thread of its own, and only while <see cref="Run"/> waits for it.
/// </summary>
internal sealed class Chip : IDisposable
{
    public const int ConversionMicroseconds = 100;

    /// <summary>
    /// What the converter shows of the button's line when the button is up: the resistor outside holds it high.
    /// </summary>
    public const int ButtonUp = 4095;

    private const int BootMicroseconds = 1000000;
    private const int RebootMicroseconds = 20000;
    private const int MostCalls = 2000;

    [ThreadStatic]
    private static Chip s_current;

    private readonly ChipPin[] _pins = new ChipPin[40];
    private readonly List<Breakdown> _breakdowns = [];
    private readonly SemaphoreSlim _go = new(0);
    private readonly SemaphoreSlim _stopped = new(0);
    private System.Threading.Thread _thread;
    private long _until = long.MaxValue;
    private long _bootedAt;
    private long _rebootAt = long.MaxValue;
    private long _stoodAt = -1;
    private int _flashCallsToCut;
    private bool _isDown;
    private bool _isOver;

    public Chip()
    {
        for (int i = 0; i < _pins.Length; i++)
        {
            _pins[i] = new ChipPin(this, i);
        }

        Serial = new ChipSerial(this);
    }

    public static Chip Current => s_current ?? throw new InvalidOperationException("There is no chip on this thread.");

    /// <summary>Calls of the device's libraries since the chip came up, the first ones.</summary>
    public List<string> Calls { get; } = [];

    /// <summary>What the program did that a board would not stand.</summary>
    public List<string> Complaints { get; } = [];

    public ChipSerial Serial { get; }

    public ToolWave Tool { get; } = new();

    /// <summary>What the converter shows of the button's line.</summary>
    public int ButtonLine { get; set; } = ButtonUp;

    /// <summary>The flash, which keeps what it has.</summary>
    public Dictionary<string, byte[]> Files { get; } = [];

    public HashSet<string> OpenFiles { get; } = [];

    public bool IsFlashFull { get; set; }

    /// <summary>
    /// Whether a file loses its content when it is opened to be written, and gets the new one piece by piece; else all counts
    /// when it is closed.
    /// </summary>
    public bool IsFlashDirect { get; set; }

    /// <summary>Whether the clock stands at every boot.</summary>
    public bool IsClockBroken { get; set; }

    /// <summary>Time since the test began, in microseconds.</summary>
    public long Elapsed { get; private set; }

    public int Boots { get; private set; }

    /// <summary>Level of the relay's line at the last reset.</summary>
    public bool RelayAtReset { get; private set; }

    /// <summary>What the chip's own clock shows.</summary>
    public long Clock => (_stoodAt >= 0 ? _stoodAt : Elapsed) - _bootedAt;

    /// <summary>Whether the relay's driver may be holding it: the line has changed in the last 150 ms.</summary>
    public bool IsRelayFed => Relay.Changes > 0 && Elapsed - Relay.LastChange < 150000;

    public ChipPin Relay => _pins[PinPlan.Relay];

    public ChipPin Pin(int number) => _pins[number];

    public bool HasFunction(DeviceFunction function) => _pins.Any(pin => pin.Function == function);

    /// <summary>Puts the chip on this thread, for tests without a program.</summary>
    public void Enter() => s_current = this;

    /// <summary>From now on the calls that begin so fail.</summary>
    public void Break(string call, int times = int.MaxValue) => _breakdowns.Add(new Breakdown(call, times));

    public void Mend() => _breakdowns.Clear();

    /// <summary>The clock stands until the next reset.</summary>
    public void StopClock() => _stoodAt = Elapsed;

    /// <summary>Power goes at a call of the flash and comes again.</summary>
    public void CutPowerAtFlashCall(int number) => _flashCallsToCut = number;

    /// <summary>Power goes and comes again.</summary>
    public void CutPower() => _rebootAt = Elapsed;

    public void RebootSoon() => _rebootAt = Elapsed + RebootMicroseconds;

    public void Complain(string complaint) => Complaints.Add(complaint);

    /// <summary>A call of a library.</summary>
    public void Call(string call, int microseconds)
    {
        Pass(microseconds);
        if (Calls.Count < MostCalls)
        {
            Calls.Add(call);
        }

        if (_flashCallsToCut > 0 && call.StartsWith("File", StringComparison.Ordinal) && --_flashCallsToCut == 0)
        {
            CutPower();
            Pass(0);
        }

        foreach (Breakdown breakdown in _breakdowns)
        {
            if (breakdown.Hits(call))
            {
                throw new InvalidOperationException(call);
            }
        }
    }

    /// <summary>Time passes.</summary>
    public void Pass(long microseconds)
    {
        long end = Elapsed + microseconds;
        while (true)
        {
            if (_isDown || _isOver)
            {
                _isDown = true;
                throw new OperationCanceledException();
            }

            Elapsed = Math.Max(Elapsed, Math.Min(end, Math.Min(_until, _rebootAt)));
            if (Elapsed >= _rebootAt)
            {
                _isDown = true;
            }
            else if (Elapsed >= _until)
            {
                _until = long.MaxValue;
                _stopped.Release();
                _go.Wait();
            }
            else
            {
                return;
            }
        }
    }

    public int Convert(int channel) => channel switch
    {
        PinPlan.ToolChannel => Tool.At(Elapsed),
        PinPlan.VacuumChannel => ToolWave.Rest,
        PinPlan.ButtonChannel => ButtonLine,
        _ => throw new InvalidOperationException($"nothing is connected to channel {channel}"),
    };

    /// <summary>Lets the program run; the first time it comes up.</summary>
    public void Run(int milliseconds)
    {
        _until = Elapsed + (milliseconds * 1000L);
        if (_thread is null)
        {
            _thread = new System.Threading.Thread(Live) { IsBackground = true };
            _thread.Start();
        }
        else
        {
            _go.Release();
        }

        if (!_stopped.Wait(TimeSpan.FromSeconds(60)))
        {
            throw new TimeoutException("The program goes on without taking time.");
        }
    }

    public void Dispose()
    {
        _isOver = true;
        _go.Release();
        _thread?.Join(TimeSpan.FromSeconds(60));
        _go.Dispose();
        _stopped.Dispose();
    }

    private void Live()
    {
        s_current = this;
        while (!_isOver)
        {
            try
            {
                ComeUp();
                Program.Main();
                Complain("the program ended");
            }
            catch (OperationCanceledException)
            {
                RelayAtReset = Relay.Level;
            }
            catch (InvalidOperationException exception)
            {
                Complain($"the program died: {exception.Message}");
            }
        }
    }

    private void ComeUp()
    {
        foreach (ChipPin pin in _pins)
        {
            pin.Reset();
        }

        Serial.Reset();
        OpenFiles.Clear();
        Calls.Clear();
        Boots++;
        _isDown = false;
        _rebootAt = long.MaxValue;
        _stoodAt = IsClockBroken ? Elapsed : -1;
        _bootedAt = Elapsed;
        Pass(BootMicroseconds);
    }
}
