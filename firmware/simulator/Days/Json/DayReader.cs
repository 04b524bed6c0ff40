using System.Text.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a day from the items of its file.</summary>
internal static class DayReader
{
    private const double MostAmperes = 100;

    private static readonly JsonWords<SensorKind> s_sensors = new(
        ("transformer", SensorKind.Transformer),
        ("hall", SensorKind.Hall));

    private static readonly JsonWords<BreakerCurve> s_curves = new(
        ("north-american", BreakerCurve.NorthAmerican),
        ("b", BreakerCurve.B),
        ("c", BreakerCurve.C),
        ("d", BreakerCurve.D));

    /// <summary>Reads the day.</summary>
    /// <param name="root">The whole file.</param>
    /// <returns>The day.</returns>
    public static Day Read(JsonItem root)
    {
        JsonFields fields = new(
            root,
            "a day",
            "name",
            "seconds",
            "seed",
            "mains",
            "sensor",
            "readings",
            "vacuum",
            "circuit",
            "tools",
            "settings",
            "steps");
        Day day = new() { Seconds = ReadLength(fields.Required("seconds")) };
        day.Name = fields.TextOrNull("name") ?? day.Name;
        day.Shop.Seed = ReadSeed(fields.Find("seed")) ?? day.Shop.Seed;
        ReadMains(fields.Find("mains"), day.Shop);
        ReadSensor(fields.Find("sensor"), day);
        ReadReadings(fields.Find("readings"), day);
        ReadVacuum(fields.Find("vacuum"), day.Shop);
        ReadCircuit(fields.Find("circuit"), day.Shop);
        day.Tools = ToolReader.Read(fields.Required("tools"), day.Shop.Hertz);
        day.Settings = [.. fields.List("settings").Select(item => JsonFields.Line(item, "a line of 'settings'"))];
        StepReader steps = new(day.Tools, day.Seconds);
        day.Steps = [.. fields.List("steps").Select(steps.Read)];
        return day;
    }

    private static double ReadLength(JsonItem item)
    {
        double seconds = JsonTime.Read(item, "seconds");
        return seconds >= 1 ? seconds : throw item.Error($"a day must be at least 1 second long, not {seconds}");
    }

    // A greater whole number would not be exact as a JSON number.
    private static long? ReadSeed(JsonItem? item)
    {
        const double Greatest = 1L << 53;
        if (item is null)
        {
            return null;
        }

        double seed = item.Require(JsonTokenType.Number, "'seed'", "a number").Number;
        return seed >= 0 && seed <= Greatest && seed == Math.Floor(seed)
            ? (long)seed
            : throw item.Error($"'seed' must be a whole number from 0 to {Greatest}, not {seed}");
    }

    private static void ReadMains(JsonItem? item, ShopSpecification shop)
    {
        if (item != null)
        {
            // Both or none: a voltage from one country and a frequency from another are nobody's mains.
            JsonFields fields = new(item, "'mains'", "volts", "hertz");
            shop.Volts = fields.Number("volts", 1, 1000);
            shop.Hertz = fields.Number("hertz", 45, 65);
        }
    }

    private static void ReadSensor(JsonItem? item, Day day)
    {
        if (item != null)
        {
            JsonFields fields = new(item, "'sensor'", "kind", "noise", "hum");
            day.Shop.Sensor = fields.ChoiceOrNull("kind", s_sensors) ?? day.Shop.Sensor;
            day.NoiseAmperes = fields.NumberOrNull("noise", 0, MostAmperes) ?? day.NoiseAmperes;
            day.HumAmperes = fields.NumberOrNull("hum", 0, MostAmperes) ?? day.HumAmperes;
        }
    }

    private static void ReadReadings(JsonItem? item, Day day)
    {
        if (item != null)
        {
            // The switch takes at most 64 readings in a bucket of 2.5 ms.
            JsonFields fields = new(item, "'readings'", "rate", "jitter");
            day.Pace = new Pace(
                fields.NumberOrNull("rate", 1, 20_000) ?? day.Pace.Rate,
                fields.NumberOrNull("jitter", 0, 0.99) ?? day.Pace.Jitter);
        }
    }

    private static void ReadVacuum(JsonItem? item, ShopSpecification shop)
    {
        if (item != null)
        {
            shop.VacuumAmperes = new JsonFields(item, "'vacuum'", "amperes").Number("amperes", 0.1, MostAmperes);
        }
    }

    private static void ReadCircuit(JsonItem? item, ShopSpecification shop)
    {
        if (item != null)
        {
            JsonFields fields = new(item, "'circuit'", "name", "amperes", "curve");
            shop.CircuitName = fields.TextOrNull("name") ?? shop.CircuitName;
            shop.CircuitAmperes = fields.NumberOrNull("amperes", 0.1, 1000) ?? shop.CircuitAmperes;
            shop.CircuitCurve = fields.ChoiceOrNull("curve", s_curves) ?? shop.CircuitCurve;
        }
    }
}
