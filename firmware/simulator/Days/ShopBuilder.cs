using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Builds the shop of a day.</summary>
internal static class ShopBuilder
{
    // Streams 1 to 4 are the shop's own, 5 to 8 have other uses.
    private const int CourseStream = 9;

    /// <summary>Builds.</summary>
    /// <param name="day">The day.</param>
    /// <param name="seed">The seed of all chance.</param>
    /// <returns>The shop, with its tools plugged in and off.</returns>
    public static VirtualShop Build(Day day, long seed)
    {
        VirtualShop shop = new(day.Shop, seed);
        CurrentSensor sensor = shop.Sensor;
        sensor.NoiseAmperes = day.NoiseAmperes;
        sensor.HumAmperes = day.HumAmperes;
        sensor.HumDegrees = day.HumDegrees;
        sensor.Crosstalk = day.Crosstalk;
        sensor.CrosstalkMicroseconds = day.CrosstalkDegrees / 360 * 1e6 / day.Shop.Hertz;
        sensor.DriftMillivoltsPerHour = day.DriftMillivoltsPerHour;
        sensor.Turns = day.Turns;
        sensor.MillivoltsPerAmpere = day.MillivoltsPerAmpere ?? sensor.MillivoltsPerAmpere;
        if (day.NoiseCourse is { } course)
        {
            sensor.NoiseCourse = new RecordedNoise(course, day.NoiseCourseRate, new ShopRandom(seed, CourseStream).NextDouble());
        }

        shop.Converter.DropOutProbability = day.DropOutProbability;
        shop.Converter.SetStepErrors(day.StepErrorCounts);
        foreach (ToolSpecification tool in day.Tools)
        {
            shop.Wiring.AddTool(tool);
        }

        return shop;
    }
}
