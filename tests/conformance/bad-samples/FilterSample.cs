using System;

namespace NanoDustSwitch.BadSamples;

public class FilterSample
{
    public static int CatchesSome(int number)
    {
        try
        {
            return 100 / number;
        }
        catch (Exception) when (number == 0)
        {
            return 0;
        }
    }
}
