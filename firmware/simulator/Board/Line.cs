namespace NanoDustSwitch.Simulator.Board;

/// <summary>What hangs on the board: a line to be read, and a relay line to be driven.</summary>
internal abstract class Line
{
    /// <summary>Gets the greatest count of the converter.</summary>
    public abstract int FullScale { get; }

    /// <summary>Gets the size of a count in µV.</summary>
    public abstract int MicrovoltsACount { get; }

    /// <summary>Gets a value indicating whether the board has its power.</summary>
    public virtual bool IsPowered => true;

    /// <summary>Takes one reading.</summary>
    /// <param name="now">Virtual time in microseconds, never less than before.</param>
    /// <returns>Counts; negative when it failed.</returns>
    public abstract int Read(long now);

    /// <summary>Takes one reading of the vacuum's own line.</summary>
    /// <param name="now">Virtual time in microseconds, never less than before.</param>
    /// <returns>Counts; negative when it failed or no sensor is fitted.</returns>
    public virtual int ReadVacuumLine(long now) => -1;

    /// <summary>Lets time pass.</summary>
    /// <param name="now">Virtual time in microseconds.</param>
    public abstract void Advance(long now);

    /// <summary>Drives the relay line.</summary>
    /// <param name="now">Virtual time in microseconds.</param>
    /// <param name="high">The level.</param>
    public abstract void SetRelayLine(long now, bool high);
}
