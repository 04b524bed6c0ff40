namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>What must hold between a build and the table of barriers.</summary>
internal static class BarrierRules
{
    /// <summary>Insulations between any mains and a hand.</summary>
    private const int Two = 2;

    public static IEnumerable<string> All(Build build, IReadOnlyList<Barrier> table) =>
        [.. EveryCrossingHasItsRow(build, table), .. HandsAreBehindTwoInsulations(build, table)];

    /// <summary>
    /// A part with pins of two islands, one that a mains wire passes through, and one that a hand can reach need a row.
    /// </summary>
    public static IEnumerable<string> EveryCrossingHasItsRow(Build build, IReadOnlyList<Barrier> table)
    {
        foreach (Part part in build.Parts)
        {
            // Plugs, outlets and metal join earth to nothing: their two islands are what they are for.
            string[] islands = [.. Islands(build, part)];
            bool crosses = islands.Length > 1 && part.Kind is not ("plug" or "outlet" or "metal");
            Barrier? row = table.SingleOrDefault(row => row.Part == part.Name);
            if ((crosses || part.Touch) && row is null)
            {
                yield return $"{part.Name} has no row in the table of barriers";
            }
            else if (crosses && row is not null && part.Kind != "bleed" && row.Strength == 0)
            {
                yield return $"{part.Name} is no barrier: {row.Insulation}";
            }
            else if (part.Touch && row is not null && row.Strength < Two)
            {
                yield return $"{part.Name} can be touched and has {row.Insulation} insulation beside mains";
            }
        }
    }

    /// <summary>The weakest way from any mains to what a hand can reach leads through two insulations.</summary>
    public static IEnumerable<string> HandsAreBehindTwoInsulations(Build build, IReadOnlyList<Barrier> table)
    {
        Dictionary<string, int> strengths = [];
        Queue<string> open = new();
        foreach (string mains in build.Of("plug").Select(plug => $"mains {plug.Circuit}"))
        {
            strengths[mains] = 0;
            open.Enqueue(mains);
        }

        while (open.TryDequeue(out string? at))
        {
            foreach (Part part in build.Parts.Where(
                part => part.Kind is not ("plug" or "outlet" or "metal" or "bleed") && Islands(build, part).Contains(at)))
            {
                int strength = strengths[at] + (table.SingleOrDefault(row => row.Part == part.Name)?.Strength ?? 0);
                foreach (string island in Islands(build, part).Where(
                    island => island != at && (!strengths.TryGetValue(island, out int known) || strength < known)))
                {
                    strengths[island] = strength;
                    open.Enqueue(island);
                }
            }
        }

        return
            from part in build.Parts
            where part.Touch
            from island in Islands(build, part)
            where !strengths.TryGetValue(island, out int strength) || strength < Two
            select $"{part.Name} can be touched and is behind less than two insulations";
    }

    private static IEnumerable<string> Islands(Build build, Part part)
    {
        Connections closed = new(build, closed: true);
        return part.Pins.Select(IslandOf).Distinct();

        string IslandOf(Pin pin)
        {
            if (pin.Island != "mains")
            {
                return pin.Island;
            }

            // A wire that passes through has no pin there; it is the one named with the part.
            string at = pin.Name is "in" or "out" && part.Kind == "transformer"
                ? build.Wires.First(wire => wire.Through.Contains(part.Name)).From
                : part.PinName(pin);
            Part? plug = build.Of("plug").FirstOrDefault(plug => plug.Pins.Any(one => closed.Joined(plug.PinName(one), at)));
            return $"mains {plug?.Circuit ?? "of nowhere"}";
        }
    }
}
