namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>A way to tell a tool from noise: takes readings and gives the strength of what it sees, again and again.</summary>
internal abstract class Method
{
    /// <summary>Gets its name.</summary>
    public abstract string Name { get; }

    /// <summary>Gets the length of line that an answer rests on, s.</summary>
    public abstract double Window { get; }

    /// <summary>Gets the answers in a row at or above the level that make a start.</summary>
    public virtual int Confirm => 1;

    /// <summary>Gets the answers in a row below the lower level that make a stop.</summary>
    public virtual int ConfirmStop => 1;

    /// <summary>
    /// Gets the degrees of freedom of its tail: of noise alone an answer exceeds x by a chance that falls about as
    /// x^(k-2) · exp(-c·x²).
    /// </summary>
    public virtual int Freedom => 2;

    /// <summary>Gets or sets the latest answer, in A rms of a sine.</summary>
    public double Answer { get; protected set; }

    /// <summary>Takes a bucket's readings.</summary>
    /// <param name="readings">Where they are.</param>
    /// <param name="count">How many.</param>
    /// <returns>Whether there is a new answer.</returns>
    public abstract bool Accept(int[] readings, int count);
}
