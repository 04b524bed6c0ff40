using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class EventTextTests
{
    [TestMethod]
    [DataRow(0, 1, 2, 2, "vacuum on: tool at 3.21 A")]
    [DataRow(0, 0, 4, 3, "vacuum on: by hand")]
    [DataRow(0, 2, 5, 2, "vacuum told off until the tool stops: it ran longer than longest-run")]
    [DataRow(0, 2, 5, 4, "vacuum told off until the tool stops: by hand")]
    [DataRow(0, 2, 6, 6, "hold begun")]
    [DataRow(0, 6, 0, 5, "hold released")]
    [DataRow(0, 3, 0, 2, "vacuum told off: run-on over")]
    [DataRow(0, 3, 0, 4, "vacuum told off: by hand")]
    [DataRow(1, 0, 0, 4095, "sensor open or shorted: the converter reads 4095 all the time")]
    [DataRow(1, 1, 1, 843, "resting point out of band: the line rests at 0.843 V; stays until 'clear'")]
    [DataRow(2, 3, 0, 12, "converter fails: over after 12 s")]
    [DataRow(3, 0, 0, 600, "longest-run is over in 10 min")]
    [DataRow(4, 0, 0, 200, "the board paused for 200 ms: the relay may have opened")]
    [DataRow(4, 3, 0, 200, "the board paused for 200 ms (3 in the last hour): the relay may have opened")]
    [DataRow(1, 16, 1, 175, "the board pauses: it paused for 175 ms, more than 10 times in an hour; stays until 'clear'")]
    [DataRow(5, 0, 0, 0, "came up: power on")]
    [DataRow(5, 1, 0, 0, "came up: restart asked for")]
    [DataRow(5, 2, 0, 1, "came up: an unexpected error")]
    [DataRow(5, 3, 0, 1, "came up: the clock stood still")]
    [DataRow(6, 0, 0, 0, "settings saved")]
    [DataRow(7, 0, 0, 0, "flash failed, nothing was saved")]
    [DataRow(8, 0, 0, 0, "faults cleared by hand")]
    [DataRow(9, 0, 0, 2, "2 saved settings were out of range: their defaults are in use")]
    [DataRow(10, 0, 0, 601, "look at the filter: 10.0 h since the last look")]
    [DataRow(11, 0, 0, 500, "a tool was taught, start-at 0.50 A")]
    [DataRow(12, 1, 0, 0, "the relay's line could not be opened")]
    [DataRow(12, 2, 0, 0, "the converter's tool line could not be opened")]
    [DataRow(12, 4, 0, 0, "the converter's vacuum line could not be opened")]
    [DataRow(12, 8, 0, 0, "the lamp could not be opened")]
    [DataRow(12, 16, 0, 0, "the sounder could not be opened")]
    [DataRow(12, 32, 0, 0, "the button could not be opened")]
    [DataRow(12, 64, 0, 0, "the serial port could not be opened")]
    [DataRow(12, 128, 0, 0, "the flash failed")]
    [DataRow(12, 128, 0, 1, "the flash is not mounted: what was saved is not there, and nothing is kept")]
    [DataRow(1, 13, 0, 150, "vacuum does not start: with the relay told to close it draws 0.15 A")]
    [DataRow(1, 14, 1, 8780, "vacuum does not stop: with the relay told to open it drew 8.78 A; stays until 'clear'")]
    [DataRow(1, 15, 1, 8040, "tool's sensor sees the vacuum: 8.04 A went each time the relay opened; stays until 'clear'")]
    [DataRow(13, 1, 0, 322, "relay opened for a moment, to see whether the current is the vacuum's: it went after 322 ms")]
    [DataRow(13, 0, 0, 600, "relay opened for a moment, to see whether the current is the vacuum's: it stayed")]
    [DataRow(14, 2, 0, 1850, "on for a minute at a steady 1.85 A")]
    [DataRow(14, 3, 0, 520, "on for a minute at a steady 0.52 A, half of this run's most or less: has the tool stopped?")]
    [DataRow(14, 4, 0, 8100, "on for a minute at a steady 8.10 A, as much as the vacuum draws: is it its own?")]
    [DataRow(14, 6, 0, 0, "on by hand for a minute with no tool")]
    [DataRow(14, 6, 1, 0, "on by hand for a minute with no tool: switched on in the middle of a cut")]
    [DataRow(15, 0, 0, 0, "unexpected error while reading the sensor: of another kind")]
    [DataRow(15, 1, 1, 0, "unexpected error while deciding: an object was missing")]
    [DataRow(15, 2, 2, 0, "unexpected error while feeding the relay: index out of range")]
    [DataRow(15, 3, 3, 0, "unexpected error while teaching, testing or recording: out of memory")]
    [DataRow(15, 4, 4, 0, "unexpected error while noting an event: invalid operation")]
    [DataRow(15, 5, 5, 0, "unexpected error while serving the console: bad argument")]
    [DataRow(15, 6, 6, 0, "unexpected error while serving lamp and button: wrong type")]
    [DataRow(15, 7, 7, 0, "unexpected error while writing to flash: a file or port failed")]
    [DataRow(15, 8, 8, 0, "unexpected error while at an unknown place: a call took too long")]
    [DataRow(15, 9, 8, 0, "unexpected error while at an unknown place: not supported")]
    [DataRow(16, 0, 0, 0, "the boot record cannot be read, so the vacuum is held")]
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

    // For each state, as VacuumState numbers them, whether the change to each of the first seven is worth an entry.
    [TestMethod]
    [DataRow(0, "0000111")]
    [DataRow(1, "0010111")]
    [DataRow(2, "0000111")]
    [DataRow(3, "1000111")]
    [DataRow(4, "0000111")]
    [DataRow(5, "0000111")]
    [DataRow(6, "1000111")]
    public void OnOffAndHoldsAreWorthAnEntry(int from, string entries)
    {
        for (int to = 0; to < entries.Length; to++)
        {
            Assert.AreEqual(entries[to] == '1', EventText.IsWorthLogging((VacuumState)from, (VacuumState)to));
        }
    }
}
