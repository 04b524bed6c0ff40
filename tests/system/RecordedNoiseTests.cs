using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>Noise of a recording in place of the made-up one.</summary>
[TestClass]
public sealed class RecordedNoiseTests
{
    private const int Rate = 1000;
    private const int Length = 5 * Rate;

    [TestMethod]
    [DataRow(60.0)]
    [DataRow(59.95)]
    public void What_is_left_of_a_motors_current_is_its_noise(double hertz)
    {
        double[] noise = Noise();
        double[] rest = MainsResidual.Of(Motor(noise, hertz), Rate, 60);

        double square = rest.Sum(value => value * value) / Length;
        double alike = rest.Zip(noise).Sum(pair => pair.First * pair.Second) / Length;
        Assert.AreEqual(1.0, square, 1e-9);
        Assert.IsGreaterThan(0.95, alike, "part of the current is left, or of the noise is gone");
    }

    [TestMethod]
    public void A_pure_sine_leaves_nothing()
    {
        Assert.IsEmpty(MainsResidual.Of(Motor(new double[Length], 60), Rate, 60));
    }

    [TestMethod]
    public void A_day_plays_it_at_the_size_it_says_from_another_place_with_each_seed()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            File.WriteAllLines(Path.Combine(folder, "motor.csv"), Motor(Noise(), 60).Select(value => $"0,{value:0.0000}"));
            string file = Path.Combine(folder, "day.json");
            File.WriteAllText(file, """
                {
                  "seconds": 30,
                  "sensor": { "noiseFrom": { "file": "motor.csv", "column": 2, "rate": 1000, "hertz": 60, "amperes": 0.2 } },
                  "tools": [ { "name": "saw", "kind": "induction", "amperes": 8 } ],
                  "steps": [ { "at": 10, "do": "start", "tool": "saw" }, { "at": 20, "do": "stop", "tool": "saw" } ]
                }
                """);
            Day day = DayFile.Read(file);
            DayRun first = new DayRun(day, 1, isTraced: true).Run();
            DayRun second = new DayRun(day, 2, isTraced: true).Run();

            Assert.AreEqual(0.2, Spread(ShopBuilder.Build(day, 1)), 0.01);
            Assert.AreEqual(1, first.Judge.Starts);
            Assert.AreEqual(0, first.Judge.Missed + first.Judge.False);
            Assert.AreNotEqual(first.Trace[10].SwingAmperes, second.Trace[10].SwingAmperes);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static double[] Noise()
    {
        ShopRandom random = new(3, 1);
        return [.. Enumerable.Range(0, Length).Select(_ => random.NextGaussian())];
    }

    private static double[] Motor(double[] noise, double hertz)
    {
        double[] values = new double[Length];
        for (int i = 0; i < Length; i++)
        {
            double angle = 2 * Math.PI * hertz * i / Rate;
            values[i] = noise[i] + 5 + (3 * Math.Sin(angle + 1)) + (0.5 * Math.Sin((3 * angle) + 2));
        }

        return values;
    }

    // Readings that fall on the recording's own values.
    private static double Spread(VirtualShop shop)
    {
        double square = 0;
        for (int i = 1; i <= Length; i++)
        {
            shop.Sensor.Follow(i * 1000L, 0, 0, default);
            double amperes = (shop.Sensor.Millivolts() - shop.Sensor.RestMillivolts) / shop.Sensor.MillivoltsPerAmpere;
            square += amperes * amperes;
        }

        return Math.Sqrt(square / Length);
    }
}
