using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>A page of the project, as a reader of its source host sees it.</summary>
internal sealed class Page
{
    private static readonly MarkdownPipeline s_pipeline = new MarkdownPipelineBuilder()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
        .UsePipeTables()
        .Build();

    private readonly MarkdownDocument _document;

    /// <summary>Initializes a new instance of the <see cref="Page"/> class from text.</summary>
    /// <param name="name">Its path from the root, with slashes.</param>
    /// <param name="text">What it says.</param>
    public Page(string name, string text)
    {
        Name = name;
        Text = text.ReplaceLineEndings("\n");
        _document = Markdown.Parse(Text, s_pipeline);
    }

    /// <summary>Gets its path from the root, with slashes.</summary>
    public string Name { get; }

    /// <summary>Gets what it says.</summary>
    public string Text { get; }

    /// <summary>Gets all that is written in backticks within a line.</summary>
    public IEnumerable<string> Spans => _document.Descendants<CodeInline>().Select(code => code.Content);

    /// <summary>Gets where its links and pictures lead that stay in the project.</summary>
    public IEnumerable<string> LocalLinks => _document.Descendants<LinkInline>()
        .Select(link => link.Url ?? "")
        .Where(url => !url.StartsWith("https://", StringComparison.Ordinal));

    /// <summary>Gets the names of its headings, for links.</summary>
    public IEnumerable<string?> Anchors =>
        _document.Descendants<HeadingBlock>().Select(heading => heading.TryGetAttributes()?.Id);

    /// <summary>Reads a page.</summary>
    /// <param name="name">Its path from the root, with slashes.</param>
    public static Page Read(string name) => new(name, File.ReadAllText(Repository.PathOf(name)));

    /// <summary>All pages of a folder and below.</summary>
    /// <param name="folder">Its path from the root.</param>
    public static IEnumerable<Page> Below(string folder) =>
        Directory.EnumerateFiles(Repository.PathOf(folder), "*.md", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .Select(file => Read(Path.GetRelativePath(Repository.Root, file).Replace('\\', '/')));

    /// <summary>The lines of its fenced blocks of a kind, one text a block.</summary>
    /// <param name="kind">What stands behind the fence; nothing for a plain one.</param>
    public IEnumerable<string> Fences(string kind) => _document.Descendants<FencedCodeBlock>()
        .Where(block => (block.Info ?? "") == kind)
        .Select(block => block.Lines.ToString());
}
