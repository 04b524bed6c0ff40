namespace NanoDustSwitch.Firmware;

/// <summary>Whole numbers in a byte array, least byte first.</summary>
public static class LittleEndian
{
    /// <summary>Writes four bytes.</summary>
    /// <param name="bytes">Where to.</param>
    /// <param name="at">Index of the first byte.</param>
    /// <param name="value">The number.</param>
    public static void Write(byte[] bytes, int at, int value)
    {
        bytes[at] = (byte)value;
        bytes[at + 1] = (byte)(value >> 8);
        bytes[at + 2] = (byte)(value >> 16);
        bytes[at + 3] = (byte)(value >> 24);
    }

    /// <summary>Reads four bytes.</summary>
    /// <param name="bytes">Where from.</param>
    /// <param name="at">Index of the first byte.</param>
    /// <returns>The number.</returns>
    public static int Read(byte[] bytes, int at)
    {
        return bytes[at] | (bytes[at + 1] << 8) | (bytes[at + 2] << 16) | (bytes[at + 3] << 24);
    }
}
