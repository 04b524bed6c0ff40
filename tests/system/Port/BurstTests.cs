using System.Text;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Replay;

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
        Pace pace = isBoardPace ? Pace.Esp32() : Pace.Ideal(8000);
        TriangleLine line = new();
        Rig rig = new(new PcBoard(line, pace.Clock(1), FlashImage.Blank(), pace.Time(1)));
        rig.RunUntil(2_000_000);
        rig.Board.Serial.TakeSent();
        rig.Board.Serial.Type("record\r");
        rig.RunUntil(rig.Board.ShopTime + (long)(Seconds * 1e6));
        rig.Board.Serial.Type(" ");
        rig.RunUntilAnswered();
        BoardRecording recording = BoardRecording.Parse(Encoding.ASCII.GetString(rig.Board.Serial.TakeSent()).Split('\n'), "test");
        int buckets = recording.Replay((_, _) => { });

        TestContext.WriteLine($"{recording.Bursts.Count} bursts, {recording.Bursts[0].Readings.Count} readings; {(double)recording.Characters / buckets:0.0} characters a bucket");
        Assert.HasCount(4, recording.Bursts);
        double worst = 0;
        foreach (Burst burst in recording.Bursts)
        {
            (double first, double last) = (burst.Readings[0].Microseconds, burst.Readings[^1].Microseconds);
            Assert.IsGreaterThan(30_000.0, last - first);
            worst = Math.Max(worst, burst.Readings.Max(reading => Math.Abs(reading.Counts - TriangleLine.At(reading.Microseconds))));
        }

        // A fifth of a count a microsecond: the conversion itself, and the one that a run's end may cut.
        TestContext.WriteLine($"worst {worst:0.0} counts");
        Assert.IsLessThan(30.0, worst);
    }
}
