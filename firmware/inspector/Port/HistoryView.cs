using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The swing of the last minute or more as columns, a second each, and below them when the vacuum was on.</summary>
/// <param name="history">The seconds.</param>
/// <param name="glyphs">The signs.</param>
internal sealed class HistoryView(WatchHistory history, Glyphs glyphs)
{
    private const int FigureWidth = 11;

    // Half an octave and more to a row: from a twentieth of an ampere to fifty, as the bar above.
    private const double Least = 0.05;
    private const double Whole = 1000;
    private const double Hair = 1.000001;

    private static readonly double[] s_named = [0.05, 0.5, 5];

    /// <summary>Draws.</summary>
    /// <param name="width">Columns of the terminal.</param>
    /// <param name="rows">Rows, that of the vacuum included.</param>
    /// <param name="stop">The lower level in amperes.</param>
    /// <param name="start">The upper one.</param>
    /// <returns>The rows.</returns>
    public IEnumerable<IRenderable> Draw(int width, int rows, double stop, double start)
    {
        IReadOnlyList<(double Swing, bool IsVacuumOn)> seconds = history.Last(width - FigureWidth - 1);
        int height = rows - 1;
        for (int row = height - 1; row >= 0; row--)
        {
            yield return Row(seconds, row, height, stop, start);
        }

        Paragraph vacuum = new Paragraph().Append($" {"vacuum",-FigureWidth}"[..FigureWidth], Looks.Quiet);
        foreach ((_, bool isOn) in seconds)
        {
            vacuum.Append((isOn ? glyphs.Full : glyphs.Empty).ToString(), isOn ? Looks.Running : Looks.Quiet);
        }

        yield return vacuum;
    }

    private static double Edge(double row, int height) => Least * Math.Pow(Whole, row / height);

    private Paragraph Row(IReadOnlyList<(double Swing, bool IsVacuumOn)> seconds, int row, int height, double stop, double start)
    {
        double? named = s_named.Cast<double?>()
            .FirstOrDefault(amperes => Edge(row, height) <= amperes * Hair && Edge(row + 1, height) > amperes * Hair);
        bool isStart = start >= Edge(row, height) && start < Edge(row + 1, height);
        string figure = named is null ? "" : $"{named,6} A  ";
        Paragraph line = new Paragraph().Append($" {figure}".PadRight(FigureWidth), Looks.Quiet);
        foreach ((double swing, _) in seconds)
        {
            bool isFull = swing >= Edge(row + 0.5, height);
            line.Append(
                (isFull ? glyphs.Full : isStart ? glyphs.Empty : ' ').ToString(),
                isFull ? SwingBar.Look(swing, stop, start) : Looks.Quiet);
        }

        return line;
    }
}
