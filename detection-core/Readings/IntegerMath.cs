namespace NanoDustSwitch.Detection;

/// <summary>Whole-number arithmetic that the core needs and the device's library does not have.</summary>
public static class IntegerMath
{
    /// <summary>Whole square root.</summary>
    /// <param name="value">The number, up to 2^60; 0 or less gives 0.</param>
    /// <param name="guess">
    /// Where to start, for example the last result: a near guess is quicker, and any guess gives the same result.
    /// </param>
    /// <returns>The greatest whole number whose square is not above <paramref name="value"/>.</returns>
    public static int SquareRoot(long value, int guess)
    {
        if (value <= 0)
        {
            return 0;
        }

        // Newton's iteration in whole numbers. The mean of a number and its quotient is never below the root (the inequality of
        // the arithmetic and the geometric mean), so the first step lands at or above the whole root, whatever the guess was.
        // From there the steps fall until they reach it, and never pass below it.
        long root = guess > 0 ? guess : 1;

        // From a guess that is far too low the first step would land as far above the root, and each further one only halves it.
        while (value >> 8 > root * root)
        {
            root <<= 4;
        }

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
