namespace NanoDustSwitch.CostBench.Counted;

/// <summary>What is called.</summary>
public sealed class KnownSquare : KnownShape
{
    /// <inheritdoc/>
    public override int Corners()
    {
        return 4;
    }
}
