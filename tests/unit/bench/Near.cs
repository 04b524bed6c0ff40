namespace NanoDustSwitch.UnitTests;

/// <summary>Two numbers that are nearly the same.</summary>
internal static class Near
{
    public static void Check(int expected, int actual, int tolerance)
    {
        int difference = expected > actual ? expected - actual : actual - expected;
        Assert.IsTrue(difference <= tolerance, expected.ToString() + " expected, but " + actual.ToString());
    }
}
