using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>A person who teaches the switch one tool after the other, by the console and the tools' own switches.</summary>
internal sealed partial class Apprentice
{
    private readonly VirtualShop _shop;
    private readonly Rig _rig;

    /// <summary>Switches the box on and types the sensor's gain.</summary>
    /// <param name="shop">The shop.</param>
    public Apprentice(RandomShop shop)
    {
        Day day = shop.Day;
        (_shop, _, _rig) = ShopRig.Build(day, shop.Seed);
        Run(3);
        _rig.Ask(shop.Gain);
        Run(3);
    }

    /// <summary>Gets the settings as they are now.</summary>
    public SettingValues Settings => _rig.Switch.Settings;

    /// <summary>Gets what the switch said at the last tool.</summary>
    public string Said { get; private set; } = "";

    /// <summary>Gets what the quiet line showed at the last tool, in A.</summary>
    public double Quiet { get; private set; }

    /// <summary>Gets what the last tool showed at least, in A; not a number when it was not seen.</summary>
    public double Shown { get; private set; }

    /// <summary>Teaches a tool.</summary>
    /// <param name="index">Its place among the shop's tools.</param>
    /// <returns>Whether the switch took it.</returns>
    public bool Teach(int index)
    {
        Tool tool = _shop.Wiring.Tools[index];
        StringBuilder said = new(_rig.Ask("teach"));
        said.Append(_rig.Ask("yes"));
        Run(5.6);
        tool.Start(_rig.Board.ShopTime);
        Run(8);
        tool.Stop(_rig.Board.ShopTime);
        Run(2);
        said.Append(Encoding.ASCII.GetString(_rig.Board.Serial.TakeSent()));
        if (!said.ToString().Contains("(yes or no)", StringComparison.Ordinal) || _rig.Switch.Console.IsAsking)
        {
            said.Append(_rig.Ask("no"));
        }
        else
        {
            Run(32);
            said.Append(Encoding.ASCII.GetString(_rig.Board.Serial.TakeSent()));
        }

        bool isOffered = _rig.Switch.Console.IsAsking;
        if (isOffered)
        {
            said.Append(_rig.Ask("yes"));
        }

        // Its blade coasts without current; the next measuring of the quiet line may begin at once.
        Run(1);
        Said = said.ToString();
        Match quiet = QuietLine().Match(Said);
        Match shown = ToolLine().Match(Said);
        Shown = shown.Success ? double.Parse(shown.Groups["amperes"].Value, CultureInfo.InvariantCulture) : double.NaN;
        Quiet = quiet.Success ? double.Parse(quiet.Groups["amperes"].Value, CultureInfo.InvariantCulture) : double.NaN;
        return isOffered && Said.Contains("Set and saved.", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"quiet line shows up to (?<amperes>[0-9.]+) A", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex QuietLine();

    [GeneratedRegex(@"tool shows at least (?<amperes>[0-9.]+) A", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex ToolLine();

    private void Run(double seconds) => _rig.RunUntil(_rig.Board.ShopTime + (long)(seconds * 1e6));
}
