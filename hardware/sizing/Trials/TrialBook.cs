using System.Collections.Concurrent;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Trials;

/// <summary>The trials that were made; orders that differ only in what the virtual shop does not know share them.</summary>
internal sealed class TrialBook
{
    private const string Surge = "start-delay surge";
    private const string FixedDelay = "start-delay 1s";

    private readonly ConcurrentDictionary<object, Teaching> _teachings = [];
    private readonly ConcurrentDictionary<object, StartCourse> _courses = [];

    /// <summary>Teaches the tool.</summary>
    /// <param name="order">The order.</param>
    /// <returns>What came of it.</returns>
    public Teaching Teach(Order order) => _teachings.GetOrAdd(ToolKey(order), _ => new Teaching(order));

    /// <summary>Tells whether the firmware sees the end of the tool's surge, at full load and idling.</summary>
    /// <param name="order">The order.</param>
    /// <returns>False where it must wait for a fixed time.</returns>
    public bool IsSurgeSeen(Order order) =>
        !Start(order, 1, Surge).IsInsideSurge && !Start(order, ToolKinds.IdlePart, Surge).IsInsideSurge;

    /// <summary>Gives the lines to type at the console.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The lines, without the last, which saves.</returns>
    public IReadOnlyList<string> Lines(Order order) => [.. Teach(order).Lines, Delay(order)];

    /// <summary>Starts tool and vacuum with the taught settings.</summary>
    /// <param name="order">The order.</param>
    /// <param name="load">What the tool draws, as a part of its nameplate.</param>
    /// <param name="withDelay">Whether the vacuum waits for the end of the tool's surge.</param>
    /// <returns>The currents.</returns>
    public StartCourse Start(Order order, double load, bool withDelay) =>
        Start(order, load, withDelay ? Delay(order) : "start-delay 0");

    private string Delay(Order order) => IsSurgeSeen(order) ? Surge : FixedDelay;

    private StartCourse Start(Order order, double load, string delay) => _courses.GetOrAdd(
        (ToolKey(order), order.VacuumCurrent.Amperes, order.IsOneCircuit, load, delay),
        _ => new StartCourse(order, [.. Teach(order).Lines, delay], load));

    private static (double Amperes, ToolKind Kind, Supply Supply, SensorModel Sensor, int Turns) ToolKey(Order order) =>
        (order.ToolCurrent.Amperes, order.Tool.Kind, order.ToolCircuit.Supply, order.Sensor, order.Turns);
}
