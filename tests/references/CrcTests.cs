using System.IO.Hashing;
using System.Text;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>The check value of the stored slots against the published one and against a library.</summary>
[TestClass]
public sealed class CrcTests
{
    [TestMethod]
    public void The_catalogues_check_value_comes_out()
    {
        // CRC-32 (ISO-HDLC) of the ASCII digits 1 to 9: published catalogue value, from memory.
        byte[] digits = Encoding.ASCII.GetBytes("123456789");

        Assert.AreEqual(0xCBF43926u, Firmware.Crc32.Of(digits, digits.Length));
    }

    [TestMethod]
    public void Random_bytes_give_what_the_library_gives()
    {
        Random random = new(1);
        for (int length = 0; length < 1100; length += 7)
        {
            byte[] bytes = new byte[length];
            random.NextBytes(bytes);
            Assert.AreEqual(Crc32.HashToUInt32(bytes), Firmware.Crc32.Of(bytes, length), $"length {length}");
        }
    }
}
