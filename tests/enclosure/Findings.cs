namespace NanoDustSwitch.EnclosureTests;

/// <summary>What a rule has found, in words.</summary>
internal static class Findings
{
    /// <summary>Fails with all of them when there are any.</summary>
    /// <param name="findings">The findings.</param>
    public static void AssertNone(IEnumerable<string> findings)
    {
        string all = string.Join('\n', findings);
        Assert.IsTrue(all.Length == 0, all);
    }
}
