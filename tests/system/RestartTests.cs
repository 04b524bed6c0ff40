using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>The board that comes up again, and the tool that starts again soon after its stop.</summary>
[TestClass]
public sealed class RestartTests
{
    private const double RestartGap = 0.5;
    private const double Hold = RelayGate.LongestHoldMicroseconds / 1e6;
    private const double StartDelay = 0.3;
    private const double TwoCycles = 2 / 60.0;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(1, false)]
    [DataRow(2, true)]
    [DataRow(3, true)]
    [DataRow(4, true)]
    [DataRow(5, true)]
    public void Three_seconds_after_power_on_the_board_is_ready(int seed, bool isSaved)
    {
        (_, _, Rig rig) = ShopRig.Build(new Day { Pace = Pace.Esp32() }, seed);
        rig.Run(4);
        if (isSaved)
        {
            rig.Ask("run-on 8");
            rig.Ask("save");
            rig.Run(2);
        }

        rig.Board.Serial.TakeSent();
        long off = rig.Board.ShopTime;
        rig.PowerCycle();
        Assert.IsGreaterThan(off + 1_000_000, rig.Board.ShopTime);
        string said = "";
        while (!(rig.Switch.Core.IsWindowValid && said.EndsWith("> ", StringComparison.Ordinal))
            && rig.Board.ShopTime < off + 10_000_000)
        {
            rig.Step();
            said += SentText.Of(rig.Board.Serial.TakeSent());
        }

        double readySeconds = (rig.Board.ShopTime - off) / 1e6;
        StringAssert.Contains(said, "Type help.\n> ");
        Assert.IsTrue(rig.Switch.Core.IsWindowValid);

        // The relay can be commanded as well.
        rig.Board.Serial.Type("vacuum on\r");
        while (!rig.Switch.Core.IsRelayClosed && rig.Board.ShopTime < off + 10_000_000)
        {
            rig.Step();
        }

        double commandedSeconds = (rig.Board.ShopTime - off) / 1e6;
        TestContext.WriteLine($"ready after {readySeconds:0.00} s, relay commanded after {commandedSeconds:0.00} s");
        Assert.IsTrue(rig.Switch.Core.IsRelayClosed);
        Assert.IsLessThanOrEqualTo(3.0, readySeconds);
        Assert.IsLessThanOrEqualTo(3.0, commandedSeconds);
    }

    [TestMethod]
    [DataRow(false, ToolKind.Induction)]
    [DataRow(true, ToolKind.Induction)]
    [DataRow(false, ToolKind.Universal)]
    [DataRow(true, ToolKind.Universal)]
    public void A_tool_that_starts_again_has_the_vacuum_after_gap_delay_and_two_cycles(bool isEsp32, ToolKind kind)
    {
        (VirtualShop shop, Rig rig) = Shop(isEsp32, kind, "run-on 0", "start-delay 0.3", "starts-a-minute 30");
        Tool tool = shop.Wiring.Tools[0];
        double worst = 0;
        int opened = 0;
        foreach (double pause in Pauses())
        {
            tool.Start(rig.Board.ShopTime);
            rig.Run(1.5);
            Assert.IsTrue(rig.Switch.Core.IsRelayClosed);
            tool.Stop(rig.Board.ShopTime);
            opened += OpenTime(rig, pause) > 0 ? 1 : 0;
            tool.Start(rig.Board.ShopTime);

            // The last moment within two seconds at which it was not commanded on.
            double late = OpenTime(rig, 2);
            worst = Math.Max(worst, late);
            Assert.IsLessThanOrEqualTo(
                Hold + RestartGap + StartDelay + TwoCycles, late, $"restarted {pause:0.000} s after its stop");
            Assert.IsTrue(rig.Switch.Core.IsRelayClosed);
            tool.Stop(rig.Board.ShopTime);
            rig.Run(2);
        }

        TestContext.WriteLine($"worst {worst:0.000} s after the restart; the vacuum was off in {opened} of the pauses");
        Assert.IsGreaterThan(20, opened);
        Assert.IsGreaterThan(StartDelay, worst);
    }

    // By the shop's contact and not by the command, with the driver that lets go last, for parts 20 % off.
    [TestMethod]
    [DataRow(0)]
    [DataRow(160)]
    [DataRow(250)]
    [DataRow(400)]
    [DataRow(900)]
    public void The_contact_is_open_for_the_gap_whatever_opened_it(int stallMilliseconds)
    {
        Day day = new() { Tools = [ShortDay.Tool(ToolKind.Induction, 8)] };
        day.Shop.DriverTimeFactor = 1.4;
        day.Pace = Pace.Esp32() with
        {
            Costs = new BoardCosts
            {
                CollectionChance = 1,
                LeastCollectionMilliseconds = stallMilliseconds,
                MostCollectionMilliseconds = stallMilliseconds,
            },
        };
        (VirtualShop shop, _, Rig rig) = ShopRig.Build(day, 11);
        rig.Run(4);
        shop.Wiring.Tools[0].Start(rig.Board.ShopTime);
        rig.Run(3);
        long opened = -1;
        int rests = 0;
        long until = rig.Board.ShopTime + 25_000_000;
        for (long next = rig.Board.ShopTime; rig.Board.ShopTime < until; rig.Step())
        {
            if (rig.Board.ShopTime >= next)
            {
                next += 2_700_000;
                rig.Board.Serial.Type(stallMilliseconds == 0 ? "vacuum off\rvacuum on\r" : "why\r");
            }

            // By the coil, which does not bounce: the contact follows it in 5 ms, and closes in 10.
            if (!shop.Driver.IsEnergised(rig.Board.ShopTime))
            {
                opened = opened < 0 ? rig.Board.ShopTime : opened;
            }
            else if (opened >= 0)
            {
                rests++;
                Assert.IsGreaterThanOrEqualTo(RestartGap, (rig.Board.ShopTime - opened) / 1e6, $"rest {rests}");
                opened = -1;
            }
        }

        Assert.IsGreaterThan(6, rests);
    }

    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void With_a_run_on_the_vacuum_never_goes_off_in_between(bool isEsp32)
    {
        (VirtualShop shop, Rig rig) = Shop(isEsp32, ToolKind.Induction, "run-on 5", "start-delay 0.3", "starts-a-minute 30");
        Tool tool = shop.Wiring.Tools[0];
        tool.Start(rig.Board.ShopTime);
        rig.Run(1.5);
        Assert.IsTrue(rig.Switch.Core.IsRelayClosed);
        foreach (double pause in Pauses())
        {
            tool.Stop(rig.Board.ShopTime);
            Assert.AreEqual(0.0, OpenTime(rig, pause), $"pause of {pause:0.000} s");
            tool.Start(rig.Board.ShopTime);
            Assert.AreEqual(0.0, OpenTime(rig, 1.5), $"after a pause of {pause:0.000} s");
        }
    }

    // From 0.1 to 1 s, at every angle of the mains.
    private static IEnumerable<double> Pauses() =>
        Enumerable.Range(0, 46).Select(i => Math.Min(1.0, 0.1 + (i * 0.02) + (i % 7 * 0.0011)));

    // Lets time pass and gives the end of the last moment at which the relay was not commanded on, in s; 0 for none.
    private static double OpenTime(Rig rig, double seconds)
    {
        long begin = rig.Board.ShopTime;
        long latest = begin;
        while (rig.Board.ShopTime < begin + (long)(seconds * 1e6))
        {
            rig.Step();
            if (!rig.Switch.Core.IsRelayClosed)
            {
                latest = rig.Board.ShopTime;
            }
        }

        return (latest - begin) / 1e6;
    }

    private static (VirtualShop Shop, Rig Rig) Shop(bool isEsp32, ToolKind kind, params string[] settings)
    {
        Day day = new() { Tools = [ShortDay.Tool(kind, 8)] };
        day.Pace = isEsp32 ? Pace.Esp32() : day.Pace;
        (VirtualShop shop, _, Rig rig) = ShopRig.Build(day, 11);
        rig.Run(4);
        foreach (string line in settings)
        {
            rig.Ask(line);
        }

        rig.Run(1);
        Assert.AreEqual(VacuumState.Idle, rig.Switch.Core.Vacuum.State);
        return (shop, rig);
    }
}
