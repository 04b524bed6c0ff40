namespace NanoDustSwitch.Sizing.Pages;

/// <summary>What stands below every judgement.</summary>
internal static class Cautions
{
    /// <summary>The sentences.</summary>
    public static readonly IReadOnlyList<string> All =
    [
        "Local codes and licensed practice come first. This is a sum, not an inspection: it knows neither the wires in your wall "
            + "nor what else hangs on the circuit, and all else on it must be off.",
        "Mains voltage can kill, start a fire and start a blade. The box isolates nothing: pull the plugs before you reach "
            + "into tool or hose. Read hardware/README.md before you buy or open anything.",
    ];
}
