namespace NanoDustSwitch.Simulator.Shop;

/// <summary>What turns the current of a wire into a voltage.</summary>
public enum SensorKind
{
    /// <summary>Current transformer 2000 : 1 with a burden of 47 ohm. It passes no direct current.</summary>
    Transformer,

    /// <summary>Hall module of the 20 A class at 5 V behind a halving divider.</summary>
    Hall,
}
