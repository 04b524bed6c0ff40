using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Live;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// The live shop with somebody at its keyboard who notes all that is said, and whether the vacuum was ever fed.
/// </summary>
internal sealed class Workbench
{
    // The demo day's saw idles at some 4 A, as an induction motor does; below that it is a smaller one with brushes.
    private const double LeastOfSaw = 4;

    // Rated currents of the smaller ones, A.
    private static readonly double[] s_smaller = [0.1, 0.6, 2];

    private readonly LiveShop _live = new(FlashImage.Blank(), Day());
    private readonly StringBuilder _said = new();

    /// <summary>Switches the box on and waits until it has learned the line.</summary>
    public Workbench()
    {
        Run(3);
        Forget();
    }

    /// <summary>Gets shop and box as the picture of <c>live</c> takes them.</summary>
    public LiveShop Live => _live;

    /// <summary>Gets the shop.</summary>
    public VirtualShop Shop => _live.Shop;

    /// <summary>Gets the board.</summary>
    public PcBoard Board => _live.Rig.Board;

    /// <summary>Gets the firmware.</summary>
    public Switch Switch => _live.Rig.Switch;

    /// <summary>Gets all that was said since the last <see cref="Forget"/>.</summary>
    public string Said => _said.ToString();

    /// <summary>Gets or sets what is done after every step.</summary>
    public Action OnStep { get; set; } = () => { };

    /// <summary>Gets a value indicating whether the vacuum was fed since the last <see cref="Forget"/>.</summary>
    public bool WasFed { get; private set; }

    /// <summary>Gets start-at, stop-below and noise in mA.</summary>
    public string Levels => LevelsOf(Switch.Settings);

    /// <summary>Gets start-at, stop-below and noise in flash, in mA.</summary>
    public string SavedLevels => LevelsOf(Switch.SavedSettings);

    /// <summary>Gives a tool; in place of the table saw a smaller one where it shall draw less than the saw can.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="amperes">What it shall draw.</param>
    /// <returns>The tool.</returns>
    public Tool Tool(string name, double amperes)
    {
        if (name == "table saw" && amperes < LeastOfSaw)
        {
            name = NameOf(s_smaller.Last(rated => rated <= amperes));
        }

        Tool tool = Shop.Wiring.Tools.Single(tool => tool.Name == name);
        tool.Load = amperes / tool.RatedAmperes;
        return tool;
    }

    /// <summary>Lets time pass.</summary>
    /// <param name="seconds">How long.</param>
    public void Run(double seconds)
    {
        long until = Board.ShopTime + (long)(seconds * 1e6);
        while (Board.ShopTime < until)
        {
            _live.Rig.Step();
            OnStep();
            WasFed = WasFed || Shop.IsRelayClosed || Switch.Core.IsRelayClosed;
        }

        _said.Append(SentText.Of(Board.Serial.TakeSent()));
    }

    /// <summary>Types a line and gives half a second for the answer.</summary>
    /// <param name="line">The line.</param>
    public void Type(string line)
    {
        Board.Serial.Type(line + "\r");
        Run(0.5);
    }

    /// <summary>Presses the button.</summary>
    /// <param name="seconds">How long.</param>
    public void Press(double seconds)
    {
        Board.IsButtonDown = true;
        Run(seconds);
        Board.IsButtonDown = false;
        Run(0.2);
    }

    /// <summary>Runs a word of the shop.</summary>
    /// <param name="line">The line, with its slash.</param>
    public void Do(string line) => _live.Words.Run(line);

    /// <summary>Switches a tool on, waits, and switches it off again.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="seconds">How long it runs.</param>
    public void Use(Tool tool, double seconds)
    {
        tool.Start(Board.ShopTime);
        Run(seconds);
        tool.Stop(Board.ShopTime);
        Run(1);
    }

    /// <summary>Switches the table saw on.</summary>
    /// <param name="amperes">What it shall draw.</param>
    /// <param name="seconds">How long it has run then.</param>
    public void StartSaw(double amperes, double seconds)
    {
        Tool("table saw", amperes).Start(Board.ShopTime);
        Run(seconds);
    }

    /// <summary>Uses the table saw for four seconds.</summary>
    /// <param name="amperes">What it shall draw.</param>
    /// <returns>Whether the vacuum was fed meanwhile.</returns>
    public bool IsFedBySaw(double amperes)
    {
        Forget();
        Use(Tool("table saw", amperes), 4);
        return WasFed;
    }

    /// <summary>Cuts the power for a moment and waits until the box has come up.</summary>
    public void CutPower()
    {
        Do("/power");
        Run(3);
    }

    /// <summary>Asserts that something was said, and that no guide runs any more.</summary>
    /// <param name="text">The text.</param>
    public void AssertOver(string text)
    {
        StringAssert.Contains(Said, text);
        Assert.IsFalse(Switch.Console.IsGuiding);
    }

    /// <summary>Forgets what was said, and that the vacuum was fed.</summary>
    public void Forget()
    {
        Run(0);
        _said.Clear();
        WasFed = false;
    }

    /// <summary>Asserts that something was said.</summary>
    /// <param name="pattern">What, as a regular expression.</param>
    public void AssertSaid(string pattern) => Assert.IsTrue(Regex.IsMatch(Said, pattern, RegexOptions.NonBacktracking), Said);

    private static Day Day()
    {
        Day day = DayFile.Demo();
        day.Tools =
        [
            .. day.Tools,
            .. s_smaller.Select(
                rated => new ToolSpecification { Name = NameOf(rated), Kind = ToolKind.Universal, RatedAmperes = rated }),
        ];
        return day;
    }

    private static string NameOf(double rated) => string.Create(CultureInfo.InvariantCulture, $"small saw of {rated} A");

    private static string LevelsOf(SettingValues settings) =>
        $"{settings[SettingId.StartAt]} {settings[SettingId.StopBelow]} {settings[SettingId.Noise]}";
}
