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
    private const long ProgramPause = 10_000_000;
    private const long BounceTime = 50_000;
    private const double LampAmperes = 0.2;

    private readonly PcBoard _pc;
    private readonly Person _person;
    private long _upAt;
    private long _pressedAt = long.MinValue / 2;

    /// <summary>Initializes a new instance of the <see cref="InjectedRig"/> class: power comes on.</summary>
    /// <param name="day">What happens in the shop.</param>
    /// <param name="seed">seed of all chance.</param>
    public InjectedRig(Day day, int seed = 7)
    {
        Shop = ShopBuilder.Build(day, seed);
        _person = new Person(day, seed, Shop, []);
        _pc = new PcBoard(new ShopLine(Shop, _person), day.Pace.Clock(seed), FlashImage.Blank(), day.Pace.Time(seed));
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

    /// <summary>Gets a value indicating whether a tool draws its current.</summary>
    public bool IsToolRunning => Shop.Wiring.Tools.Any(tool => tool.IsRunning && tool.RatedAmperes > LampAmperes);

    /// <summary>Gets a value indicating whether the first tool is switched on.</summary>
    public bool IsSawOn => Shop.Wiring.Tools[0].IsSwitchedOn;

    /// <summary>Gets a value indicating whether the button is pressed, or was until a moment ago and may still bounce.</summary>
    public bool IsButtonDown => Time - _pressedAt < BounceTime;

    /// <summary>Takes what the board has sent.</summary>
    /// <returns>The text.</returns>
    public string TakeSaid() => SentText.Of(_pc.Serial.TakeSent());

    /// <summary>Does one step, of the firmware or of the board that comes up.</summary>
    public void Step()
    {
        Board.Forget();
        while (_person.Lines.TryDequeue(out string? line))
        {
            _pc.Serial.Type(line + "\r");
        }

        _pc.IsButtonDown = _person.IsPressing(Time);
        _pressedAt = _pc.IsButtonDown ? Time : _pressedAt;
        if (Switch is null)
        {
            Wait();
            return;
        }

        try
        {
            Switch.Step();
            _pc.EndStep();
        }
        catch (Exception)
        {
            GoDown(ProgramPause);
        }

        if (Board.IsDead)
        {
            Replug();
        }
        else if (Switch is null)
        {
            return;
        }
        else if (_pc.WantsRestart || !_pc.IsPowered)
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
    public void LeaveScript() => _person.Leave();

    /// <summary>All tools are off, nobody is at the button, and shop and board are in order again.</summary>
    public void Tidy()
    {
        Board.Mend();
        Shop.SetVoltage(Time, 1);
        Shop.Relay.SetFault(Time, RelayFault.None);
        Shop.Converter.Mend();
        Shop.Sensor.State = SensorState.Healthy;
        Shop.Sensor.Sparks = null;
        Shop.Sensor.Wild = null;
        Shop.Vacuum.IsSwitchOn = true;
        _person.PressUntil(0);
        foreach (Tool tool in Shop.Wiring.Tools)
        {
            tool.Stop(Time);
        }
    }

    /// <summary>Does what a person does.</summary>
    /// <param name="what">A line to be typed, or + or - before what is switched or pressed.</param>
    public void Do(string what)
    {
        switch (what)
        {
            case "+saw":
                Shop.Wiring.Tools[0].Start(Time);
                break;
            case "-saw":
                Shop.Wiring.Tools[0].Stop(Time);
                break;
            case "+button":
                _person.PressUntil(long.MaxValue);
                break;
            case "-button":
                _person.PressUntil(0);
                break;
            default:
                _pc.Serial.Type(what + "\r");
                break;
        }
    }

    /// <summary>Types.</summary>
    /// <param name="bytes">Any bytes.</param>
    public void Type(byte[] bytes) => _pc.Serial.Type(bytes);

    /// <summary>The plug is pulled and put in again.</summary>
    public void Replug()
    {
        Board.Revive();
        GoDown(0);
    }

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

        if (Board.IsDead)
        {
            Replug();
        }
    }

    private void GoDown(long pause)
    {
        Switch = null;
        _upAt = Time + pause + _pc.BootTime;
    }
}
