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

        long root = guess > 0 ? guess : 1;

        // Newton's iteration: one step lands at or above the root, from there it only falls.
        root = (root + (value / root)) / 2;
        if (root < 1)
        {
            root = 1;
        }

        while (true)
        {
            long next = (root + (value / root)) / 2;
            if (next >= root)
            {
                break;
            }

            root = next;
        }

        while (root * root > value)
        {
            root--;
        }

        return (int)root;
    }
}
