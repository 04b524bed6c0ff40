namespace NanoDustSwitch.CostBench.Counted;

/// <summary>Something to call through an interface.</summary>
public interface IKnownCorners
{
    /// <summary>Counts corners.</summary>
    /// <returns>Their number.</returns>
    int Corners();
}
