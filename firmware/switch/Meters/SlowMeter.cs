using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Collects the answers of the slow lane over a while: the greatest, the least, the latest. There are ten answers a second as
/// long as the fast lane sees no tool. All levels and answers are swings in sixteenths of a count.
/// </summary>
public sealed class SlowMeter
{
    // An answer covers the last 0.4 s. So when the tool has just stopped, this many of the latest answers may be too small.
    private const int Kept = SlowLane.Blocks + 1;

    private readonly int[] _last = new int[Kept];
    private int _place;
    private int _answers;

    /// <summary>Level for <see cref="Above"/>. <see cref="Reset"/> does not change it.</summary>
    public int High;

    /// <summary>How many of the latest answers, in a row, were above <see cref="High"/>.</summary>
    public int Above;

    /// <summary>Greatest answer; 0 while there is none.</summary>
    public int Greatest;

    /// <summary>Latest answer; 0 while there is none.</summary>
    public int Latest;

    /// <summary>
    /// Least answer, without those of the last half second, in which the tool may be stopping. Meaningless until
    /// <see cref="HasLeast"/>.
    /// </summary>
    public int Least;

    /// <summary>Whether there have been more than five answers, so that <see cref="Least"/> has a value.</summary>
    public bool HasLeast;

    /// <summary>Forgets all answers.</summary>
    public void Reset()
    {
        _place = 0;
        _answers = 0;
        Above = 0;
        Greatest = 0;
        Latest = 0;
        Least = int.MaxValue;
        HasLeast = false;
    }

    /// <summary>Takes an answer.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    public void Accept(int swing)
    {
        Above = swing > High ? Above + 1 : 0;
        Greatest = swing > Greatest ? swing : Greatest;
        Latest = swing;
        if (_answers < Kept)
        {
            _answers++;
        }
        else
        {
            HasLeast = true;
            Least = _last[_place] < Least ? _last[_place] : Least;
        }

        _last[_place] = swing;
        _place = _place + 1 == Kept ? 0 : _place + 1;
    }
}
