namespace NanoDustSwitch.UnitTests;

/// <summary>Checks that a number is near another one, or lies between two others (which it may equal).</summary>
internal static class Near
{
    public static void Check(int expected, int actual, int tolerance)
    {
        Between(expected - tolerance, actual, expected + tolerance);
    }

    public static void Between(long least, long actual, long greatest)
    {
        bool isBetween = actual >= least && actual <= greatest;
        Assert.IsTrue(isBetween, least.ToString() + " to " + greatest.ToString() + " expected, but " + actual.ToString());
    }
}
