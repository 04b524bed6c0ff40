using System.Diagnostics;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Inspector.Port;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>The lines of a board's watch as this program reads them.</summary>
[TestClass]
public sealed class WatchStreamTests
{
    [TestInitialize]
    public void Begin() => ServedConsole.SkipWhereThereIsNone();

    [TestMethod]
    public void Ten_lines_a_second_come_and_the_board_is_at_its_prompt_afterwards()
    {
        using PortBoard board = new();
        List<WatchLine> lines = [];
        using (WatchStream stream = new(board.Name))
        {
            board.With(live => live.Words.Run("/run table"));

            // By the board's own time: to a busy machine its three seconds are longer.
            while (lines.Count == 0 || lines[^1].Seconds < lines[0].Seconds + 3)
            {
                lines.AddRange(stream.Next() is var (_, line) ? [line] : []);
            }
        }

        Assert.IsInRange(25, 32, lines.Count);
        Assert.IsTrue(
            lines[^1] is { State: VacuumState.On, IsToolRunning: true, IsVacuumOn: true, Swing: > 5 and < 15, Starts: 1 },
            lines[^1].ToString());
        Assert.StartsWith("on: 1", lines[^1].Why());
        Assert.IsTrue(board.IsAtPrompt);
    }

    [TestMethod]
    public void A_cable_that_is_pulled_is_waited_for()
    {
        using PortBoard board = new();
        using WatchStream stream = new(board.Name);
        Assert.IsTrue(Comes(() => stream.Next() is not null));
        board.Unplug();
        Assert.IsTrue(Comes(() => stream.Next() is null && stream.Trouble is not null));
        Assert.IsTrue(Comes(() => stream.Next() is null && stream.Trouble!.StartsWith("There is no serial port")));
        board.Plug();
        Assert.IsTrue(Comes(() => stream.Next() is not null && stream.Trouble is null));
    }

    [TestMethod]
    public void A_board_that_restarts_is_watched_again()
    {
        using PortBoard board = new(upSeconds: 600);
        using WatchStream stream = new(board.Name);
        Assert.IsTrue(Comes(() => stream.Next() is var (_, line) && line.Seconds > 600));
        board.With(live => live.Words.Run("/power"));

        // Its time begins anew. Where this program is slow to come back, that may be some seconds ago.
        Assert.IsTrue(Comes(() => stream.Next() is var (_, line) && line.Seconds < 600), stream.Trouble);
    }

    [TestMethod]
    public void Damaged_lines_are_left_out_and_many_of_them_begin_it_anew()
    {
        using PortBoard board = new();
        using WatchStream stream = new(board.Name);
        board.OnTheWay = text => text.Replace("idle", "id");
        Assert.IsTrue(Comes(() => stream.Next() is null && stream.Trouble is not null));
        StringAssert.Contains(stream.Trouble, "sends lines that are damaged");
        board.OnTheWay = text => text.Replace("0.35", "");
        Assert.IsTrue(Comes(() => stream.Next() is null && stream.Trouble is null));
        board.OnTheWay = text => text;
        Assert.IsTrue(Comes(() => stream.Next() is var (_, line) && line is { StopBelow: 0.35, StartAt: 0.6 }));
    }

    [TestMethod]
    [DataRow("")]
    [DataRow("1.00,0.004,0.003,0.600,0.350,0,0,idle,0.0,0,0,0.00")]
    [DataRow("1.00,0.004,0.003,0.600,0.350,0,0,nothing,0.0,0,0,0.00,0,0")]
    [DataRow("1.00,0.004,x,0.600,0.350,0,0,idle,0.0,0,0,0.00,0,0")]
    [DataRow("1.00,0.004,1e30,0.600,0.350,0,0,idle,0.0,0,0,0.00,0,0")]
    [DataRow("1.00,0.004,NaN,0.600,0.350,0,0,idle,0.0,0,0,0.00,0,0")]
    public void What_is_no_line_is_found(string text) => Assert.IsNull(WatchLine.Parse(text));

    [TestMethod]
    public void Faults_are_named_with_what_was_seen()
    {
        WatchLine line = WatchLine.Parse("1.00,0.004,0.003,0.600,0.350,0,0,fault,0.0,2177,12,0.00,0,0")!;

        CollectionAssert.AreEqual((Fault[])[Fault.SensorAtRail, Fault.Noisy, Fault.RestartLoop], line.Faults.ToArray());
        Assert.AreEqual(
            "sensor open or shorted: the converter reads 12 all the time; also: noisy line, restarts in a row. Do: unplug "
                + "from mains, then check the sensor's plug and wires",
            line.FaultSentence());
    }

    private static bool Comes(Func<bool> what)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (watch.Elapsed < BuiltProgram.Patience)
        {
            if (what())
            {
                return true;
            }
        }

        return false;
    }
}
