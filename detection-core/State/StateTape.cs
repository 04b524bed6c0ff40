using System;

namespace NanoDustSwitch.Detection;

/// <summary>
/// A row of numbers that holds the core's whole state. Each part hands every number of its state to the tape and takes over the
/// number that the tape returns. While the tape is written this is the same number; while it is read it is the one that was
/// written. So one method of a part serves both directions, and the two cannot differ.
/// </summary>
/// <remarks>
/// From a tape, the settings and the buckets that came after it, a PC decides just as the board did, bucket for bucket. The board
/// writes all of it in one step of the loop: so short and long numbers are kept apart, and a whole array is copied at once.
/// </remarks>
public sealed class StateTape
{
    /// <summary>How many numbers fit; the core needs a few less. The long ones, most of them times, come last.</summary>
    public const int Size = Shorts + Longs;

    private const int Shorts = 660;
    private const int Longs = 250;

    private readonly int[] _shorts = new int[Shorts];
    private readonly long[] _longs = new long[Longs];
    private bool _isReading;
    private int _at;
    private int _longAt;

    /// <summary>Gets or sets a number, for sending a tape and for receiving one.</summary>
    /// <param name="index">Its place on the tape, from 0.</param>
    /// <returns>The number.</returns>
    public long this[int index]
    {
        get
        {
            return index < Shorts ? _shorts[index] : _longs[index - Shorts];
        }

        set
        {
            if (index < Shorts)
            {
                _shorts[index] = (int)value;
            }
            else
            {
                _longs[index - Shorts] = value;
            }
        }
    }

    /// <summary>Starts writing at the beginning of the tape.</summary>
    public void Write()
    {
        _isReading = false;
        _at = 0;
        _longAt = 0;
    }

    /// <summary>Starts reading at the beginning of the tape.</summary>
    public void Read()
    {
        Write();
        _isReading = true;
    }

    /// <summary>Exchanges a number.</summary>
    /// <param name="value">The number that the part has.</param>
    /// <returns>The number that the part must have from now on.</returns>
    public long Number(long value)
    {
        if (_isReading)
        {
            return _longs[_longAt++];
        }

        _longs[_longAt++] = value;
        return value;
    }

    /// <summary>Exchanges a number.</summary>
    /// <param name="value">The number that the part has.</param>
    /// <returns>The number that the part must have from now on.</returns>
    public int Number(int value)
    {
        if (_isReading)
        {
            return _shorts[_at++];
        }

        _shorts[_at++] = value;
        return value;
    }

    /// <summary>Exchanges a truth value; on the tape it is 1 or 0.</summary>
    /// <param name="value">The value that the part has.</param>
    /// <returns>The value that the part must have from now on.</returns>
    public bool Flag(bool value)
    {
        if (_isReading)
        {
            return _shorts[_at++] != 0;
        }

        _shorts[_at++] = value ? 1 : 0;
        return value;
    }

    /// <summary>Exchanges a whole array of numbers.</summary>
    /// <param name="values">The part's array; it is overwritten while the tape is read.</param>
    public void Numbers(int[] values)
    {
        if (_isReading)
        {
            Array.Copy(_shorts, _at, values, 0, values.Length);
        }
        else
        {
            Array.Copy(values, 0, _shorts, _at, values.Length);
        }

        _at += values.Length;
    }

    /// <summary>Exchanges a whole array of numbers.</summary>
    /// <param name="values">The part's array; it is overwritten while the tape is read.</param>
    public void Numbers(long[] values)
    {
        if (_isReading)
        {
            Array.Copy(_longs, _longAt, values, 0, values.Length);
        }
        else
        {
            Array.Copy(values, 0, _longs, _longAt, values.Length);
        }

        _longAt += values.Length;
    }
}
