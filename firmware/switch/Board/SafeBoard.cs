using System;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// The parts of the board whose failure must never touch the vacuum: serial line, lamp, sounder, button and flash. Their
/// exceptions are caught here and counted.
/// </summary>
public sealed class SafeBoard
{
    private readonly IBoard _board;
    private readonly byte[] _readBack = new byte[Slots.Size];

    /// <summary>Number of exceptions of the serial line since the boot.</summary>
    public int SerialTroubles;

    /// <summary>Number of exceptions of lamp, sounder and button since the boot.</summary>
    public int PanelTroubles;

    /// <summary>Number of exceptions of the flash since the boot, and of writes that were not found there afterwards.</summary>
    public int FlashTroubles;

    /// <summary>Whether the last look at the button failed.</summary>
    public bool IsButtonUnknown;

    /// <summary>Initializes a new instance of the <see cref="SafeBoard"/> class.</summary>
    /// <param name="board">The board.</param>
    public SafeBoard(IBoard board)
    {
        _board = board;
    }

    /// <summary>Asks whether the button is pressed.</summary>
    /// <returns>True when it is; false also when it cannot be read (see <see cref="IsButtonUnknown"/>).</returns>
    public bool IsButtonDown()
    {
        try
        {
            bool isDown = _board.IsButtonDown;
            IsButtonUnknown = false;
            return isDown;
        }
        catch (Exception)
        {
            PanelTroubles++;
            IsButtonUnknown = true;
            return false;
        }
    }

    /// <summary>Asks for the free heap, which brings a collection about.</summary>
    /// <returns>Bytes; 0 when the board does not tell.</returns>
    public int FreeHeap()
    {
        try
        {
            return _board.FreeHeap;
        }
        catch (Exception)
        {
            PanelTroubles++;
            return 0;
        }
    }

    /// <summary>Drives the lamp.</summary>
    /// <param name="on">Whether it shines.</param>
    public void SetLamp(bool on)
    {
        try
        {
            _board.SetLamp(on);
        }
        catch (Exception)
        {
            PanelTroubles++;
        }
    }

    /// <summary>Drives the sounder.</summary>
    /// <param name="on">Whether it sounds.</param>
    public void SetSounder(bool on)
    {
        try
        {
            _board.SetSounder(on);
        }
        catch (Exception)
        {
            PanelTroubles++;
        }
    }

    /// <summary>Takes the bytes that have come over the serial line, without waiting for more.</summary>
    /// <param name="buffer">Where they go.</param>
    /// <returns>Number of bytes; 0 also when reading failed.</returns>
    public int ReadSerial(byte[] buffer)
    {
        try
        {
            int count = _board.ReadSerial(buffer);
            return count < 0 ? 0 : count > buffer.Length ? buffer.Length : count;
        }
        catch (Exception)
        {
            SerialTroubles++;
            return 0;
        }
    }

    /// <summary>Sends bytes over the serial line.</summary>
    /// <param name="buffer">The bytes, from index 0 on.</param>
    /// <param name="count">How many, at most 120.</param>
    public void WriteSerial(byte[] buffer, int count)
    {
        try
        {
            _board.WriteSerial(buffer, 0, count);
        }
        catch (Exception)
        {
            SerialTroubles++;
        }
    }

    /// <summary>Reads a slot of the flash.</summary>
    /// <param name="slot">Number of the slot, 0 to <see cref="Slots.Count"/> - 1.</param>
    /// <param name="buffer">Where the bytes go; <see cref="Slots.Size"/> long.</param>
    /// <returns>Number of bytes, 0 when it was never written, -1 when it cannot be read.</returns>
    public int ReadSlot(int slot, byte[] buffer)
    {
        try
        {
            int count = _board.ReadSlot(slot, buffer);
            return count < 0 || count > buffer.Length ? -1 : count;
        }
        catch (Exception)
        {
            FlashTroubles++;
            return -1;
        }
    }

    /// <summary>Writes a slot of the flash, and reads it back: written is what can be read.</summary>
    /// <param name="slot">Number of the slot, 0 to <see cref="Slots.Count"/> - 1.</param>
    /// <param name="buffer">The bytes.</param>
    /// <param name="count">How many, at most <see cref="Slots.Size"/>.</param>
    /// <returns>False when the write failed.</returns>
    public bool WriteSlot(int slot, byte[] buffer, int count)
    {
        try
        {
            _board.WriteSlot(slot, buffer, count);
        }
        catch (Exception)
        {
            FlashTroubles++;
            return false;
        }

        int read = ReadSlot(slot, _readBack);
        bool isWritten = read == count;
        for (int i = 0; i < count && isWritten; i++)
        {
            isWritten = buffer[i] == _readBack[i];
        }

        if (!isWritten && read >= 0)
        {
            FlashTroubles++;
        }

        return isWritten;
    }
}
