namespace NanoDustSwitch.Firmware;

/// <summary>
/// The CRC-32 that is known as ISO-HDLC (polynomial 0x04C11DB7, reflected). It is worked out bit by bit, without a table, because
/// slots are short and are seldom read or written.
/// </summary>
public static class Crc32
{
    private const uint Reflected = 0xEDB88320;

    /// <summary>Works out the check value of some bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="count">How many, from index 0 on.</param>
    /// <returns>The check value.</returns>
    public static uint Of(byte[] bytes, int count)
    {
        uint crc = 0xFFFFFFFF;
        for (int i = 0; i < count; i++)
        {
            crc ^= bytes[i];
            for (int bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? (crc >> 1) ^ Reflected : crc >> 1;
            }
        }

        return crc ^ 0xFFFFFFFF;
    }
}
