namespace NanoDustSwitch.UnitTests;

/// <summary>A sine in double precision, worked out without the mathematics library, because a board may not have it.</summary>
internal static class Sine
{
    public static double Of(double turns)
    {
        turns -= (long)turns;
        if (turns > 0.5)
        {
            turns -= 1;
        }
        else if (turns < -0.5)
        {
            turns += 1;
        }

        // Within a quarter of a turn to either side the series needs only a few terms.
        if (turns > 0.25)
        {
            turns = 0.5 - turns;
        }
        else if (turns < -0.25)
        {
            turns = -0.5 - turns;
        }

        double x = turns * 6.283185307179586;
        double term = x;
        double sum = x;
        for (int i = 3; i <= 19; i += 2)
        {
            term = -term * x * x / (i * (i - 1));
            sum += term;
        }

        return sum;
    }
}
