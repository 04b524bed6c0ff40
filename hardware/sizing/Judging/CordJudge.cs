using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>Wire and voltage drop of every cord.</summary>
internal static class CordJudge
{
    private const double BranchPercent = 3;
    private const double AllPercent = 5;

    // With less than that a motor may not come up: common practice, no source.
    private const double StartPercent = 15;

    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order) => new(
        "Cords",
        [
            .. order.Cords.SelectMany(cord => Findings(order, cord)),
            .. CordPath.Of(order).Where(path => path.Cords.Count > 0).Select(path => Way(order, path)),
        ]);

    private static ElectricCurrent Current(Order order, CordUse use) =>
        use == CordUse.Box ? order.BoxCurrent : IsOfTool(use) ? order.ToolCurrent : order.VacuumCurrent;

    private static bool IsOfTool(CordUse use) => use is CordUse.Tool or CordUse.Head;

    private static IEnumerable<Finding> Findings(Order order, Cord cord)
    {
        ElectricCurrent current = Current(order, cord.Use);
        Supply supply = (IsOfTool(cord.Use) ? order.ToolCircuit : order.VacuumCircuit).Supply;
        double through = (IsOfTool(cord.Use) ? Protector.OfTool(order) : Protector.OfBox(order)).LetsThrough;
        bool isOnlyForThis = cord.Use is CordUse.Tool or CordUse.Vacuum && through > cord.Size.Ampacity.Amperes;
        string carries =
            $"{current.Amperes:0.0#} A; the cord carries {cord.Size.Ampacity.Amperes:0} A, laid out and not on its reel";
        yield return current > cord.Size.Ampacity
            ? new Finding(Outcome.Fails, cord.Name, carries, cord.Size.AmpacitySource)
            : !isOnlyForThis ? new Finding(Outcome.Fits, cord.Name, carries, cord.Size.AmpacitySource)
            {
                Condition = ConditionOf(cord),
            }
            : new Finding(Outcome.Mind, cord.Name, $"{carries}; {through:0} A can flow into it", cord.Size.AmpacitySource)
            {
                Condition = $"the {cord.Use.ToString().ToLowerInvariant()}'s cord of {cord.Size.Name} feeds this one and nothing "
                    + "larger",
            };
        ElectricPotential drop = CordPath.DropOf(cord, current);
        yield return new Finding(
            Outcome.Fits,
            "its drop",
            $"2 x {cord.Length.Meters:0.0#} m x {cord.Size.OhmsPerMeter * 1000:0.00} mohm/m at 75 °C x {current.Amperes:0.0#} A "
            + $"= {drop.Volts:0.00} V, {drop / supply.Volts * 100:0.00} %",
            cord.Size.ResistanceSource);
    }

    private static string? ConditionOf(Cord cord) =>
        cord.IsAssumed ? $"the sensing head's cord is of {cord.Size.Name} or thicker, 1 m at most, and so is that of its socket"
        : cord.Use is CordUse.Tool or CordUse.Vacuum ? null
        : $"where an outlet of the {cord.Use.ToString().ToLowerInvariant()} is a socket on a cord, that cord is of "
            + $"{cord.Size.Name} or thicker";

    private static Finding Way(Order order, CordPath path)
    {
        double percent = path.Part.Percent;
        Outcome outcome = percent > AllPercent ? Outcome.Fails : percent > BranchPercent ? Outcome.Mind : Outcome.Fits;
        string limit = outcome switch
        {
            Outcome.Fits => "3 % at most",
            Outcome.Mind => "over 3 %, which leaves little of 5 % for the wire in the wall",
            _ => "over the 5 % for wall and cord together",
        };
        string start = "";
        if (path.Name == "tool")
        {
            ElectricPotential drop = StartDrop(order, path);
            double startPercent = drop / order.ToolCircuit.Supply.Volts * 100;
            bool isWeak = startPercent > StartPercent;
            outcome = isWeak && outcome == Outcome.Fits ? Outcome.Mind : outcome;
            start = $"; {drop.Volts:0.0} V, {startPercent:0} %, while the tool starts"
                + (isWeak ? ": it may come up slowly or not at all" : "");
        }

        return new Finding(
            outcome, $"wall to {path.Name}", $"{path.Drop.Volts:0.00} V = {percent:0.00} %; {limit}{start}", Source.Drop);
    }

    // The tool starts before the vacuum does.
    private static ElectricPotential StartDrop(Order order, CordPath path)
    {
        ElectricCurrent start = order.ToolCurrent * ToolDefaults.Of(order.Tool.Kind).InrushMultiple;
        return path.Cords.Aggregate(ElectricPotential.Zero, (sum, each) => sum + CordPath.DropOf(each.Cord, start));
    }
}
