namespace NanoDustSwitch.Detection;

/// <summary>The little arithmetic that the core needs and the device's library lacks for whole numbers.</summary>
public static class IntegerMath
{
    /// <summary>Whole square root.</summary>
    /// <param name="value">The number, up to 2^60; 0 or less gives 0.</param>
    /// <param name="guess">Where to start, for example the last result; any value is safe.</param>
    /// <returns>The greatest whole number whose square is not above <paramref name="value"/>.</returns>
    public static int SquareRoot(long value, int guess)
    {
        if (value <= 0)
        {
            return 0;
        }

        // Newton's iteration in whole numbers: whatever the guess, one step lands at or above the whole root, for the mean of a number and its
        // quotient is never below the root (textbook inequality). From there it falls until it is there, and not below it.
        long root = guess > 0 ? guess : 1;
        root = (root + (value / root)) / 2;
        while (true)
        {
            long next = (root + (value / root)) / 2;
            if (next >= root)
            {
                break;
            }

            root = next;
        }

        return (int)root;
    }
}
