using System;
using System.IO;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Esp32;

/// <summary>The slots in the board's flash: a small file for each, beside the files of the device itself.</summary>
public sealed class SlotFiles
{
    // Put together once: on the device every text that is put together is a new object.
    private readonly string[] _paths = new string[Slots.Count];

    /// <summary>Initializes a new instance of the <see cref="SlotFiles"/> class.</summary>
    public SlotFiles()
    {
        for (int i = 0; i < Slots.Count; i++)
        {
            _paths[i] = "I:\\dust" + i.ToString() + ".bin";
        }
    }

    /// <summary>Tells whether the drive is there.</summary>
    /// <returns>True when it is.</returns>
    public bool IsMounted()
    {
        try
        {
            // Whatever the answer is: unlike the question for a file, this one throws when there is no drive.
            Directory.Exists(_paths[0]);
            return true;
        }
        catch (Exception)
        {
            return false;
        }
    }

    /// <summary>Reads a slot.</summary>
    /// <param name="slot">Number of the slot.</param>
    /// <param name="buffer">Where the bytes go.</param>
    /// <returns>Number of bytes, 0 when it was never written.</returns>
    public int Read(int slot, byte[] buffer)
    {
        string path = _paths[slot];
        if (!File.Exists(path))
        {
            // Without a drive there is no file either, and that must not look like a slot that was never written.
            if (!IsMounted())
            {
                throw new InvalidOperationException("no drive");
            }

            return 0;
        }

        using (FileStream file = new FileStream(path, FileMode.Open, FileAccess.Read))
        {
            int count = 0;
            int read = 1;
            while (read > 0 && count < buffer.Length)
            {
                read = file.Read(buffer, count, buffer.Length - count);

                // At the end of a file some streams return 0 and others -1.
                count += read > 0 ? read : 0;
            }

            return count;
        }
    }

    /// <summary>Writes a slot.</summary>
    /// <param name="slot">Number of the slot.</param>
    /// <param name="buffer">Where the bytes are.</param>
    /// <param name="count">Number of them.</param>
    public void Write(int slot, byte[] buffer, int count)
    {
        // The device keeps what was written only from the moment when the file is closed.
        using (FileStream file = new FileStream(_paths[slot], FileMode.Create, FileAccess.Write))
        {
            file.Write(buffer, 0, count);
        }
    }
}
