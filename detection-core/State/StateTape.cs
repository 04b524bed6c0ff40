using System;

namespace NanoDustSwitch.Detection;

/// <summary>
/// A row of numbers that holds the core's whole state. Each part hands every number of its state to the tape and takes over the
/// number that the tape returns. While the tape is written this is the same number; while it is read it is the one that was
/// written. So one method of a part serves both directions, and the two cannot differ.
/// </summary>
/// <remarks>
/// From a tape, the settings and the buckets that came after it, a PC decides just as the board did, bucket for bucket.
/// </remarks>
public sealed class StateTape
{
    /// <summary>How many numbers fit; the core needs a few less.</summary>
    public const int Size = 780;

    private readonly long[] _numbers = new long[Size];
    private bool _isReading;
    private int _at;

    /// <summary>How many numbers are on the tape.</summary>
    public int Count;

    /// <summary>Gets or sets a number, for sending a tape and for receiving one.</summary>
    /// <param name="index">Its place on the tape, from 0.</param>
    /// <returns>The number.</returns>
    public long this[int index]
    {
        get { return _numbers[index]; }
        set { _numbers[index] = value; }
    }

    /// <summary>Starts writing at the beginning of the tape; what was on it is lost.</summary>
    public void Write()
    {
        _isReading = false;
        _at = 0;
        Count = 0;
    }

    /// <summary>Starts reading at the beginning of the tape.</summary>
    public void Read()
    {
        _isReading = true;
        _at = 0;
    }

    /// <summary>Exchanges a number.</summary>
    /// <param name="value">The number that the part has.</param>
    /// <returns>The number that the part must have from now on.</returns>
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
    /// <param name="value">The number that the part has.</param>
    /// <returns>The number that the part must have from now on.</returns>
    public int Number(int value)
    {
        // Not by the other one: most of the state are such numbers, and the board writes all of it in one step of the loop.
        if (_isReading)
        {
            return (int)_numbers[_at++];
        }

        _numbers[_at++] = value;
        Count = _at;
        return value;
    }

    /// <summary>Exchanges a truth value; on the tape it is 1 or 0.</summary>
    /// <param name="value">The value that the part has.</param>
    /// <returns>The value that the part must have from now on.</returns>
    public bool Flag(bool value)
    {
        return Number(value ? 1 : 0) != 0;
    }

    /// <summary>Exchanges a whole array of numbers.</summary>
    /// <param name="values">The part's array; it is overwritten while the tape is read.</param>
    public void Numbers(int[] values)
    {
        // The board writes its whole state in one step of the loop, so an array must not cost it a call for every number.
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

    /// <summary>Exchanges a whole array of numbers.</summary>
    /// <param name="values">The part's array; it is overwritten while the tape is read.</param>
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
