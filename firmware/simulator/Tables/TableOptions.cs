namespace NanoDustSwitch.Simulator.Tables;

/// <summary>What a person says of a table of readings; the rest is found out.</summary>
/// <param name="Rate">Readings a second; null where a column of times says it.</param>
/// <param name="Column">Column of the current, from 1; null for the first that can be one.</param>
/// <param name="Unit">What its numbers are: a unit of current, or "counts"; null for what they look like.</param>
/// <param name="Scale">Factor on every number before it is used; null for none.</param>
/// <param name="Lead">Modelled idle before and after, in seconds.</param>
/// <param name="Seed">Seed of the noise.</param>
/// <param name="TimeColumn">Column of the times, from 1; null for the first that can be one.</param>
internal sealed record TableOptions(
    double? Rate, int? Column, string? Unit, double? Scale, double Lead, long Seed, int? TimeColumn = null);
