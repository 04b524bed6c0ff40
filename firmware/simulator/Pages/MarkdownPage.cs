using System.Text;

namespace NanoDustSwitch.Simulator.Pages;

/// <summary>A page in Markdown.</summary>
internal sealed class MarkdownPage : IPage
{
    private readonly StringBuilder _text = new();

    /// <summary>Initializes a new instance of the <see cref="MarkdownPage"/> class.</summary>
    /// <param name="title">What stands at its head.</param>
    public MarkdownPage(string title) => Add($"# {title}");

    /// <inheritdoc/>
    public void AddHeading(string text) => Add($"## {text}");

    /// <inheritdoc/>
    public void AddText(string text) => Add(text);

    /// <inheritdoc/>
    public void AddList(IEnumerable<string> items) => Add(string.Join('\n', items.Select(item => $"- {item}")));

    /// <inheritdoc/>
    public void AddLines(IEnumerable<string> lines) => Add($"```\n{string.Join('\n', lines)}\n```");

    /// <inheritdoc/>
    public void AddForm(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows) => Add(string.Join(
        '\n', rows.Select(Row).Prepend(string.Concat(Enumerable.Repeat("|---", header.Count)) + "|").Prepend(Row(header))));

    /// <inheritdoc/>
    public void AddDrawing(string svg, int width, int height, string file, string caption) => Add($"![{caption}]({file})");

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private static string Row(IReadOnlyList<string> cells) =>
        $"| {string.Join(" | ", cells.Select(cell => cell.Replace("|", "/", StringComparison.Ordinal)))} |";

    private void Add(string block) => _text.Append(_text.Length > 0 ? "\n" : "").Append(block).Append('\n');
}
