namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>What a person does at the beginning of a stretch of time.</summary>
internal enum Deed
{
    None,
    HandOn,
    HandOff,
    Auto,
    Hold,
    Clear,
}
