namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>Which of a tool's starts.</summary>
internal enum Which
{
    /// <summary>Its first ever.</summary>
    First,

    /// <summary>From its fourth on.</summary>
    Later,

    /// <summary>Of the later ones, the first after the box was without power.</summary>
    AfterCut,
}
