namespace NanoDustSwitch.Simulator.Shop;

/// <summary>State of the sensor and its lead.</summary>
public enum SensorState
{
    /// <summary>In order.</summary>
    Healthy,

    /// <summary>Not plugged in: the bias is missing as well, so the input lies at the low rail.</summary>
    Unplugged,

    /// <summary>The lead's signal wire touches the supply: the input lies at the high rail.</summary>
    Shorted,
}
