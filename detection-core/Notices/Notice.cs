namespace NanoDustSwitch.Detection;

/// <summary>
/// A thing that the core has to tell: what happened, when, and numbers whose meaning depends on <see cref="NoticeKind"/>.
/// </summary>
public sealed class Notice
{
    /// <summary>What happened. It says what the other fields mean.</summary>
    public NoticeKind Kind;

    /// <summary>First number: what it is about.</summary>
    public int First;

    /// <summary>Second number: what it is about.</summary>
    public int Second;

    /// <summary>Third number: what was measured.</summary>
    public int Figure;

    /// <summary>Time in microseconds.</summary>
    public long Time;
}
