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

    /// <summary>Gets the instructions of its own and of all that it called.</summary>
    public int Whole { get; private set; }

    /// <summary>Gets its own instructions, with its calls weighed as so many more.</summary>
    public int Weighed => Own + (Counts.CallWeight * Calls);

    public void Open()
    {
        Calls++;
        _open++;
    }

    public void Close(int instructions)
    {
        // A method that calls itself holds the inner call's instructions already.
        if (--_open == 0)
        {
            Whole += instructions;
        }
    }
}
