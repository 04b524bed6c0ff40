namespace NanoDustSwitch.BadSamples;

public unsafe class PointersSample
{
    public int* Place;

    public static int Reserves(int count)
    {
        int* numbers = stackalloc int[count];
        return numbers[0];
    }

    public static int Pins(int[] numbers)
    {
        fixed (int* first = numbers)
        {
            return *first;
        }
    }

    public static int CallsAnAddress(delegate*<int, int> called)
    {
        return called(1);
    }
}
