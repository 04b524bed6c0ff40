namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>A stretch of time.</summary>
/// <param name="Line">What the readings are like.</param>
/// <param name="Clock">How the clock goes.</param>
/// <param name="Deed">What a person does at its beginning.</param>
/// <param name="Buckets">Its length.</param>
/// <param name="Jump">How far the clock jumps, in microseconds.</param>
/// <param name="Seed">Seed of what is left to chance.</param>
internal sealed record Stretch(LineKind Line, ClockKind Clock, Deed Deed, int Buckets, long Jump, int Seed);
