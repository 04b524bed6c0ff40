using System.Text;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>A table as plain text: the first column to the left, figures to the right.</summary>
internal sealed class TextTable(string title, params string[] heads)
{
    private readonly List<string[]> _rows = [heads];

    /// <summary>Adds a row; a figure below ten keeps a decimal.</summary>
    public void Add(string name, params double[] figures) =>
        _rows.Add([name, .. figures.Select(figure => figure.ToString(Math.Abs(figure) < 10 && figure % 1 != 0 ? "F1" : "#,0"))]);

    public override string ToString()
    {
        var text = new StringBuilder().AppendLine(title);
        var widths = Enumerable.Range(0, heads.Length).Select(column => _rows.Max(row => row[column].Length)).ToArray();
        foreach (var row in _rows)
        {
            text.Append("  ").Append(row[0].PadRight(widths[0]));
            for (var column = 1; column < row.Length; column++)
            {
                text.Append("  ").Append(row[column].PadLeft(widths[column]));
            }

            text.AppendLine();
        }

        return text.ToString();
    }
}
