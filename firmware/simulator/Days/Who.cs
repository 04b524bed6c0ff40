namespace NanoDustSwitch.Simulator.Days;

/// <summary>Whose doing a line of the timeline is.</summary>
internal enum Who
{
    /// <summary>The person in the shop.</summary>
    Person,

    /// <summary>Nobody's: it befalls the shop.</summary>
    Shop,

    /// <summary>The switch.</summary>
    Switch,

    /// <summary>The judge, who knows the true current.</summary>
    Judge,
}
