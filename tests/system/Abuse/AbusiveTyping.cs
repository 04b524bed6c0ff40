using System.Globalization;
using System.Text;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>Types what no manual foresees, one piece after the other, from a seed.</summary>
/// <param name="random">Where it comes from.</param>
internal sealed class AbusiveTyping(Random random)
{
    private static readonly string[] s_words = [.. Words()];

    // Escape sequences whole and cut off, rubbing out, ends of lines of every kind and none.
    private static readonly string[] s_ends =
    [
        "\r", "\r", "\r", "\r", "\r", "\r", "\r", "\r", "\n", "\r\n", "\n\r", "\r\r", "\r\n\r\n", "\0\r", "",
        "\u001b", "\u001b[", "\u001b[A", "\u001b[B", "\u001b[D", "\u001b[C", "\u001b[H", "\u001b[F", "\u001b[3~", "\u0015",
        "\u001bOP\r", "\u0003", "\u0004\n", "\b\b\b\b\r", "\u007f",
    ];

    private static readonly string[] s_numbers =
    [
        "0", "-0", "-1", "+1", "00000001", "1.", ".5", ",5", "1,5", "1..5", "1.5.5", "0.0000001", "0.9999999",
        "999999999", "1000000000", "2147483647", "2147483648", "-2147483648", "4294967296", "9223372036854775807",
        "9223372036854775808", "99999999999999999999999999", "1e9", "0x10", "nan", "infinity", "١", "½", "off", "none", "surge",
        "yes", "", " ", "=", "999999999.999999 h", "999999999 min", "0.000001 ms",
    ];

    private static readonly string[] s_units =
        ["", " a", "a", " ma", " mv/a", " ms", " s", "s", " min", " h", " v", " %", " a a"];

    /// <summary>Gives the next piece, mostly a line with its end.</summary>
    /// <returns>The bytes.</returns>
    public byte[] Next() => random.Next(8) switch
    {
        0 => Noise(random.Next(200)),
        1 => Bytes(Pick(s_words) + Pick(s_ends)),
        2 => Bytes(Pick(s_words) + " " + Pick(s_words) + " " + Pick(s_numbers) + Pick(s_ends)),
        3 => Bytes(new string((char)random.Next(' ', 127), random.Next(300)) + Pick(s_ends)),
        4 => Bytes(Broken(Pick(s_words)) + Pick(s_ends)),
        5 => Bytes(Setting().Name + " " + Pick(s_numbers) + Pick(s_units) + Pick(s_ends)),
        _ => Bytes(AtALimit() + Pick(s_ends)),
    };

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static IEnumerable<string> Words()
    {
        WordList words = new Workbench().Switch.Console.Words;
        for (int i = 0; i < words.Count; i++)
        {
            yield return words.At(i).Name;
        }

        for (int i = 0; i < SettingsTable.Count; i++)
        {
            yield return SettingsTable.Row((SettingId)i).Name;
        }

        string[] lines =
        [
            "yes", "y", "no", "restart\ryes", "teach\ryes", "test\ryes", "vacuum on", "vacuum off", "vacuum auto", "defaults 230",
            "calibrate 8.3 a", "teach store", "filter done", "help set", "set", "",
        ];
        foreach (string word in lines)
        {
            yield return word;
        }
    }

    private string Pick(string[] from) => from[random.Next(from.Length)];

    private Setting Setting() => SettingsTable.Row((SettingId)random.Next(SettingsTable.Count));

    // At the limit, one step past it, and a step within, in the setting's own unit.
    private string AtALimit()
    {
        Setting row = Setting();
        long value = (random.Next(2) == 0 ? row.Least : row.Greatest) + random.Next(-1, 2);
        string text = value.ToString(CultureInfo.InvariantCulture);
        return row.Name + (random.Next(2) == 0 ? " " : "=") + row.Unit switch
        {
            SettingUnit.Milliamperes => text + " ma",
            SettingUnit.Milliseconds => text + " ms",
            SettingUnit.MicrovoltsAnAmpere => (value / 1000m).ToString(CultureInfo.InvariantCulture),
            _ => text,
        };
    }

    private byte[] Noise(int count)
    {
        byte[] bytes = new byte[count];
        random.NextBytes(bytes);
        return bytes;
    }

    private string Broken(string word)
    {
        StringBuilder text = new(word);
        for (int i = random.Next(1, 4); i > 0; i--)
        {
            int at = random.Next(text.Length + 1);
            if (random.Next(2) == 0 || at == text.Length)
            {
                text.Insert(at, (char)random.Next(1, 256));
            }
            else
            {
                text.Remove(at, 1);
            }
        }

        return text.ToString();
    }
}
