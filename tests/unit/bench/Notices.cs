using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>What a queue of notices tells.</summary>
internal static class Notices
{
    /// <summary>The next notice says this and nothing else.</summary>
    public static void Check(NoticeQueue queue, NoticeKind kind, int first, int second, int figure, long time)
    {
        Notice notice = queue.Take();
        Assert.AreEqual(
            Texts.Row((int)kind, first, second, figure),
            Texts.Row((int)notice.Kind, notice.First, notice.Second, notice.Figure));
        Assert.AreEqual(time, notice.Time);
    }
}
