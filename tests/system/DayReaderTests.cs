using System.Text;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>What a day file says is what the shop is built of.</summary>
[TestClass]
public sealed class DayReaderTests
{
    private const string Json = """
        {
          "seconds": 60,
          "mains": { "volts": 230, "hertz": 50, "ohms": 0.7 },
          "sensor": { "kind": "hall", "gain": 40, "turns": 3, "noise": 0.2, "hum": 0.1, "drift": -20, "crosstalk": 0.04,
                      "crosstalkDegrees": 90 },
          "converter": { "dropOuts": 0.002, "stepErrors": 5 },
          "circuits": [ { "name": "bench" }, { "name": "wall", "amperes": 16, "curve": "b" } ],
          "vacuum": { "amperes": 6, "circuit": "wall" },
          "tools": [
            { "name": "saw", "kind": "universal", "amperes": 5 },
            { "name": "heater", "kind": "lamp", "amperes": 8, "circuit": "wall", "toolLine": false }
          ],
          "steps": [ { "at": 5, "do": "mains", "factor": 0.6, "seconds": 0.3 }, { "at": 6, "do": "arc", "seconds": 2 } ]
        }
        """;

    [TestMethod]
    public void Every_member_reaches_its_part()
    {
        Day day = DayFile.Parse(Encoding.UTF8.GetBytes(Json), "day.json");
        VirtualShop shop = ShopBuilder.Build(day, 1);

        Assert.AreEqual(0.7, day.Shop.SourceOhms);
        Assert.AreEqual(SensorKind.Hall, shop.Sensor.Kind);
        Assert.AreEqual(40.0, shop.Sensor.MillivoltsPerAmpere);
        Assert.AreEqual(3, shop.Sensor.Turns);
        Assert.AreEqual(0.2, shop.Sensor.NoiseAmperes);
        Assert.AreEqual(0.1, shop.Sensor.HumAmperes);
        Assert.AreEqual(-20.0, shop.Sensor.DriftMillivoltsPerHour);
        Assert.AreEqual(0.04, shop.Sensor.Crosstalk);
        Assert.AreEqual(90.0, day.CrosstalkDegrees);
        Assert.AreEqual(0.002, shop.Converter.DropOutProbability);
        Assert.AreEqual(6.0, shop.Vacuum.RatedAmperes);
        Assert.HasCount(2, shop.Wiring.Circuits);
        Assert.AreEqual(20.0, shop.Wiring.Circuits[0].Breaker.RatedAmperes);
        Assert.AreEqual(BreakerCurve.B, shop.Wiring.VacuumCircuit.Breaker.Curve);
        Assert.AreEqual("wall", day.Tools[1].CircuitName);
        Assert.IsFalse(day.Tools[1].IsOnToolLine);
        Assert.AreEqual(new DayStep(5_000_000, DayAct.Mains, Value: 0.6, Seconds: 0.3), day.Steps[0]);
    }

    // A sine of 50 Hz a quarter of a cycle later is the negative cosine (textbook identity).
    [TestMethod]
    public void The_crosstalk_lags_by_its_degrees()
    {
        Day day = new() { NoiseAmperes = 0, Crosstalk = 1, CrosstalkDegrees = 90 };
        day.Shop.Hertz = 50;
        day.Shop.Sensor = SensorKind.Hall;
        CurrentSensor sensor = ShopBuilder.Build(day, 1).Sensor;
        for (long now = 0; now < 100_000; now += 370)
        {
            double angle = 2 * Math.PI * 50e-6 * now;
            sensor.Follow(now, 0, Math.Sin(angle), default);
            if (now > 20_000)
            {
                double seen = (sensor.Millivolts() - sensor.RestMillivolts) / sensor.MillivoltsPerAmpere;
                Assert.AreEqual(-Math.Cos(angle), seen, 0.01);
            }
        }
    }

    [TestMethod]
    public void Step_errors_spoil_the_codes_by_no_more_than_they_say()
    {
        Day day = DayFile.Parse(Encoding.UTF8.GetBytes(Json), "day.json");
        Day plain = DayFile.Parse(
            Encoding.UTF8.GetBytes(Json.Replace("\"stepErrors\": 5", "\"stepErrors\": 0", StringComparison.Ordinal)), "day.json");
        day.DropOutProbability = 0;
        plain.DropOutProbability = 0;
        Converter spoiled = ShopBuilder.Build(day, 1).Converter;
        Converter good = ShopBuilder.Build(plain, 1).Converter;

        int worst = Enumerable.Range(500, 1500)
            .Max(millivolts => Math.Abs(spoiled.Convert(millivolts) - good.Convert(millivolts)));
        Assert.IsInRange(4, 6, worst);
    }

    [TestMethod]
    public void What_lasts_ends_by_itself_to_the_microsecond()
    {
        Day day = DayFile.Parse(Encoding.UTF8.GetBytes(Json), "day.json");
        List<Entry> timeline = [];
        VirtualShop shop = ShopBuilder.Build(day, 1);
        Person person = new(day, 1, shop, timeline);
        while (person.Due < long.MaxValue)
        {
            person.Act(person.Due);
        }

        Assert.HasCount(4, timeline);
        Assert.AreEqual(300_000, timeline[1].Time - timeline[0].Time);
        Assert.AreEqual(2_000_000, timeline[3].Time - timeline[2].Time);
        Assert.AreEqual(1.0, shop.Mains.VoltageFactor);
        Assert.IsNull(shop.Sensor.Sparks);
    }
}
