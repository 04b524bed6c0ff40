using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// Shop, board and firmware as one object that can be copied. What the board's own program does around the firmware is done here
/// as well: a switch that cannot be built, or a restart that fails, is tried again after 10 s with the relay's line at rest.
/// </summary>
internal sealed class InjectedRig
{
    private const int Seed = 7;
    private const long ProgramPause = 10_000_000;

    // Both parts of the driver off to the slow side by 20 %.
    private const double SlowDriver = 1.44;

    private readonly PcBoard _pc;
    private readonly Tool _saw;
    private long _upAt;
    private int _next;
    private bool _isScripted = true;

    /// <summary>Initializes a new instance of the <see cref="InjectedRig"/> class: power comes on.</summary>
    /// <param name="sourceOhms">Impedance of the supply in ohm; an ordinary one if not given.</param>
    public InjectedRig(double sourceOhms = 0.3)
    {
        Day day = new()
        {
            Shop = new ShopSpecification { HasVacuumSensor = true, DriverTimeFactor = SlowDriver, SourceOhms = sourceOhms },
            Tools = [ShortDay.Tool(ToolKind.Induction, 8)],
        };
        Shop = ShopBuilder.Build(day, Seed);
        _saw = Shop.Wiring.Tools[0];
        _pc = new PcBoard(new ShopLine(Shop, new Person(day, Seed, Shop, [])), day.Pace.Clock(Seed), FlashImage.Blank());
        Board = new TroubledBoard(_pc, Shop);
        _upAt = _pc.BootTime;
    }

    /// <summary>Gets the shop.</summary>
    public VirtualShop Shop { get; }

    /// <summary>Gets the board.</summary>
    public TroubledBoard Board { get; }

    /// <summary>Gets the firmware; null while the board is not up.</summary>
    public Switch? Switch { get; private set; }

    /// <summary>Gets the shop's time in microseconds.</summary>
    public long Time => _pc.ShopTime;

    /// <summary>Gets a value indicating whether the saw is switched on.</summary>
    public bool IsSawOn { get; private set; }

    /// <summary>Gets a value indicating whether the button is pressed.</summary>
    public bool IsButtonDown => _pc.IsButtonDown;

    /// <summary>Takes what the board has sent.</summary>
    /// <returns>The text.</returns>
    public string TakeSaid() => SentText.Of(_pc.Serial.TakeSent());

    /// <summary>Does one step, of the firmware or of the board that comes up.</summary>
    public void Step()
    {
        Board.Forget();
        if (_isScripted)
        {
            for (; Time >= ScriptedMinute.TimeOf(_next); _next++)
            {
                Do(ScriptedMinute.What(_next));
            }
        }

        if (Switch is null)
        {
            Wait();
            return;
        }

        try
        {
            Switch.Step();
        }
        catch (Exception)
        {
            GoDown(ProgramPause);
            return;
        }

        if (_pc.WantsRestart || !_pc.IsPowered)
        {
            GoDown(0);
        }
        else if (Switch.IsRestarting)
        {
            GoDown(ProgramPause);
        }
    }

    /// <summary>Lets time pass.</summary>
    /// <param name="microseconds">How long.</param>
    public void Run(long microseconds)
    {
        for (long end = Time + microseconds; Time < end;)
        {
            Step();
        }
    }

    /// <summary>The person leaves the plan.</summary>
    public void LeaveScript() => _isScripted = false;

    /// <summary>Does what a person does.</summary>
    /// <param name="what">A line to be typed, or + or - before what is switched on or off.</param>
    public void Do(string what)
    {
        switch (what)
        {
            case "+saw":
                _saw.Start(Time);
                IsSawOn = true;
                break;
            case "-saw":
                _saw.Stop(Time);
                IsSawOn = false;
                break;
            case "+button":
                _pc.IsButtonDown = true;
                break;
            case "-button":
                _pc.IsButtonDown = false;
                break;
            default:
                _pc.Serial.Type(what + "\r");
                break;
        }
    }

    /// <summary>The plug is pulled and put in again.</summary>
    public void Replug() => GoDown(0);

    private void Wait()
    {
        _pc.Wait();
        if (!_pc.IsPowered)
        {
            _upAt = Time + _pc.BootTime;
        }

        if (Time < _upAt)
        {
            return;
        }

        _pc.Boot();
        try
        {
            Switch = new Switch(Board);
        }
        catch (Exception)
        {
            GoDown(ProgramPause);
        }
    }

    private void GoDown(long pause)
    {
        Switch = null;
        _upAt = Time + pause + _pc.BootTime;
    }
}
