using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.SizingTests;

/// <summary>The settings that the program prints, typed into the firmware's console as it is delivered.</summary>
[TestClass]
public sealed class ConsoleTests
{
    private const string Transformer = "transformer-100A";
    private const string At230 = "--supply 230V/50Hz --breaker C16 --plug EU16 --cord 2m/1.5mm2";

    [TestMethod]
    [DataRow("--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --cord 8m/14AWG", Transformer, 23500, 1, 600, 350)]
    [DataRow(
        "--vacuum 6A --tool 10A --supply 120V/60Hz --breaker 20A --plug US20 --cord 2m/12AWG", "hall-20A", 50000, 1, 600, 350)]
    [DataRow($"--vacuum 1000W --tool 900W {At230}", Transformer, 23500, 1, 400, 240)]
    [DataRow($"--vacuum 1000W --tool 130W/universal {At230} --turns 2", Transformer, 23500, 2, 0, 0)]
    [DataRow($"--vacuum 1000W --tool 60W/universal {At230} --turns 5", Transformer, 23500, 5, 0, 0)]
    [DataRow("--vacuum 5A --tool 3A --supply 120V/60Hz --breaker 15A --cord 2m/14AWG", "hall-5A", 92500, 1, 0, 0)]
    public void Every_line_is_taken_and_saved(string circuit, string sensor, int gain, int turns, int startAt, int stopBelow)
    {
        string line = $"{circuit} --sensor {sensor}";
        string shown = new Terminal(line).Shown;
        string[] lines = Typed(shown);
        LiveShop live = new(FlashImage.Blank());
        live.RunUntilAnswered();
        foreach (string typed in lines)
        {
            string answer = live.Rig.Ask(typed);
            StringAssert.Contains(answer, "aved", StringComparison.Ordinal, typed + ": " + answer);
            Assert.IsFalse(answer.Contains("cannot be", StringComparison.Ordinal), answer);
        }

        SettingValues settings = live.Rig.Switch.SavedSettings;
        Assert.AreEqual(gain, settings[SettingId.SensorGain]);
        Assert.AreEqual(turns, settings[SettingId.Turns]);
        Judged judged = new(line);
        Teaching teaching = judged.Trials.Teach(judged.Order);
        Assert.AreEqual(teaching.StartAtMilliamperes, settings[SettingId.StartAt]);
        Assert.AreEqual(teaching.StopBelowMilliamperes, settings[SettingId.StopBelow]);
        if (startAt > 0)
        {
            Assert.AreEqual(startAt, settings[SettingId.StartAt], 10);
            Assert.AreEqual(stopBelow, settings[SettingId.StopBelow], 10);
        }

        Assert.AreEqual("save", lines[^1]);
    }

    [TestMethod]
    public void A_line_that_the_console_does_not_take_is_noticed()
    {
        LiveShop live = new(FlashImage.Blank());
        live.RunUntilAnswered();
        StringAssert.Contains(live.Rig.Ask("start-at 60A"), "cannot be", StringComparison.Ordinal);
    }

    private static string[] Typed(string shown)
    {
        string text = shown[(shown.IndexOf("console\n", StringComparison.Ordinal) + "console\n".Length)..];
        text = text[..text.IndexOf("a line each", StringComparison.Ordinal)];
        return [.. text.Replace("\n", " ").Split('|').Select(line => string.Join(' ', Terminal.Words(line)))];
    }
}
