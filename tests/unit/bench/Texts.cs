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
