namespace NanoDustSwitch.Firmware;

/// <summary>All that the firmware asks of a board. The ESP32 and the PC's virtual shop both are one.</summary>
/// <remarks>
/// Only an exception of <see cref="ReadBurst"/>, <see cref="Now"/> or <see cref="SetRelayLine"/> touches the relay; the
/// switch counts those of the serial port, lamp, sounder, button and slots and goes on.
/// </remarks>
public interface IBoard
{
    /// <summary>Gets the time since the board came up, in microseconds; it never runs backwards.</summary>
    long Now { get; }

    /// <summary>Gets the greatest count of the converter, for example 4095.</summary>
    int FullScale { get; }

    /// <summary>Gets the size of a converter count in µV, for example 806.</summary>
    int MicrovoltsACount { get; }

    /// <summary>Gets the parts that failed to open when the board came up; the log names them.</summary>
    BoardParts FailedParts { get; }

    /// <summary>Gets a value indicating whether the button is pressed.</summary>
    bool IsButtonDown { get; }

    /// <summary>Reads the tool's line again and again until a time, or until the array is full.</summary>
    /// <param name="readings">Where the counts go; a negative number stands for a failed read.</param>
    /// <param name="from">Place of the first.</param>
    /// <param name="until">Time to stop at, in microseconds.</param>
    /// <returns>Number of readings in the array, those before <paramref name="from"/> among them.</returns>
    int ReadBurst(int[] readings, int from, long until);

    /// <summary>Reads the vacuum's own line once.</summary>
    /// <returns>The count; a negative number for a failed read.</returns>
    int ReadVacuumLine();

    /// <summary>Drives the relay line. The relay holds only while the line toggles.</summary>
    /// <param name="high">The level.</param>
    void SetRelayLine(bool high);

    /// <summary>Drives the lamp.</summary>
    /// <param name="on">Whether it shines.</param>
    void SetLamp(bool on);

    /// <summary>Drives the sounder.</summary>
    /// <param name="on">Whether it sounds.</param>
    void SetSounder(bool on);

    /// <summary>Takes the bytes that have come over the serial line, without waiting.</summary>
    /// <param name="buffer">Where they go.</param>
    /// <returns>Number of bytes, 0 when none have come.</returns>
    int ReadSerial(byte[] buffer);

    /// <summary>Sends bytes over the serial line.</summary>
    /// <param name="buffer">Where they are.</param>
    /// <param name="offset">First of them.</param>
    /// <param name="count">Number of them, at most 120.</param>
    void WriteSerial(byte[] buffer, int offset, int count);

    /// <summary>Reads a slot of the flash.</summary>
    /// <param name="slot">Number of the slot, 0 to <see cref="Slots.Count"/> - 1.</param>
    /// <param name="buffer">Where the bytes go; <see cref="Slots.Size"/> long.</param>
    /// <returns>Number of bytes in the slot, 0 when it was never written.</returns>
    int ReadSlot(int slot, byte[] buffer);

    /// <summary>Writes a slot of the flash. A power cut may leave the slot torn, and no other.</summary>
    /// <param name="slot">Number of the slot.</param>
    /// <param name="buffer">Where the bytes are.</param>
    /// <param name="count">Number of them, at most <see cref="Slots.Size"/>.</param>
    void WriteSlot(int slot, byte[] buffer, int count);

    /// <summary>Restarts the board; on a board it does not return.</summary>
    void Restart();
}
