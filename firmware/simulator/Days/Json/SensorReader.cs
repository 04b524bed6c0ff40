using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads the sensor and the converter of a day file.</summary>
internal static class SensorReader
{
    private const double MostAmperes = 100;

    private static readonly JsonWords<SensorKind> s_kinds = new(
        ("transformer", SensorKind.Transformer),
        ("hall", SensorKind.Hall));

    /// <summary>Reads the sensor.</summary>
    /// <param name="item">The sensor.</param>
    /// <param name="day">The day that it belongs to.</param>
    public static void ReadSensor(JsonItem item, Day day)
    {
        JsonFields fields = new(item, "'sensor'", "kind", "gain", "turns", "noise", "noiseFrom", "hum", "drift", "crosstalk");
        day.Shop.Sensor = fields.ChoiceOrNull("kind", s_kinds) ?? day.Shop.Sensor;
        day.MillivoltsPerAmpere = fields.NumberOrNull("gain", 0.1, 1000);
        day.Turns = fields.WholeOrNull("turns", 1, 10) ?? day.Turns;
        day.NoiseAmperes = fields.NumberOrNull("noise", 0, MostAmperes) ?? day.NoiseAmperes;
        day.HumAmperes = fields.NumberOrNull("hum", 0, MostAmperes) ?? day.HumAmperes;
        day.DriftMillivoltsPerHour = fields.NumberOrNull("drift", -10_000, 10_000) ?? day.DriftMillivoltsPerHour;
        day.Crosstalk = fields.NumberOrNull("crosstalk", -1, 1) ?? day.Crosstalk;
        if (fields.Find("noiseFrom") is { } from)
        {
            if (fields.Find("noise") is not null)
            {
                throw from.Error("'noise' and 'noiseFrom' are both given; leave one of them");
            }

            ReadNoise(from, day);
        }
    }

    /// <summary>Reads the converter.</summary>
    /// <param name="item">The converter.</param>
    /// <param name="day">The day that it belongs to.</param>
    public static void ReadConverter(JsonItem item, Day day)
    {
        JsonFields fields = new(item, "'converter'", "dropOuts", "stepErrors");
        day.DropOutProbability = fields.NumberOrNull("dropOuts", 0, 1) ?? 0;
        day.StepErrorCounts = fields.NumberOrNull("stepErrors", 0, 100) ?? 0;
    }

    private static void ReadNoise(JsonItem item, Day day)
    {
        JsonFields fields = new(item, "'noiseFrom'", "file", "column", "rate", "hertz", "amperes");
        JsonItem file = fields.Required("file");
        string path = Path.Combine(item.Source.Folder, fields.Text("file"));
        int column = fields.WholeOrNull("column", 1, 1000) ?? 1;
        double rate = fields.Number("rate", 100, 200_000);
        double hertz = fields.Number("hertz", 45, 65);
        day.NoiseAmperes = fields.Number("amperes", 0, MostAmperes);
        day.NoiseCourse = MainsResidual.Of(Values(file, path, column), rate, hertz);
        day.NoiseCourseRate = rate;
        if (day.NoiseCourse.Length < rate)
        {
            throw file.Error("the recording is shorter than a second, or nothing is left of it without its mains harmonics");
        }
    }

    private static double[] Values(JsonItem file, string path, int column)
    {
        try
        {
            return Recording.Read(path, column);
        }
        catch (UserException exception)
        {
            throw file.Error("the recording cannot be used: " + exception.Message.TrimEnd('.'));
        }
    }
}
