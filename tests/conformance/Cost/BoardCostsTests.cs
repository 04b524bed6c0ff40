using NanoDustSwitch.Simulator.Board;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>The virtual board's costs are those of the meter, rounded up by a twentieth at most.</summary>
[TestClass]
[DoNotParallelize]
public class BoardCostsTests
{
    private const double RoundedUp = 1.05;

    private static readonly BoardCosts s_costs = new();
    private static readonly DeviceCode s_code = new(isMetered: true);

    [TestMethod]
    public void TheBoardsWorkCostsWhatTheMeterSays()
    {
        var pace = new PaceReport(s_code);
        Compare(pace.Reading, s_costs.ReadingInstructions);
        Compare(pace.Look, s_costs.LookInstructions);
        Compare(pace.Burst, s_costs.BurstInstructions);
        Compare(pace.Closing, s_costs.ClosingInstructions);
        Compare(pace.Serving, s_costs.IdleInstructions);
    }

    private static void Compare(double metered, int written)
    {
        Assert.IsLessThanOrEqualTo(written, Math.Floor(metered));
        Assert.IsGreaterThanOrEqualTo(written, Math.Ceiling(metered * RoundedUp) + 5);
    }
}
