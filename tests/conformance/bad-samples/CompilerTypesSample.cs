namespace NanoDustSwitch.BadSamples;

public readonly struct CompilerTypesSample
{
    public readonly int Number;

    public CompilerTypesSample(in int number)
    {
        Number = number;
    }

    public static object Fills()
    {
        return new int[] { 1, 1, 2, 3, 5, 8 };
    }

    public static int Chooses(string word)
    {
        switch (word)
        {
            case "aaaa": return 1;
            case "aaab": return 2;
            case "aaba": return 3;
            case "aabb": return 4;
            case "abaa": return 5;
            case "abab": return 6;
            case "abba": return 7;
            case "abbb": return 8;
            case "baaa": return 9;
            case "baab": return 10;
            case "baba": return 11;
            case "babb": return 12;
            case "bbaa": return 13;
            case "bbab": return 14;
            case "bbba": return 15;
            case "bbbb": return 16;
            default: return 0;
        }
    }

#nullable enable
    public static string? MayBeNull(string? text)
    {
        return text;
    }
}
