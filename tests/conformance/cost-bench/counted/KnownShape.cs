namespace NanoDustSwitch.CostBench.Counted;

/// <summary>Something to call virtually and through an interface.</summary>
public abstract class KnownShape : IKnownCorners
{
    /// <summary>Counts its corners.</summary>
    /// <returns>Their number.</returns>
    public abstract int Corners();
}
