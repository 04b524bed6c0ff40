using System.Text.RegularExpressions;

namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>KiCad's files: lists in brackets, of words and of lists.</summary>
internal static partial class Brackets
{
    /// <summary>Reads a file; gives its outermost list.</summary>
    public static List<object> Read(string text)
    {
        Stack<List<object>> open = new([[]]);
        foreach (Match token in Token().Matches(text))
        {
            if (token.Value == "(")
            {
                open.Push([]);
            }
            else if (token.Value == ")")
            {
                List<object> done = open.Pop();
                open.Peek().Add(done);
            }
            else
            {
                open.Peek().Add(token.Value.Trim('"'));
            }
        }

        return (List<object>)open.Pop()[0];
    }

    /// <summary>The lists within a list whose first word is the name.</summary>
    public static IEnumerable<List<object>> Named(List<object> list, string name) =>
        list.OfType<List<object>>().Where(one => one[0] as string == name);

    [GeneratedRegex(@"[()]|""(?:[^""\\]|\\.)*""|[^\s()]+", RegexOptions.None, 10_000)]
    private static partial Regex Token();
}
