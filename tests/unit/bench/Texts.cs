using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>Takes the text that waits in an output, and looks into texts.</summary>
internal static class Texts
{
    public static string Take(TextOutput output)
    {
        byte[] bytes = new byte[TextOutput.Size];
        int count = output.Take(bytes, bytes.Length);
        char[] letters = new char[count];
        for (int i = 0; i < count; i++)
        {
            letters[i] = (char)bytes[i];
        }

        return new string(letters);
    }

    /// <summary>Numbers with a blank between each two.</summary>
    public static string Row(params int[] numbers)
    {
        string row = "";
        for (int i = 0; i < numbers.Length; i++)
        {
            row += (i == 0 ? "" : " ") + numbers[i].ToString();
        }

        return row;
    }

    /// <summary>The numbers of such a text.</summary>
    public static int[] Numbers(string row)
    {
        string[] words = row.Trim().Split(' ');
        int[] numbers = new int[words[0] == "" ? 0 : words.Length];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = int.Parse(words[i]);
        }

        return numbers;
    }

    public static bool Has(string text, string part)
    {
        return text.IndexOf(part) >= 0;
    }

    public static int Lines(string text)
    {
        int count = 0;
        for (int i = 0; i < text.Length; i++)
        {
            count += text[i] == '\n' ? 1 : 0;
        }

        return count;
    }
}
