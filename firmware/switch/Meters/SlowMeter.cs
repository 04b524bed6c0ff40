using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>What the slow lane answered over a while, ten times a second as long as the fast lane sees no tool.</summary>
public sealed class SlowMeter
{
    // An answer looks back over the blocks: so many of the last may hold some of the tool's stop.
    private const int Kept = SlowLane.Blocks + 1;

    private readonly int[] _last = new int[Kept];
    private int _place;
    private int _answers;

    /// <summary>Level that <see cref="Above"/> counts by; outlives <see cref="Reset"/>.</summary>
    public int High;

    /// <summary>Answers in a row above <see cref="High"/>.</summary>
    public int Above;

    /// <summary>Greatest answer, as a swing in sixteenths of a count; 0 while there is none.</summary>
    public int Greatest;

    /// <summary>Latest answer.</summary>
    public int Latest;

    /// <summary>Least answer, the last half second left out; meaningless until <see cref="HasLeast"/>.</summary>
    public int Least;

    /// <summary>Whether answers of more than half a second have come.</summary>
    public bool HasLeast;

    /// <summary>Begins anew.</summary>
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
