using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The whole screen of <c>watch</c>: how the board stands, its swing between the levels, and the last minute.</summary>
/// <param name="name">The port.</param>
/// <param name="glyphs">The signs.</param>
internal sealed class WatchPicture(string name, Glyphs glyphs)
{
    private const int LabelWidth = 9;

    // In amperes; of less no multiple is worth a figure.
    private const double LeastForTimes = 0.01;
    private const int WhyRows = 2;
    private const int FaultRows = 2;

    // All but the history: headings, the rows above them, bar and margin.
    private const int OtherRows = 14;

    private readonly WatchHistory _history = new();
    private readonly SwingBar _bar = new(glyphs);
    private WatchLine? _line;

    /// <summary>Takes a line.</summary>
    /// <param name="line">The line.</param>
    public void Take(WatchLine line)
    {
        _line = line;
        _history.Add(line);
    }

    /// <summary>Draws.</summary>
    /// <param name="width">Columns of the terminal.</param>
    /// <param name="height">Its rows.</param>
    /// <param name="trouble">Why there is no board just now; null while there is one.</param>
    /// <returns>The picture.</returns>
    public IRenderable Draw(int width, int height, string? trouble)
    {
        List<IRenderable> rows = _line is null
            ? [Looks.Heading(name), Line("state", trouble ?? "waits for the first line", Looks.Passing)]
            : [.. Board(_line, width, trouble), .. Swing(_line, width), .. History(_line, width, height)];
        return new Rows(rows.Take(height));
    }

    private static Paragraph Line(string label, string text, Style look) =>
        new Paragraph().Append($" {label,-LabelWidth}", Looks.Quiet).Append(text, look);

    private static IEnumerable<IRenderable> Lines(string label, string text, int rows, int width, Style look)
    {
        List<string> lines = Wrapped.Lines(text, width - LabelWidth - 2);
        for (int i = 0; i < rows; i++)
        {
            yield return Line(i == 0 ? label : "", i < lines.Count ? lines[i] : "", look);
        }
    }

    private static string Margin(WatchLine line) => line.IsToolRunning
        ? $"{line.Swing - line.StopBelow:0.00} A above stop-below; it sees "
            + $"{line.Swing / Math.Max(LeastForTimes, line.StopBelow):0.0} times that"
        : line.Swing < LeastForTimes ? $"{line.StartAt - line.Swing:0.00} A below start-at"
        : $"{line.StartAt - line.Swing:0.00} A below start-at, which is {line.StartAt / line.Swing:0.0} times what it sees now";

    private IEnumerable<IRenderable> Board(WatchLine line, int width, string? trouble)
    {
        yield return Looks.Heading($"the board at {name}, up {FirmwareText.Of(output => output.Clock((long)line.Seconds))}");
        yield return trouble is null
            ? Line("state", line.StateName, line.IsStuck ? Looks.Wrong : StateLooks.Look(line.State))
            : Line("state", "no board: this is how it stood at last", Looks.Wrong);
        foreach (IRenderable row in trouble is null
            ? Lines("why", line.Why(), WhyRows, width, Looks.Usual)
            : Lines("wait", trouble, WhyRows, width, Looks.Wrong))
        {
            yield return row;
        }

        yield return Line(
            "tool", line.IsToolRunning ? "running    " : "not running", line.IsToolRunning ? Looks.Running : Looks.Quiet)
            .Append($"{line.Amperes,6:0.00} A rms");
        yield return Line(
            "vacuum",
            line.IsVacuumOn ? $"{glyphs.Lit} on       " : $"{glyphs.Dark} told off ",
            line.IsVacuumOn ? Looks.Running : Looks.Quiet)
            .Append($"{line.Hours,6:0.00} h run in all, {line.Starts:#,0} starts");
        Style look = line.Faults.Count > 0 ? Looks.Wrong : Looks.Quiet;
        foreach (IRenderable row in Lines("faults", line.FaultSentence(), FaultRows, width, look))
        {
            yield return row;
        }
    }

    private IEnumerable<IRenderable> Swing(WatchLine line, int width) =>
    [
        Looks.Heading("swing: what the switch decides on"),
        .. _bar.Draw(width, line.Swing, line.StopBelow, line.StartAt),
        Line("margin", Margin(line), SwingBar.Look(line.Swing, line.StopBelow, line.StartAt)),
    ];

    private IEnumerable<IRenderable> History(WatchLine line, int width, int height) =>
    [
        Looks.Heading("the last seconds, one a column; q leaves"),
        .. new HistoryView(_history, glyphs).Draw(width, Math.Max(2, height - OtherRows), line.StopBelow, line.StartAt),
    ];
}
