namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>A call of the scripted minute and what is to go wrong with it.</summary>
/// <param name="Step">Step of the minute.</param>
/// <param name="Call">Number of the call in that step.</param>
/// <param name="Member">What is called.</param>
/// <param name="Trouble">What goes wrong.</param>
/// <param name="Kind">Which nonsense, any number.</param>
internal sealed record InjectionCase(int Step, int Call, BoardCall Member, Trouble Trouble, int Kind);
