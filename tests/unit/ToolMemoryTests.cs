using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ToolMemoryTests
{
    [TestMethod]
    public void ThreeStartsMakeATool()
    {
        ToolMemory memory = new ToolMemory();
        for (int i = 0; i < ToolMemory.StartsToKnow; i++)
        {
            Assert.IsFalse(memory.Find(8000, 0));
            memory.Learn(8000, 4000, 2000);
        }

        Assert.IsTrue(memory.Find(8000, 0));
        Assert.AreEqual(2000, memory.Lowest);
        Assert.AreEqual(2000, memory.Highest);
    }

    // A fifth of the height, a ninth of the swing after it.
    [TestMethod]
    [DataRow(6668, 0, true)]
    [DataRow(6665, 0, false)]
    [DataRow(9999, 0, true)]
    [DataRow(10002, 0, false)]
    [DataRow(8000, 3601, true)]
    [DataRow(8000, 3598, false)]
    [DataRow(8000, 4499, true)]
    [DataRow(8000, 4502, false)]
    public void AToolIsMeantByWhatIsNearIt(int height, int after, bool isKnown)
    {
        ToolMemory memory = new ToolMemory();
        Learn(memory, 8000, 4000, 2000, 3);
        Assert.AreEqual(isKnown, memory.Find(height, after));
    }

    // A cut that begins at once hides how low the tool comes; it moves what is known by a sixteenth. Lower ones count at once.
    [TestMethod]
    public void TheLowestLevelCounts()
    {
        ToolMemory memory = new ToolMemory();
        Learn(memory, 8000, 4000, 3600, 1);
        Learn(memory, 8000, 4000, 2000, 2);
        Learn(memory, 8000, 4000, 3600, 1);
        memory.Find(8000, 4000);
        Assert.AreEqual(2100, memory.Lowest);
    }

    [TestMethod]
    public void TwoToolsOfOneHeightAreBothMeantUntilTheyPart()
    {
        ToolMemory memory = new ToolMemory();
        Learn(memory, 8000, 4000, 2000, 3);
        Learn(memory, 8000, 8000, 8000, 3);
        Assert.IsTrue(memory.Find(8000, 0));
        Assert.AreEqual(2000, memory.Lowest);
        Assert.AreEqual(8000, memory.Highest);
        Assert.IsTrue(memory.Find(8000, 8000));
        Assert.AreEqual(8000, memory.Lowest);
    }

    [TestMethod]
    public void TheThirteenthToolTakesThePlaceOfTheOneUsedLongestAgo()
    {
        ToolMemory memory = new ToolMemory();
        int height = 1000;
        for (int i = 0; i < ToolMemory.Entries; i++)
        {
            Learn(memory, height, height, height / 2, 3);
            height = height * 3 / 2;
        }

        Learn(memory, 1000, 1000, 500, 1);
        Learn(memory, height, height, height / 2, 3);
        Assert.IsTrue(memory.Find(height, height));
        Assert.IsTrue(memory.Find(1000, 1000));
        Assert.IsFalse(memory.Find(1500, 1500));
    }

    // What follows a first stage is not known by a level; a tool of the same height is.
    [TestMethod]
    public void AFirstStageDoesNotHideATool()
    {
        ToolMemory memory = new ToolMemory();
        Learn(memory, 1000, 1000, ToolMemory.Another, 3);
        Assert.IsTrue(memory.Find(1000, 1000));
        Assert.AreEqual(ToolMemory.Another, memory.Lowest);
        Learn(memory, 1000, 1000, 900, 1);
        Learn(memory, 1000, 1000, ToolMemory.Another, 1);
        memory.Find(1000, 1000);
        Assert.AreEqual(900, memory.Lowest);
    }

    [TestMethod]
    public void WhatIsForgottenIsGone()
    {
        ToolMemory memory = new ToolMemory();
        Learn(memory, 1000, 1000, 500, 3);
        memory.Forget();
        Assert.IsFalse(memory.Find(1000, 0));
        Learn(memory, 1000, 1000, 500, 2);
        Assert.IsFalse(memory.Find(1000, 0));
    }

    private static void Learn(ToolMemory memory, int height, int after, int level, int times)
    {
        for (int i = 0; i < times; i++)
        {
            memory.Learn(height, after, level);
        }
    }
}
