namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What a method has cost.</summary>
/// <param name="name">Its type and name.</param>
public sealed class MethodCost(string name)
{
    private int _open;

    public string Name { get; } = name;

    public int Calls { get; private set; }

    /// <summary>Gets or sets the instructions of its own.</summary>
    public int Own { get; set; }

    /// <summary>Gets what it executed itself and in all that it called; the calls of it apart.</summary>
    public Counts Whole { get; private set; }

    /// <summary>Gets its own instructions, with its calls weighed as so many more.</summary>
    public int Weighed => Own + (Counts.CallWeight * Calls);

    public void Open()
    {
        Calls++;
        _open++;
    }

    public void Close(Counts executed)
    {
        // A method that calls itself holds the inner call's instructions already.
        if (--_open == 0)
        {
            Whole += executed;
        }
    }
}
