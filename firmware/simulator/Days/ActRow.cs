namespace NanoDustSwitch.Simulator.Days;

/// <summary>What is known of something that can happen in the shop.</summary>
/// <param name="Who">Whose doing it is.</param>
/// <param name="Do">Does it, at a shop time in microseconds.</param>
/// <param name="Told">What the timeline says.</param>
/// <param name="Mark">What the day's chart says, in few words.</param>
/// <param name="Members">What a step of a day file has beside 'at' and 'do'.</param>
internal sealed record ActRow(
    Who Who, Action<Person, DayStep, long> Do, Func<DayStep, string> Told, Func<DayStep, string> Mark, params string[] Members)
{
    /// <summary>Gets what happens when its time is over; null where it does not end by itself.</summary>
    public DayAct? End { get; init; }
}
