namespace NanoDustSwitch.Detection;

/// <summary>One thing the core has to tell: what, when, and the figures that go with it.</summary>
public sealed class Notice
{
    /// <summary>What happened; it says what the other fields mean.</summary>
    public NoticeKind Kind;

    /// <summary>First subject.</summary>
    public int First;

    /// <summary>Second subject.</summary>
    public int Second;

    /// <summary>Figure.</summary>
    public int Figure;

    /// <summary>Time in microseconds.</summary>
    public long Time;
}
