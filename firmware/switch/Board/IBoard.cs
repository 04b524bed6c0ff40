namespace NanoDustSwitch.Firmware;

/// <summary>
/// Everything that the firmware needs from a board. The ESP32 is one such board, the PC's virtual shop another.
/// </summary>
/// <remarks>
/// An exception of <see cref="ReadBurst"/>, <see cref="Now"/> or <see cref="SetRelayLine"/> may open the relay. Those of serial
/// port, lamp, sounder, button and slots are only counted, and the switch goes on.
/// </remarks>
public interface IBoard
{
    /// <summary>Gets the time since the board came up, in microseconds. It must never run backwards.</summary>
    long Now { get; }

    /// <summary>Gets the greatest count of the converter, for example 4095.</summary>
    int FullScale { get; }

    /// <summary>Gets the size of a converter count in µV, for example 806.</summary>
    int MicrovoltsACount { get; }

    /// <summary>Gets the parts that failed to open when the board came up. The event log names them.</summary>
    BoardParts FailedParts { get; }

    /// <summary>Gets the free memory of the heap in bytes, after a collection; 0 when it is not known.</summary>
    int FreeHeap { get; }

    /// <summary>Gets a value indicating whether the button is pressed.</summary>
    bool IsButtonDown { get; }

    /// <summary>Reads the tool's line again and again until a given time, or until the array is full.</summary>
    /// <param name="readings">Where the counts go, 0 to <see cref="FullScale"/>; a negative number stands for a failed
    /// read.</param>
    /// <param name="from">Index of the first one to be filled.</param>
    /// <param name="sure">Up to this many readings in the array, but for the last place, the clock need not be looked at: they
    /// fit in before <paramref name="until"/>.</param>
    /// <param name="until">Time to stop at, in microseconds.</param>
    /// <returns>Number of readings in the array, including those that were there before <paramref name="from"/>.</returns>
    int ReadBurst(int[] readings, int from, int sure, long until);

    /// <summary>Reads the vacuum's own line once.</summary>
    /// <returns>The count, 0 to <see cref="FullScale"/>; a negative number for a failed read.</returns>
    int ReadVacuumLine();

    /// <summary>Drives the relay line. The relay holds only while the line toggles.</summary>
    /// <param name="high">True for the high level.</param>
    void SetRelayLine(bool high);

    /// <summary>Drives the lamp.</summary>
    /// <param name="on">Whether it shines.</param>
    void SetLamp(bool on);

    /// <summary>Drives the sounder.</summary>
    /// <param name="on">Whether it sounds.</param>
    void SetSounder(bool on);

    /// <summary>Takes the bytes that have come over the serial line, without waiting for more.</summary>
    /// <param name="buffer">Where they go; no more are taken than fit.</param>
    /// <returns>Number of bytes, 0 when none have come.</returns>
    int ReadSerial(byte[] buffer);

    /// <summary>Sends bytes over the serial line.</summary>
    /// <param name="buffer">The bytes.</param>
    /// <param name="offset">Index of the first one to send.</param>
    /// <param name="count">Number of them, at most 120.</param>
    void WriteSerial(byte[] buffer, int offset, int count);

    /// <summary>Reads a slot of the flash.</summary>
    /// <param name="slot">Number of the slot, 0 to <see cref="Slots.Count"/> - 1.</param>
    /// <param name="buffer">Where the bytes go; <see cref="Slots.Size"/> long.</param>
    /// <returns>Number of bytes in the slot, 0 when it was never written.</returns>
    int ReadSlot(int slot, byte[] buffer);

    /// <summary>
    /// Writes a slot of the flash. A power cut may leave this slot half written, but must not touch the others.
    /// </summary>
    /// <param name="slot">Number of the slot, 0 to <see cref="Slots.Count"/> - 1.</param>
    /// <param name="buffer">The bytes.</param>
    /// <param name="count">Number of them, at most <see cref="Slots.Size"/>.</param>
    void WriteSlot(int slot, byte[] buffer, int count);

    /// <summary>Restarts the board. On a real board the call does not return.</summary>
    void Restart();
}
