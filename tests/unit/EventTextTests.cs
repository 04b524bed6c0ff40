using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class EventTextTests
{
    [TestMethod]
    [DataRow(0, 1, 2, 2, "vacuum on: tool at 3.21 A")]
    [DataRow(0, 0, 4, 3, "vacuum on: by hand")]
    [DataRow(0, 2, 5, 2, "vacuum told off until the tool stops: longest run reached")]
    [DataRow(0, 2, 5, 4, "vacuum told off until the tool stops: by hand")]
    [DataRow(0, 2, 6, 6, "hold begun")]
    [DataRow(0, 6, 0, 5, "hold released")]
    [DataRow(0, 3, 0, 2, "vacuum told off: run-on over")]
    [DataRow(0, 3, 0, 4, "vacuum told off: by hand")]
    [DataRow(1, 0, 0, 4095, "sensor open or shorted: the converter reads 4095 all the time")]
    [DataRow(1, 1, 1, 843, "resting point out of band: the line rests at 0.843 V; stays until 'clear'")]
    [DataRow(2, 3, 0, 12, "converter fails: over after 12 s")]
    [DataRow(3, 0, 0, 600, "longest run ends in 10 min")]
    [DataRow(4, 0, 0, 200, "heartbeat stopped for 200 ms, relay taken as dropped")]
    [DataRow(4, 3, 0, 200, "heartbeat stopped for 200 ms (3 in the last hour), relay taken as dropped")]
    [DataRow(1, 16, 1, 175, "the board pauses: it paused for 175 ms, more than 10 times in an hour; stays until 'clear'")]
    [DataRow(5, 0, 0, 0, "came up: power on")]
    [DataRow(5, 1, 0, 0, "came up: restart asked for")]
    [DataRow(5, 2, 0, 1, "came up: an unexpected error")]
    [DataRow(5, 3, 0, 1, "came up: the clock stood still")]
    [DataRow(6, 0, 0, 0, "settings saved")]
    [DataRow(7, 0, 0, 0, "flash failed, nothing was saved")]
    [DataRow(8, 0, 0, 0, "faults cleared by hand")]
    [DataRow(9, 0, 0, 2, "2 stored settings were out of range and fell back")]
    [DataRow(10, 0, 0, 601, "filter is due after 601 min of run time")]
    [DataRow(12, 32, 0, 0, "the button could not be opened")]
    [DataRow(12, 128, 0, 0, "the flash failed")]
    [DataRow(12, 128, 0, 1, "the flash is not mounted: what was saved is not there, and nothing is kept")]
    [DataRow(1, 13, 0, 150, "vacuum does not start: with the relay fed its line shows 0.15 A")]
    [DataRow(1, 14, 1, 8780, "vacuum does not stop: with the relay told to open it drew 8.78 A; stays until 'clear'")]
    [DataRow(1, 15, 1, 8040, "relay feeds the sensed line: 8.04 A went each time our relay opened; stays until 'clear'")]
    [DataRow(13, 1, 0, 322, "relay opened to see whether the current goes with it: it went after 322 ms")]
    [DataRow(13, 0, 0, 600, "relay opened to see whether the current goes with it: it did not")]
    [DataRow(14, 2, 0, 1850, "on for a minute at a steady 1.85 A")]
    [DataRow(14, 3, 0, 520, "on for a minute at a steady 0.52 A, half of this run's most or less: has the tool stopped?")]
    [DataRow(14, 4, 0, 8100, "on for a minute at a steady 8.10 A, as much as the vacuum draws: is it its own?")]
    [DataRow(14, 6, 0, 0, "on by hand for a minute with no tool")]
    [DataRow(14, 6, 1, 0, "on by hand for a minute with no tool: switched on in the middle of a cut")]
    [DataRow(99, 0, 0, 0, "entry of another version, kind 99")]
    public void AnEntryIsALineOfWords(int kind, int first, int second, int figure, string words)
    {
        LogEntry entry = new LogEntry();
        entry.Boot = 7;
        entry.Seconds = 3661;
        entry.Kind = (LogKind)kind;
        entry.First = first;
        entry.Second = second;
        entry.Figure = figure;
        entry.Milliamperes = 3210;
        TextOutput output = new TextOutput();
        EventText.Write(output, entry);
        Assert.AreEqual("boot 7 1:01:01  " + words, Texts.Take(output));
    }
}
