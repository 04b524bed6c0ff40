using System.Text.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a day from the items of its file.</summary>
internal static class DayReader
{
    private const double MostAmperes = 100;

    private static readonly JsonWords<bool> s_paces = new(
        ("ideal", false),
        ("esp32", true));

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
            "converter",
            "readings",
            "circuits",
            "vacuum",
            "tools",
            "settings",
            "steps");
        Day day = new() { Seconds = ReadLength(fields.Required("seconds")) };
        day.Name = fields.TextOrNull("name") ?? day.Name;
        day.Shop.Seed = ReadSeed(fields.Find("seed")) ?? day.Shop.Seed;
        ReadMains(fields.Find("mains"), day.Shop);
        if (fields.Find("sensor") is { } sensor)
        {
            SensorReader.ReadSensor(sensor, day);
        }

        if (fields.Find("converter") is { } converter)
        {
            SensorReader.ReadConverter(converter, day);
        }

        ReadReadings(fields.Find("readings"), day);
        if (fields.Find("circuits") is { } circuits)
        {
            day.Shop.Circuits = CircuitReader.Read(circuits);
        }

        ReadVacuum(fields.Find("vacuum"), day.Shop);
        day.Tools = ToolReader.Read(fields.Required("tools"), day.Shop);
        day.Settings = [.. fields.List("settings").Select(item => JsonFields.Line(item, "a line of 'settings'"))];
        StepReader steps = new(day);
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
            // The first two or neither: a voltage from one country and a frequency from another are nobody's mains.
            JsonFields fields = new(item, "'mains'", "volts", "hertz", "ohms");
            shop.Volts = fields.Number("volts", 1, 1000);
            shop.Hertz = fields.Number("hertz", 45, 65);
            shop.SourceOhms = fields.NumberOrNull("ohms", 0, 10) ?? shop.SourceOhms;
        }
    }

    private static void ReadReadings(JsonItem? item, Day day)
    {
        if (item == null)
        {
            return;
        }

        JsonFields fields = new(item, "'readings'", "pace", "rate", "jitter");
        if (fields.ChoiceOrNull("pace", s_paces) is true)
        {
            if (fields.Find("rate") is not null || fields.Find("jitter") is not null)
            {
                throw item.Error("at the pace of the 'esp32' the board reads as fast as it can; leave 'rate' and 'jitter' out");
            }

            day.Pace = Pace.Esp32();
        }
        else
        {
            // The switch takes at most 64 readings in a bucket of 2.5 ms.
            day.Pace = new Pace(
                fields.NumberOrNull("rate", 1, 20_000) ?? day.Pace.Rate,
                fields.NumberOrNull("jitter", 0, 0.99) ?? day.Pace.Jitter);
        }
    }

    private static void ReadVacuum(JsonItem? item, ShopSpecification shop)
    {
        if (item != null)
        {
            JsonFields fields = new(item, "'vacuum'", "amperes", "circuit", "sensor", "throughToolSensor");
            shop.HasVacuumSensor = fields.BooleanOrNull("sensor") ?? false;
            shop.IsVacuumThroughToolSensor = fields.BooleanOrNull("throughToolSensor") ?? false;
            shop.VacuumAmperes = fields.NumberOrNull("amperes", 0.1, MostAmperes) ?? shop.VacuumAmperes;
            shop.VacuumCircuit = fields.Find("circuit") is { } circuit ? CircuitReader.Name(circuit, shop.Circuits) : null;
        }
    }
}
