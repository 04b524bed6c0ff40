using System.Diagnostics;
using NanoDustSwitch.Simulator.Board;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>Lets the board keep pace with the clock on the wall.</summary>
/// <param name="rig">The board.</param>
internal sealed class RealTime(Rig rig)
{
    /// <summary>
    /// A good time to sleep between two calls, in milliseconds: short against a key press, long against a step.
    /// </summary>
    public const int PauseMilliseconds = 5;

    // Behind by more than this, the PC slept or the program was stopped; that time is left out, not made up for.
    private const long LongestLag = 1_000_000;

    private long _shopBegin = rig.Board.ShopTime;
    private long _begin = Stopwatch.GetTimestamp();

    /// <summary>
    /// Gets a value indicating whether the lamp shone at any moment of the last call; a flash is shorter than a picture stands.
    /// </summary>
    public bool WasLampOn { get; private set; }

    /// <summary>Runs the board up to now.</summary>
    public void CatchUp()
    {
        long target = _shopBegin + (long)Stopwatch.GetElapsedTime(_begin).TotalMicroseconds;
        if (target - rig.Board.ShopTime > LongestLag)
        {
            Reset();
            return;
        }

        WasLampOn = rig.Board.IsLampOn;
        while (rig.Board.ShopTime < target)
        {
            rig.Step();
            WasLampOn |= rig.Board.IsLampOn;
        }
    }

    /// <summary>Goes on from the present shop time, after it has run ahead.</summary>
    public void Reset()
    {
        _shopBegin = rig.Board.ShopTime;
        _begin = Stopwatch.GetTimestamp();
    }
}
