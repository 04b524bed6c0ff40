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

    // One in twenty may be higher.
    private const double MostAboveRunning = 1.5;
    private const int MayBeAbove = Starts / 20;

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
                foreach (Pace pace in new[] { Pace.Ideal(2000), Pace.Esp32() })
                {
                    double most = Most(kind, amperes, inrush, seconds, hertz, sensor, pace);
                    string text = $"{kind} {amperes} A x {inrush}, {hertz} Hz, {sensor}, "
                        + $"{(pace.Costs is null ? "ideal" : "ESP32")}: {most:0.00} x running";
                    TestContext.WriteLine(text);
                    Assert.IsLessThan(MostAboveRunning, most, text);
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
            long end = rig.Board.ShopTime + 4_000_000;
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
