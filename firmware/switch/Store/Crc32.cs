namespace NanoDustSwitch.Firmware;

/// <summary>CRC-32 as of ISO-HDLC (reflected, polynomial 0x04C11DB7), bit by bit: a slot is short and rarely read.</summary>
public static class Crc32
{
    private const uint Reflected = 0xEDB88320;

    /// <summary>Sums bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="count">How many from the first on.</param>
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
