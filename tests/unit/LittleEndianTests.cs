using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class LittleEndianTests
{
    [TestMethod]
    public void TheLeastByteComesFirst()
    {
        byte[] bytes = new byte[6];
        LittleEndian.Write(bytes, 1, 0x01020304);
        Assert.AreEqual(0, (int)bytes[0]);
        Assert.AreEqual(4, (int)bytes[1]);
        Assert.AreEqual(3, (int)bytes[2]);
        Assert.AreEqual(2, (int)bytes[3]);
        Assert.AreEqual(1, (int)bytes[4]);
        Assert.AreEqual(0, (int)bytes[5]);
    }

    [TestMethod]
    [DataRow(0)]
    [DataRow(1)]
    [DataRow(-1)]
    [DataRow(2147483647)]
    [DataRow(-2147483648)]
    [DataRow(-559038737)]
    public void ANumberGoesThereAndBack(int value)
    {
        byte[] bytes = new byte[4];
        LittleEndian.Write(bytes, 0, value);
        Assert.AreEqual(value, LittleEndian.Read(bytes, 0));
    }
}
