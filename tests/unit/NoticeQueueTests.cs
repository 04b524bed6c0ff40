using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class NoticeQueueTests
{
    [TestMethod]
    public void NoticesComeOutInTheirOrder()
    {
        NoticeQueue queue = new NoticeQueue();
        for (int i = 0; i < 40; i++)
        {
            queue.Add(NoticeKind.FaultRaised, i, 1, 2, 3);
            queue.Add(NoticeKind.FaultEnded, i, 1, 2, 3);
            Notices.Check(queue, NoticeKind.FaultRaised, i, 1, 2, 3);
            Notices.Check(queue, NoticeKind.FaultEnded, i, 1, 2, 3);
        }

        Assert.IsNull(queue.Take());
        Assert.AreEqual(0, queue.Lost);
    }

    [TestMethod]
    public void AnEmptyQueueGivesNothingAndStaysEmpty()
    {
        NoticeQueue queue = new NoticeQueue();
        Assert.IsNull(queue.Take());
        Assert.AreEqual(0, queue.Count);
        queue.Add(NoticeKind.Probed, 4, 5, 6, 7);
        Assert.AreEqual(1, queue.Count);
        Notices.Check(queue, NoticeKind.Probed, 4, 5, 6, 7);
        Assert.AreEqual(0, queue.Count);
        Assert.IsNull(queue.Take());
    }

    [TestMethod]
    public void AFullQueueKeepsTheOldAndCountsTheLost()
    {
        NoticeQueue queue = new NoticeQueue();
        for (int i = 0; i < 20; i++)
        {
            queue.Add(NoticeKind.RelayLost, i, 0, 0, 0);
        }

        Assert.AreEqual("16 4 0", Texts.Row(queue.Count, queue.Lost, queue.Take().First));
    }
}
