using System;

namespace NanoDustSwitch.Firmware;

/// <summary>The parts of the board that must never matter to the vacuum: what they throw is counted and forgotten.</summary>
public sealed class SafeBoard
{
    private readonly IBoard _board;

    /// <summary>Exceptions of the serial line.</summary>
    public int SerialTroubles;

    /// <summary>Exceptions of lamp, sounder and button.</summary>
    public int PanelTroubles;

    /// <summary>Exceptions of the flash.</summary>
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
    /// <returns>True when it is; false when it cannot be told.</returns>
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

    /// <summary>Takes the bytes that have come.</summary>
    /// <param name="buffer">Where they go.</param>
    /// <returns>Number of bytes; 0 also when the line is broken.</returns>
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

    /// <summary>Sends bytes.</summary>
    /// <param name="buffer">Where they are.</param>
    /// <param name="count">How many.</param>
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

    /// <summary>Reads a slot.</summary>
    /// <param name="slot">Number of the slot.</param>
    /// <param name="buffer">Where the bytes go.</param>
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

    /// <summary>Writes a slot.</summary>
    /// <param name="slot">Number of the slot.</param>
    /// <param name="buffer">Where the bytes are.</param>
    /// <param name="count">How many.</param>
    /// <returns>False when it failed.</returns>
    public bool WriteSlot(int slot, byte[] buffer, int count)
    {
        try
        {
            _board.WriteSlot(slot, buffer, count);
            return true;
        }
        catch (Exception)
        {
            FlashTroubles++;
            return false;
        }
    }
}
