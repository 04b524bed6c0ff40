using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Builds the shop of a day.</summary>
internal static class ShopBuilder
{
    /// <summary>Builds.</summary>
    /// <param name="day">The day.</param>
    /// <param name="seed">The seed of all chance.</param>
    /// <returns>The shop, with its tools plugged in and off.</returns>
    public static VirtualShop Build(Day day, long seed)
    {
        ShopSpecification specification = day.Shop;
        specification.Seed = seed;
        VirtualShop shop = new(specification);
        shop.Sensor.NoiseAmperes = day.NoiseAmperes;
        shop.Sensor.HumAmperes = day.HumAmperes;
        foreach (ToolSpecification tool in day.Tools)
        {
            shop.Wiring.AddTool(tool);
        }

        return shop;
    }
}
