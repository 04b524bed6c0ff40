using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Texts;

/// <summary>What may be typed beside <c>--ready-made</c>.</summary>
internal static class ReadyMadeText
{
    /// <summary>Turns that a line splitter's windows count for; mostly there is one of each (makers' leaflets).</summary>
    public static readonly int[] Turns = [1, 10];

    /// <summary>Refuses what is only for a build with mains wiring.</summary>
    /// <param name="cords">The cords.</param>
    /// <param name="sensor">The sensor.</param>
    /// <param name="turns">The turns.</param>
    /// <param name="isBoxGiven">Whether a box was typed.</param>
    public static void Check(IReadOnlyList<Cord> cords, SensorModel sensor, int turns, bool isBoxGiven)
    {
        if (cords.FirstOrDefault(cord => cord.Use is CordUse.Box or CordUse.Head) is { } built)
        {
            throw new UserException(
                $"--cord {built.Text} is a cord that you would wire; with --ready-made only tool: and vacuum: are allowed.");
        }

        if (sensor.Kind != SensorKind.Transformer)
        {
            throw new UserException(
                $"--sensor {sensor.Name} carries mains itself; with --ready-made only transformer-100A is allowed, clipped on.");
        }

        if (!Turns.Contains(turns))
        {
            throw new UserException(
                $"--turns {turns} is not allowed with --ready-made: 1, or 10 in the window of a line splitter marked x10.");
        }

        if (isBoxGiven)
        {
            throw new UserException("--box is for a box with mains in it; with --ready-made there is none.");
        }
    }
}
