using System;

namespace NanoDustSwitch.Detection;

/// <summary>
/// A row of numbers that holds the core's whole state. Each part hands every number of its own to the tape and takes back what
/// it returns: while the tape is written that is the same number, while it is read the one that was written.
/// </summary>
/// <remarks>From a tape, the settings and the buckets after it, a PC decides as the board did, bucket for bucket.</remarks>
public sealed class StateTape
{
    /// <summary>Numbers that fit; the core needs a few less.</summary>
    public const int Size = 420;

    private readonly long[] _numbers = new long[Size];
    private bool _isReading;
    private int _at;

    /// <summary>Number of numbers on the tape.</summary>
    public int Count;

    /// <summary>Gets or sets a number.</summary>
    /// <param name="index">Its place, from 0.</param>
    /// <returns>The number.</returns>
    public long this[int index]
    {
        get { return _numbers[index]; }
        set { _numbers[index] = value; }
    }

    /// <summary>Begins to write from the beginning.</summary>
    public void Write()
    {
        _isReading = false;
        _at = 0;
        Count = 0;
    }

    /// <summary>Begins to read from the beginning.</summary>
    public void Read()
    {
        _isReading = true;
        _at = 0;
    }

    /// <summary>Exchanges a number.</summary>
    /// <param name="value">The part's number.</param>
    /// <returns>The number it has to have from now on.</returns>
    public long Number(long value)
    {
        if (_isReading)
        {
            return _numbers[_at++];
        }

        _numbers[_at++] = value;
        Count = _at;
        return value;
    }

    /// <summary>Exchanges a number.</summary>
    /// <param name="value">The part's number.</param>
    /// <returns>The number it has to have from now on.</returns>
    public int Number(int value)
    {
        return (int)Number((long)value);
    }

    /// <summary>Exchanges a yes or no.</summary>
    /// <param name="value">The part's own.</param>
    /// <returns>What it has to be from now on.</returns>
    public bool Flag(bool value)
    {
        return Number(value ? 1 : 0) != 0;
    }

    /// <summary>Exchanges a row of numbers.</summary>
    /// <param name="values">The part's row, overwritten while the tape is read.</param>
    public void Numbers(int[] values)
    {
        // The board writes the whole state in one step, so the rows spare it a call for each number.
        long[] numbers = _numbers;
        int at = _at;
        for (int i = 0; i < values.Length; i++)
        {
            if (_isReading)
            {
                values[i] = (int)numbers[at++];
            }
            else
            {
                numbers[at++] = values[i];
            }
        }

        End(at);
    }

    /// <summary>Exchanges a row of numbers.</summary>
    /// <param name="values">The part's row, overwritten while the tape is read.</param>
    public void Numbers(long[] values)
    {
        if (_isReading)
        {
            Array.Copy(_numbers, _at, values, 0, values.Length);
        }
        else
        {
            Array.Copy(values, 0, _numbers, _at, values.Length);
        }

        End(_at + values.Length);
    }

    private void End(int at)
    {
        _at = at;
        if (!_isReading)
        {
            Count = at;
        }
    }
}
