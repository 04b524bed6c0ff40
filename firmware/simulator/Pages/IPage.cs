namespace NanoDustSwitch.Simulator.Pages;

/// <summary>A page that is written piece by piece. All texts are plain ones.</summary>
internal interface IPage
{
    /// <summary>Adds a heading.</summary>
    /// <param name="text">Its text.</param>
    void AddHeading(string text);

    /// <summary>Adds a paragraph.</summary>
    /// <param name="text">Its text.</param>
    void AddText(string text);

    /// <summary>Adds a list.</summary>
    /// <param name="items">Its items, a paragraph each.</param>
    void AddList(IEnumerable<string> items);

    /// <summary>Adds lines to be copied.</summary>
    /// <param name="lines">The lines.</param>
    void AddLines(IEnumerable<string> lines);

    /// <summary>Adds a table of texts, with lines around its cells to write in.</summary>
    /// <param name="header">The words above its columns.</param>
    /// <param name="rows">Its rows.</param>
    void AddForm(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows);

    /// <summary>Adds a drawing.</summary>
    /// <param name="svg">The drawing.</param>
    /// <param name="width">Its width in its own units.</param>
    /// <param name="height">Its height in its own units.</param>
    /// <param name="file">The file beside the page that holds it as well.</param>
    /// <param name="caption">What it shows.</param>
    void AddDrawing(string svg, int width, int height, string file, string caption);
}
