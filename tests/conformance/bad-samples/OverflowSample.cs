namespace NanoDustSwitch.BadSamples;

public class OverflowSample
{
    public static int Adds(int first, int second)
    {
        return checked(first + second);
    }

    public static byte Narrows(int value)
    {
        return checked((byte)value);
    }

    // The compiler checks an index of this type by itself.
    public static int ReachesFar(int[] numbers, long index)
    {
        return numbers[index];
    }
}
