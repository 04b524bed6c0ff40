using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.SystemTests.Matrix;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// After the start surge means after it: when the vacuum is commanded, the tool's true current is close to what it runs at, also
/// where the surge clips the sensor. Inrush of 4 to 10 times, decaying in 50 to 200 ms: inside the range of the survey of an open
/// appliance-recording set (1.5 to 12 times, 0.05 to 1 s; read, figure only).
/// </summary>
[TestClass]
public sealed class InrushTests
{
    private const int Starts = 40;

    // A surge with a time constant of 0.15 s that falls by a twenty-fifth in 80 ms stands an eighth above its end; ripple and
    // holes in the readings may hide more of it for a moment. Most starts come at 1.05 to 1.2, and one in twenty may be higher.
    // The board reads nothing for a third of the time; there a surge of 0.2 s at 60 Hz is let through sooner (README, Limits).
    private const double MostAboveRunning = 1.5;
    private const double MostAtTheBoard = 2.1;
    private const int MayBeAbove = Starts / 20;

    // A Hall sensor of 25 A clips so deeply in the start of a larger tool that nothing tells when it is over.
    private const double MostOnHall = 6;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(ToolKind.Induction, 11.5, 6.0, 0.15)]
    [DataRow(ToolKind.Induction, 5.2, 6.0, 0.15)]
    [DataRow(ToolKind.Induction, 5.2, 8.0, 0.1)]
    [DataRow(ToolKind.Universal, 7.0, 4.0, 0.2)]
    [DataRow(ToolKind.HalfWave, 3.0, 3.0, 0.1)]
    [DataRow(ToolKind.PhaseChopped, 3.0, 2.0, 0.1)]
    [DataRow(ToolKind.Lamp, 3.0, 10.0, 0.05)]
    public void The_vacuum_does_not_start_inside_the_inrush(ToolKind kind, double amperes, double inrush, double seconds)
    {
        foreach (double hertz in new[] { 50.0, 50.4, 60.0 })
        {
            foreach (SensorKind sensor in new[] { SensorKind.Transformer, SensorKind.Hall })
            {
                if (sensor == SensorKind.Hall && amperes > MostOnHall)
                {
                    continue;
                }

                foreach (Pace pace in new[] { Pace.Ideal(2000), Pace.Esp32() })
                {
                    double most = Most(kind, amperes, inrush, seconds, hertz, sensor, pace);
                    string text = $"{kind} {amperes} A x {inrush}, {hertz} Hz, {sensor}, "
                        + $"{(pace.Costs is null ? "ideal" : "ESP32")}: {most:0.00} x running";
                    TestContext.WriteLine(text);
                    Assert.IsLessThan(pace.Costs is null ? MostAboveRunning : MostAtTheBoard, most, text);
                }
            }
        }
    }

    // True current at a command, over the running one: the most of nineteen in twenty.
    private static double Most(
        ToolKind kind, double amperes, double inrush, double seconds, double hertz, SensorKind sensor, Pace pace)
    {
        Day day = new Inrush(kind, amperes, inrush, seconds, hertz, 0, pace).Day();
        day.Shop.Sensor = sensor;
        (VirtualShop shop, _, Rig rig) = ShopRig.Build(day, 11);
        rig.RunUntil(3_000_000);
        rig.Ask(sensor == SensorKind.Hall ? "sensor-gain 50" : "sensor-gain 23.5");
        rig.Ask("run-on 0");
        rig.Ask("starts-a-minute 30");
        List<double> all = [];
        for (int i = 0; i < Starts; i++)
        {
            rig.RunUntil(rig.Board.ShopTime + 1_000_000 + (i * 1_370));
            shop.Wiring.Tools[0].Start(rig.Board.ShopTime);
            long end = rig.Board.ShopTime + 3_000_000;
            while (!rig.Switch.Core.IsRelayClosed && rig.Board.ShopTime < end)
            {
                rig.Step();
            }

            Assert.IsTrue(rig.Switch.Core.IsRelayClosed);
            all.Add(shop.Wiring.Tools[0].RmsAmperes / amperes);
            rig.RunUntil(rig.Board.ShopTime + 1_000_000);
            shop.Wiring.Tools[0].Stop(rig.Board.ShopTime);
        }

        return all.Order().ElementAt(Starts - 1 - MayBeAbove);
    }
}
