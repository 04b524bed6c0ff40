namespace NanoDustSwitch.Firmware;

/// <summary>The words for one fault: a row of <see cref="FaultText"/>.</summary>
public sealed class FaultWords
{
    /// <summary>Its name.</summary>
    public readonly string Name;

    /// <summary>
    /// What was seen. In it <c>%n</c> is replaced by the figure, <c>%V</c> by a figure in mV, shown in V, and <c>%A</c> by a
    /// figure in mA, shown in A.
    /// </summary>
    public readonly string Seen;

    /// <summary>How it ends.</summary>
    public readonly string Ends;

    /// <summary>What a person can do.</summary>
    public readonly string ToDo;

    /// <summary>Initializes a new instance of the <see cref="FaultWords"/> class.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="seen">What was seen.</param>
    /// <param name="ends">How it ends.</param>
    /// <param name="toDo">What a person can do.</param>
    public FaultWords(string name, string seen, string ends, string toDo)
    {
        Name = name;
        Seen = seen;
        Ends = ends;
        ToDo = toDo;
    }
}
