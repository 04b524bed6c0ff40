using NanoDustSwitch.Detection;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>What the board sends after <c>record</c> is enough to decide as it did, bucket for bucket, and short.</summary>
[TestClass]
public sealed class RecordTests
{
    private const double MostCharactersABucket = 10;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(0.0, false)]
    [DataRow(9.0, false)]
    [DataRow(20.5, false)]
    [DataRow(1.0, true)]
    public void Replayed_decisions_are_those_of_the_board(double recordFrom, bool hasVacuumSensor)
    {
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 8), 40, [], 2, 8, 10, 18, 24, 30);
        day.Steps =
        [
            .. day.Steps
                .Append(new DayStep(21_000_000, DayAct.Press, Value: 0.2))
                .Append(new DayStep(26_000_000, DayAct.SensorOut))
                .Append(new DayStep(27_000_000, DayAct.SensorIn))
                .OrderBy(step => step.At),
        ];
        day.Shop.HasVacuumSensor = hasVacuumSensor;
        (_, Person person, Rig rig) = ShopRig.Build(day, 3, isTimed: false);
        rig.RunUntil((long)(recordFrom * 1e6));
        rig.Ask(hasVacuumSensor ? "vacuum-turns 1" : "vacuum-turns none");
        rig.Board.Serial.TakeSent();
        rig.Board.Serial.Type("record\r");
        rig.RunUntil(rig.Board.ShopTime + 25_000);
        Assert.IsTrue(rig.Switch.Console.Recorder.IsOn);

        List<(long, bool, bool, VacuumState, int, int)> board = [];
        while (rig.Board.ShopTime < 40_000_000)
        {
            rig.Board.IsButtonDown = person.IsPressing(rig.Board.ShopTime);
            rig.Step();
            board.Add(Decision(rig.Switch.BucketEnd, rig.Switch.Core));
        }

        rig.Board.Serial.Type(" ");
        rig.RunUntilAnswered();
        string[] lines = System.Text.Encoding.ASCII.GetString(rig.Board.Serial.TakeSent()).Split((char)10);
        BoardRecording recording = BoardRecording.Parse(lines, "test");
        List<(long, bool, bool, VacuumState, int, int)> replayed = [];
        int count = recording.Replay((end, core) => replayed.Add(Decision(end, core)));

        TestContext.WriteLine($"{count} buckets, {(double)recording.Characters / count:0.00} characters each");
        // The recording begins once its settings are sent; the last line of it may still be under way when the key ends it.
        Assert.IsGreaterThan(board.Count - 250, count);
        int first = board.FindIndex(decision => decision.Item1 == replayed[0].Item1);
        int common = Math.Min(count, board.Count - first);
        CollectionAssert.AreEqual(board.GetRange(first, common), replayed.GetRange(0, common));
        Assert.IsTrue(replayed.Exists(decision => decision.Item4 == VacuumState.On), "the vacuum was on in it");
        Assert.IsTrue(replayed.Exists(decision => decision.Item4 == VacuumState.Fault), "and a fault");
        Assert.AreEqual(hasVacuumSensor, replayed.Exists(decision => decision.Item6 > 9000), "the vacuum of 10 A was seen");
        Assert.IsLessThan(MostCharactersABucket, (double)recording.Characters / count);
    }

    private static (long End, bool Runs, bool Closed, VacuumState State, int Swing, int Vacuum) Decision(
        long end, DetectionCore core) =>
        (end, core.IsToolRunning, core.IsRelayClosed, core.Vacuum.State, core.Swing, core.VacuumMilliamperes);
}
