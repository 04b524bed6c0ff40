namespace NanoDustSwitch.Inspector.Replay;

/// <summary>What a tenth of a second of a replay showed; currents as the swing of a sine, in mA.</summary>
/// <param name="Mean">Mean swing.</param>
/// <param name="Greatest">Greatest swing.</param>
/// <param name="Start">Least start level.</param>
/// <param name="Stop">Greatest stop level.</param>
/// <param name="Runs">Buckets in which the tool was taken as running.</param>
/// <param name="Count">Buckets with a swing that can be believed.</param>
/// <param name="Amperes">True rms current at its end, A.</param>
internal sealed record TenthOfSecond(double Mean, int Greatest, int Start, int Stop, int Runs, int Count, double Amperes);
