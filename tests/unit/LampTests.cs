using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class LampTests
{
    // Within three seconds: tenths of a second that it shines, and how often it comes on.
    [TestMethod]
    [DataRow(0, 1, 1)]
    [DataRow(1, 30, 0)]
    [DataRow(2, 15, 3)]
    [DataRow(3, 9, 9)]
    [DataRow(4, 29, 1)]
    [DataRow(5, 2, 2)]
    [DataRow(6, 15, 15)]
    [DataRow(7, 21, 6)]
    public void APatternIsShown(int pattern, int tenths, int flashes)
    {
        FakeBoard board = new FakeBoard();
        Lamp lamp = new Lamp(new SafeBoard(board));
        int on = 0;
        int rises = 0;
        lamp.Show((LampPattern)pattern, 2950000);
        bool before = board.Lamp;
        for (int i = 0; i < 30; i++)
        {
            lamp.Show((LampPattern)pattern, 3000000 + (i * 100000L) + 50000);
            on += board.Lamp ? 1 : 0;
            rises += board.Lamp && !before ? 1 : 0;
            before = board.Lamp;
        }

        Assert.AreEqual(tenths, on);
        Assert.AreEqual(flashes, rises);
    }

    [TestMethod]
    public void TheBoardIsAskedOnlyWhenTheLampChanges()
    {
        FakeBoard board = new FakeBoard();
        board.PanelThrows = true;
        SafeBoard safe = new SafeBoard(board);
        Lamp lamp = new Lamp(safe);
        for (int i = 0; i < 1200; i++)
        {
            lamp.Show(LampPattern.Awake, i * 2500L);
        }

        // On, off.
        Assert.AreEqual(2, safe.PanelTroubles);
    }
}
