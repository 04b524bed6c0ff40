namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>
/// A logarithmic scale from a twentieth of an ampere to fifty: a lamp and a saw's start both have their place on it.
/// </summary>
/// <param name="width">Its columns.</param>
internal sealed class AmpereScale(int width)
{
    private const double Least = 0.05;
    private const double Decades = 3;

    private static readonly double[] s_marks = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];

    /// <summary>Gives the column of a current.</summary>
    /// <param name="amperes">The current.</param>
    /// <returns>0 to the width less one.</returns>
    public int Column(double amperes) =>
        amperes <= Least ? 0 : Math.Min(width - 1, (int)Math.Round(Math.Log10(amperes / Least) / Decades * (width - 1)));

    /// <summary>Gives the row of figures below the scale.</summary>
    /// <returns>The row.</returns>
    public string Figures()
    {
        char[] row = [.. Enumerable.Repeat(' ', width)];
        foreach (double mark in s_marks)
        {
            string figure = mark.ToString();
            Put(row, Column(mark) - (figure.Length / 2), figure);
        }

        return new string(row);
    }

    /// <summary>Gives the row that names the two levels.</summary>
    /// <param name="stop">The lower level in amperes.</param>
    /// <param name="start">The upper one.</param>
    /// <param name="pointer">The sign that points at a level.</param>
    /// <returns>The row.</returns>
    public string Levels(double stop, double start, char pointer)
    {
        char[] row = [.. Enumerable.Repeat(' ', width)];
        string left = $"stops below {stop:0.00} A {pointer}";
        string right = $"{pointer} starts at {start:0.00} A";
        int stopColumn = Column(stop);
        int startColumn = Column(start);

        // Where there is no room beside it, the pointer stands alone.
        Put(row, stopColumn, pointer.ToString());
        if (stopColumn + 1 >= left.Length)
        {
            Put(row, stopColumn + 1 - left.Length, left);
        }

        Put(row, startColumn, startColumn + right.Length <= width ? right : pointer.ToString());
        return new string(row);
    }

    private static void Put(char[] row, int at, string text)
    {
        int from = Math.Clamp(at, 0, Math.Max(0, row.Length - text.Length));
        text.AsSpan(0, Math.Min(text.Length, row.Length - from)).CopyTo(row.AsSpan(from));
    }
}
