namespace NanoDustSwitch.EnclosureTests;

/// <summary>The parts on the mains plate of the 120 V build with a relay, as the parameters place them.</summary>
/// <param name="p">The parameters.</param>
internal sealed class Plate(Parameters p)
{
    /// <summary>Parts on the rail, by their names in the parameters.</summary>
    private static readonly string[] s_onRail =
        ["earth_foot", "neutral_terminals", "fuse", "line_terminals", "end_stop", "relay", "last_stop"];

    public Block Rail => Named("rail");

    public IEnumerable<Block> OnRail => s_onRail.Select(Named);

    public Block Relay => Named("relay");

    public Block Supply => Named("supply");

    public Block EarthStud => Named("earth_stud");

    public Block BurdenHolder => Holder("burden_body", "burden_at") with { Name = "the burden's holder" };

    /// <summary>Gets what may be bare mains of each part: all of it, or all but its low-voltage end.</summary>
    public IEnumerable<Block> Mains =>
        [Named("neutral_terminals"), Named("fuse"), Named("line_terminals"), MainsEnd(Relay), MainsEnd(Supply)];

    /// <summary>Gets all parts but the rail below them.</summary>
    public IEnumerable<Block> All => [.. OnRail, Supply, EarthStud, BurdenHolder, .. Ties];

    public IEnumerable<Block> Ties => p.All("tie_x").Select((x, i) => new Block(
        $"tie base {i + 1}", x - (p["tie_base", 0] / 2), p["tie_y", i] - (p["tie_base", 1] / 2), p["tie_base", 0],
        p["tie_base", 1], p["tie_base", 2]));

    /// <summary>Gets all holes of the plate: x, y, diameter.</summary>
    public IEnumerable<(double X, double Y, double Diameter)> Holes
    {
        get
        {
            double screw = p["screw_hole"];
            return
            [
                .. p.All("rail_screw").Select(x => (x, Rail.MiddleY, screw)),
                (EarthStud.MiddleX, EarthStud.MiddleY, p["stud_hole"]),
                .. Ties.Select(tie => (tie.MiddleX, tie.MiddleY, screw)),
                .. HolderScrews(SensorHolder("split_body")),
                .. HolderScrews(BurdenHolder),
                .. p.BarrierScrews().Select(y => (p["barrier_at"] + p.BarrierScrew, p["barrier_side_gap"] + y, screw)),
                (p["cradle_at", 0] + (p.CradleLength / 2), p["cradle_at", 1] + (p["cradle_ring"] / 2), screw),
                (p["cradle_at", 0] + (p.CradleLength / 2), p["cradle_at", 1] + p.CradleWidth - (p["cradle_ring"] / 2), screw),
            ];
        }
    }

    /// <summary>Gives a part by its name in the parameters.</summary>
    /// <param name="name">The name.</param>
    public Block Named(string name) =>
        new($"the {name.Replace('_', ' ')}", p[name, 0], p[name, 1], p[name, 2], p[name, 3], p[name, 4]);

    /// <summary>Gives the sensor's holder.</summary>
    /// <param name="body">'ring_body' or 'split_body'.</param>
    public Block SensorHolder(string body) => Holder(body, "sensor_at") with { Name = "the sensor's holder" };

    /// <summary>Gives the low-voltage end of relay or supply.</summary>
    /// <param name="part">The part.</param>
    public Block LowVoltageEnd(Block part) =>
        part with { Y = part.EndY - p["low_voltage_end"], Across = p["low_voltage_end"] };

    /// <summary>Gives the way from the low-voltage end of relay or supply to the mains of the other parts.</summary>
    /// <param name="part">The part.</param>
    public double ToMains(Block part) =>
        Mains.Where(other => other.Name != part.Name).Min(LowVoltageEnd(part).GapTo);

    private Block MainsEnd(Block part) => part with { Across = part.Across - p["low_voltage_end"] };

    private Block Holder(string body, string at) =>
        new(body, p[at, 0], p[at, 1], p.HolderLength(body), p.HolderDepth(body), p["sensor_floor"] + p[body, 2]);

    private IEnumerable<(double X, double Y, double Diameter)> HolderScrews(Block holder)
    {
        double ear = (p["sensor_ear"] / 2) - 1.5;
        yield return (holder.X + ear, holder.MiddleY, p["screw_hole"]);
        yield return (holder.EndX - ear, holder.MiddleY, p["screw_hole"]);
    }
}
