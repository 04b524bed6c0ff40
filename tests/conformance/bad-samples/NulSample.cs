using System;

namespace NanoDustSwitch.BadSamples;

public class NulSample
{
    public static string Says()
    {
        return "before\0after";
    }

    [Obsolete("before\0after")]
    public static void IsDescribed()
    {
    }
}
