namespace NanoDustSwitch.EnclosureTests;

/// <summary>Whether the parts stand on the mains plate without each other's way, and the wires have room to bend.</summary>
/// <remarks>
/// Bends: inner radius of 4 diameters for wires up to 8 mm (HD 60364-5-52, table in a national guide; read; DIN VDE 0298-3 has 3
/// for fixed wires; read), none right behind a clamp. The other limits are common practice, no source.
/// </remarks>
/// <param name="p">The parameters.</param>
internal sealed class PlateFits(Parameters p)
{
    private const double TieWithin = 30;
    private const double Touch = 0.01;
    private readonly Plate _plate = new(p);

    /// <summary>Gets what a core needs in front of a clamp: straight, then round a bend to its outer side.</summary>
    private double Lane => p["core_straight"] + ((p["core_bend"] + 1) * p["core"]);

    private double LowVoltageLane => (p["core_bend"] + 1) * p["sleeved"];

    /// <summary>What does not fit, in words.</summary>
    public IEnumerable<string> Findings() => [.. Placed(), .. Lanes(), .. Cords(), .. ToolWire(), .. Tied(), .. Drilled()];

    private IEnumerable<string> Placed()
    {
        double corner = p["box_corner"] + p["plate_gap"];
        Block edge = new("the plate", p["plate_gap"], p["plate_gap"], p["box_inside", 0], p["box_inside", 1], 0);
        edge = edge with { Along = edge.Along - (2 * edge.X), Across = edge.Across - (2 * edge.Y) };
        Block bare = new("", p["bare_from", 0], p["bare_from", 1], 0, 0, p["bare_height"]);
        bare = bare with { Along = p["bare_to", 0] - bare.X, Across = p["bare_to", 1] - bare.Y };
        Block[] all =
        [
            .. _plate.All, _plate.SensorHolder("split_body"),
            new("the barrier", p["barrier_at"], 0, p.BarrierDepth, p["box_inside", 1], p["barrier_height"]),
            new("a corner column", 0, 0, corner, corner, 0),
            new("a corner column", 0, p["box_inside", 1] - corner, corner, corner, 0),
        ];
        for (int i = 0; i < all.Length; i++)
        {
            for (int j = i + 1; j < all.Length; j++)
            {
                if (all[i].GapTo(all[j]) < -Touch)
                {
                    yield return $"{all[i].Name} stands in {all[j].Name}";
                }
            }
        }

        foreach (Block part in _plate.All.Where(part => !IsWithin(part, edge)))
        {
            yield return $"{part.Name} stands beside the plate";
        }

        foreach (Block part in _plate.Mains.Where(part => !IsWithin(part, bare) || part.Height > bare.Height))
        {
            yield return $"{part.Name} reaches out of where bare mains may be";
        }

        foreach (Block part in _plate.OnRail.Where(part => part.X < _plate.Rail.X || part.EndX > _plate.Rail.EndX
            || part.Y > _plate.Rail.Y || part.EndY < _plate.Rail.EndY))
        {
            yield return $"{part.Name} does not sit on the rail";
        }
    }

    private IEnumerable<string> Lanes()
    {
        foreach (Block part in _plate.Mains)
        {
            if (Free(part, isToEnd: false) is double free && free < Lane)
            {
                yield return $"a core has {free:0.0} mm before {part.Name}, {Lane:0.0} mm are needed";
            }
        }

        foreach (string name in new[] { "neutral_terminals", "line_terminals", "fuse" })
        {
            Block part = _plate.Named(name);
            if (Free(part, isToEnd: true) is double free && free < Lane)
            {
                yield return $"a core has {free:0.0} mm behind {part.Name}, {Lane:0.0} mm are needed";
            }
        }

        foreach (Block part in new[] { _plate.Relay, _plate.Supply })
        {
            if (Free(part, isToEnd: true) is double free && free < LowVoltageLane)
            {
                yield return $"a low-voltage wire has {free:0.0} mm behind {part.Name}, {LowVoltageLane:0.0} mm are needed";
            }
        }
    }

