using NanoDustSwitch.Sizing.Sources;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>A plug and the receptacle that belongs to it.</summary>
/// <param name="Name">What is typed.</param>
/// <param name="What">What it is.</param>
/// <param name="Rating">Its rated current.</param>
/// <param name="LargestBreaker">Largest breaker of a circuit that such a receptacle belongs on.</param>
/// <param name="Place">Where it is used.</param>
/// <param name="IsTwoHot">Whether it is for two hot wires.</param>
/// <param name="IsFused">Whether it carries a fuse.</param>
/// <param name="IsReversible">Whether line and neutral may change places.</param>
/// <param name="Source">Where the rating comes from.</param>
internal sealed record Plug(
    string Name,
    string What,
    ElectricCurrent Rating,
    ElectricCurrent LargestBreaker,
    Place Place,
    bool IsTwoHot,
    bool IsFused,
    bool IsReversible,
    Source Source);
