using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class Crc32Tests
{
    // The check value of CRC-32/ISO-HDLC over "123456789" (CRC catalogue; from memory).
    [TestMethod]
    public void TheCataloguesCheckValue()
    {
        byte[] bytes = new byte[9];
        for (int i = 0; i < bytes.Length; i++)
        {
            bytes[i] = (byte)('1' + i);
        }

        Assert.AreEqual(0xCBF43926u, Crc32.Of(bytes, 9));
    }

    [TestMethod]
    public void NothingSumsToNought()
    {
        Assert.AreEqual(0u, Crc32.Of(new byte[4], 0));
    }

    [TestMethod]
    public void OnlyTheFirstBytesCount()
    {
        byte[] bytes = new byte[8];
        uint sum = Crc32.Of(bytes, 4);
        bytes[4] = 99;
        Assert.AreEqual(sum, Crc32.Of(bytes, 4));
        bytes[3] = 99;
        Assert.AreNotEqual(sum, Crc32.Of(bytes, 4));
    }
}