    // A cord comes in over what stands lower; what stands higher leaves its cores room to bend.
    private IEnumerable<string> Cords()
    {
        foreach (double cord in p.All("cord").Where(cord => cord < p["gland_clamp", 0] || cord > p["gland_clamp", 1]))
        {
            yield return $"the glands do not hold a cord of {cord} mm";
        }

        double thickest = p.All("cord").Max() / 2;
        foreach (Block part in _plate.All.Where(part => p["plate_top"] + part.Height > p["gland_height"] - thickest))
        {
            bool isInWay = p.All("gland_y").Any(y => y + thickest > part.Y && y - thickest < part.EndY);
            double free = part.X - p["gland_depth"];
            if (isInWay && free < Lane)
            {
                yield return $"a cord's cores have {free:0.0} mm before {part.Name}, {Lane:0.0} mm are needed";
            }
        }
    }

    // The tool's line leaves its terminals towards the sensor, goes straight through it, and turns to the tool's gland, which is
    // higher and to the side: two bends into the gland, and the one behind the sensor.
    private IEnumerable<string> ToolWire()
    {
        double bend = (p["core_bend"] + 0.5) * p["core"];
        Block line = _plate.Named("line_terminals");
        foreach (string kind in new[] { "ring", "split" })
        {
            Block holder = _plate.SensorHolder($"{kind}_body");
            double bore = holder.X + p["sensor_ear"] + p["sensor_wall"] + p["fit"] + p[$"{kind}_bore_at", 0];
            double behind = p["box_inside", 1] - holder.EndY;
            double run = bore - p["gland_depth"] - p["core_straight"];
            if (bore < line.X || bore > line.EndX)
            {
                yield return $"the bore of {kind}_body is not before the line's terminals";
            }

            if (behind < bend + (p["core"] / 2))
            {
                yield return $"the wire has {behind:0.0} mm to bend behind the holder for {kind}_body";
            }

            if (run < 3 * bend)
            {
                yield return $"from the bore of {kind}_body to the glands are {run:0.0} mm, {3 * bend:0.0} mm are needed";
            }
        }
    }

    private IEnumerable<string> Tied()
    {
        Block sensor = _plate.SensorHolder("split_body");
        List<(string Name, double X, double Y)> ends =
        [
            .. _plate.Mains.Select(part => (part.Name, part.MiddleX, part.Y)),
            .. new[] { "neutral_terminals", "line_terminals" }.Select(_plate.Named)
                .Select(part => (part.Name, part.MiddleX, part.EndY)),
            (_plate.EarthStud.Name, _plate.EarthStud.MiddleX, _plate.EarthStud.MiddleY),
            (sensor.Name, sensor.MiddleX, sensor.Y),
            (sensor.Name, sensor.MiddleX, sensor.EndY),
            .. p.All("gland_y").Select((y, i) => ($"gland {i + 1}", p["gland_depth"], y)),
        ];
        return ends
            .Where(end => _plate.Ties.All(tie => double.Hypot(tie.MiddleX - end.X, tie.MiddleY - end.Y) > TieWithin))
            .Select(end => $"no tie within {TieWithin} mm of {end.Name}");
    }

    private IEnumerable<string> Drilled()
    {
        (double X, double Y, double Diameter)[] holes = [.. _plate.Holes];
        foreach ((double x, double y, double diameter) in holes)
        {
            double edge = Math.Min(
                Math.Min(x, p["box_inside", 0] - x), Math.Min(y, p["box_inside", 1] - y)) - p["plate_gap"] - (diameter / 2);
            if (edge < diameter)
            {
                yield return $"the hole at {x:0.0}, {y:0.0} is {edge:0.0} mm from the plate's edge";
            }
        }

        foreach (double x in p.All("rail_screw").Where(x => x < _plate.Rail.X + 5 || x > _plate.Rail.EndX - 5))
        {
            yield return $"the rail's screw at {x} is not in the rail";
        }
    }

    // From an end of a part to the next part, wall or column in its way.
    private double Free(Block part, bool isToEnd) => _plate.All.Append(_plate.SensorHolder("split_body"))
        .Where(other => other.X < part.EndX - Touch && other.EndX > part.X + Touch && other.Height > p["tie_base", 2])
        .Select(other => isToEnd ? other.Y - part.EndY : part.Y - other.EndY)
        .Where(gap => gap >= 0)
        .Append(isToEnd ? p["box_inside", 1] - part.EndY : part.Y)
        .Min();

    private static bool IsWithin(Block part, Block area) => part.X >= area.X - Touch && part.EndX <= area.EndX + Touch
        && part.Y >= area.Y - Touch && part.EndY <= area.EndY + Touch;
}
