namespace NanoDustSwitch.Simulator.Shop;

/// <summary>State of the sensor and its lead.</summary>
public enum SensorState
{
    /// <summary>In order.</summary>
    Healthy,

    /// <summary>Not plugged in: the bias is missing as well, so the input lies at the low rail.</summary>
    Unplugged,
}
