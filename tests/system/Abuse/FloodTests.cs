using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>The serial line never rests while tools start: no start is lost.</summary>
[TestClass]
public sealed class FloodTests
{
    private const int Starts = 10;
    private const long Second = 1_000_000;

    // Every other line stalls the board for up to 140 ms, which the driver bridges. Longer stalls, line after line, are the fault
    // of a board that pauses, and keep the vacuum off: PauseTests.
    private const double BridgedMilliseconds = 140;

    // In the shop's time, so that a busy PC changes nothing. Without a flood an unknown tool is waited for 0.78 s; two of
    // these floods leave so few readings in a row that the longest wait of 3 s ends it, and a stall may come on top.
    private const double LatestAtTheBoard = 3500;
    private const long LongestWait = 10 * Second;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow("\r", DisplayName = "empty lines")]
    [DataRow("x", DisplayName = "a line without end")]
    [DataRow("help\r", DisplayName = "long answers")]
    [DataRow("watch\rwatch\r", DisplayName = "streams on and off")]
    [DataRow("run-on 5\rrun-on 7\rno such word\r", DisplayName = "settings")]
    public void A_flood_of_bytes_loses_no_start(string flood)
    {
        double quiet = Worst("", Pace.Ideal(2000));
        double ideal = Worst(flood, Pace.Ideal(2000));
        double board = Worst(
            flood, Pace.Esp32() with { Costs = new BoardCosts { MostCollectionMilliseconds = BridgedMilliseconds } });
        TestContext.WriteLine($"latest command {ideal:0} ms after the current at ideal pace, {board:0} ms at the board's");
        Assert.AreEqual(quiet, ideal, "Where work takes no time a flood costs none.");
        Assert.IsLessThan(LatestAtTheBoard, board);
    }

    private static double Worst(string flood, Pace pace)
    {
        ToolSpecification saw = new() { Name = "heat gun", Kind = ToolKind.Lamp, RatedAmperes = 8, InrushMultiple = 1 };
        Day day = new() { Pace = pace, Tools = [saw] };
        VirtualShop shop = ShopBuilder.Build(day, 1);
        PcBoard board = new(
            new ShopLine(shop, new Person(new Day(), 1, shop, [])), pace.Clock(1), FlashImage.Blank(), pace.Time(1));
        Rig rig = new(board);
        rig.RunUntil(pace.WarmUp);
        double worst = 0;
        for (int i = 0; i < Starts; i++)
        {
            // Never twice at the same place of a cycle.
            Flood(rig, flood, board.ShopTime + (20 * Second) + (i * 777));
            long from = board.ShopTime;
            shop.Wiring.Tools[0].Start(from);
            while (!rig.Switch.Core.IsRelayClosed && board.ShopTime < from + LongestWait)
            {
                Flood(rig, flood, board.ShopTime + 1);
            }

            worst = Math.Max(worst, (board.ShopTime - from) / 1000.0);
            shop.Wiring.Tools[0].Stop(board.ShopTime);
        }

        return worst;
    }

    private static void Flood(Rig rig, string flood, long until)
    {
        while (rig.Board.ShopTime < until)
        {
            while (flood.Length > 0 && rig.Board.Serial.Waiting < 64)
            {
                rig.Board.Serial.Type(flood);
            }

            rig.Step();
            rig.Board.Serial.TakeSent();
        }
    }
}
