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
        Assert.AreEqual("0 4 3 2 1 0", Texts.Row(bytes[0], bytes[1], bytes[2], bytes[3], bytes[4], bytes[5]));
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
