using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Trials;

/// <summary>The currents of a start, as the firmware lets them follow one another.</summary>
internal sealed class StartCourse
{
    /// <summary>Length of a course, s.</summary>
    public const double Seconds = 10;

    // A vacuum that starts while the tool still draws twice its current adds to the surge.
    private const double InsideSurge = 2;

    /// <summary>Starts the tool in the virtual shop and notes the currents.</summary>
    /// <param name="order">The order.</param>
    /// <param name="settings">Lines that are typed before.</param>
    /// <param name="load">What the tool draws, as a part of its nameplate.</param>
    public StartCourse(Order order, IEnumerable<string> settings, double load)
    {
        TrialShop shop = new(order);
        shop.Type(settings);
        shop.Run(2);
        shop.Tool.Load = load;
        List<CoursePoint> points = [];
        SupplyCircuit tool = shop.Shop.Wiring.FindCircuit(TrialShop.ToolCircuit);
        SupplyCircuit vacuum = shop.Shop.Wiring.VacuumCircuit;
        long begin = shop.Now;
        shop.Tool.Start(begin);
        VacuumAfter = double.PositiveInfinity;
        shop.Run(Seconds, () =>
        {
            double seconds = (shop.Now - begin) * 1e-6;
            points.Add(new CoursePoint(seconds, tool.Amperes, vacuum.Amperes));
            if (shop.Shop.Vacuum.IsRunning && double.IsPositiveInfinity(VacuumAfter))
            {
                VacuumAfter = seconds;
                ToolMultipleThen = shop.Tool.RmsAmperes / (shop.Tool.RatedAmperes * load);
            }
        });
        Points = points;
    }

    /// <summary>Gets the course.</summary>
    public IReadOnlyList<CoursePoint> Points { get; }

    /// <summary>Gets the time from the tool's start to the vacuum's, s; infinite where it does not start.</summary>
    public double VacuumAfter { get; private set; }

    /// <summary>Gets a value indicating whether the vacuum started inside the tool's surge.</summary>
    public bool IsInsideSurge => ToolMultipleThen > InsideSurge;

    /// <summary>Gets the tool's current at the vacuum's start over its running current.</summary>
    public double ToolMultipleThen { get; private set; }
}
