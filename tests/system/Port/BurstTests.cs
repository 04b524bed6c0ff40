using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>The readings that go with a recording now and then are those that were taken, at their times.</summary>
[TestClass]
public sealed class BurstTests
{
    private const double Seconds = 20;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void Every_reading_of_a_burst_is_what_the_line_was_at_its_time(bool isBoardPace)
    {
        BoardRecording recording = BoardRecording.Parse(Record(isBoardPace ? Pace.Esp32() : Pace.Ideal(8000), Seconds), "test");
        int buckets = recording.Replay((_, _) => { });

        TestContext.WriteLine(
            $"{recording.Bursts.Count} bursts, {recording.Bursts[0].Readings.Count} readings; "
                + $"{(double)recording.Characters / buckets:0.0} characters a bucket");
        Assert.HasCount(4, recording.Bursts);
        double worst = 0;
        foreach (Burst burst in recording.Bursts)
        {
            (double first, double last) = (burst.Readings[0].Microseconds, burst.Readings[^1].Microseconds);
            Assert.IsGreaterThan(30_000.0, last - first);
            worst = Math.Max(
                worst, burst.Readings.Max(reading => Math.Abs(reading.Counts - TriangleLine.At(reading.Microseconds))));
        }

        // A fifth of a count a microsecond: the conversion itself, and the one that a run's end may cut.
        TestContext.WriteLine($"worst {worst:0.0} counts");
        Assert.IsLessThan(30.0, worst);
    }

    [TestMethod]
    public void A_lost_or_changed_character_is_found_and_a_recording_may_break_off_anywhere()
    {
        string[] lines = Record(Pace.Ideal(2000), 5);
        int at = Array.IndexOf(lines, "end") - 5;
        int whole = BoardRecording.Parse(lines, "test").Replay((_, _) => { });
        string line = lines[at];
        int found = 0;
        for (int i = 0; i < line.Length; i++)
        {
            lines[at] = line[..i] + (char)(line[i] ^ 1) + line[(i + 1)..];
            found += IsRefused(lines) ? 1 : 0;
            lines[at] = line.Remove(i, 1);
            found += IsRefused(lines) ? 1 : 0;
        }

        // A lost character may leave the check as it was, one time in 64.
        Assert.IsGreaterThan(2 * line.Length * 9 / 10, found);
        lines[at] = line[..^3];
        Assert.IsInRange(1, whole - 1, BoardRecording.Parse(lines[..(at + 1)], "test").Replay((_, _) => { }));
    }

    [TestMethod]
    public void A_recording_of_another_version_says_so() => Assert.AreEqual(
        "test is a recording of version 7; this program reads versions 1 to 3.",
        Assert.ThrowsExactly<UserException>(
            () => BoardRecording.Parse(["record 7 nanoDustSwitch 9.0.0 4095 806", "set x 1"], "test")).Message);

    private static bool IsRefused(string[] lines)
    {
        try
        {
            BoardRecording.Parse(lines, "test");
            return false;
        }
        catch (UserException)
        {
            return true;
        }
    }

    private static string[] Record(Pace pace, double seconds)
    {
        Rig rig = new(new PcBoard(new TriangleLine(), pace.Clock(1), FlashImage.Blank(), pace.Time(1)));
        rig.RunUntil(2_000_000);
        return [.. rig.Record(() => rig.Run(seconds)).Split('\n').Select(line => line.TrimEnd('\r'))];
    }
}
