using System.Xml.Linq;

namespace NanoDustSwitch.Drawing.Sheets;

/// <summary>The shapes of a drawing, in the order in which they are put there.</summary>
internal sealed class Canvas
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    private readonly XElement _root;

    public Canvas(int width, int height) => _root = Element(
        "svg",
        ("viewBox", $"0 0 {width} {height}"),
        ("width", width),
        ("height", height),
        ("font-family", "DejaVu Sans, Arial, sans-serif"));

    /// <summary>Gives the drawing as SVG, with the same line ends everywhere.</summary>
    public override string ToString() => _root.ToString().ReplaceLineEndings("\n") + "\n";

    public void Stroke(string path, string ink, double width, string? dashes = null)
    {
        XElement line = Element(
            "path", ("d", path), ("fill", "none"), ("stroke", ink), ("stroke-width", width), ("stroke-linejoin", "round"));
        line.SetAttributeValue("stroke-dasharray", dashes);
        _root.Add(line);
    }

    /// <summary>A wire: a light rim keeps crossing wires apart; a white wire has a dark one.</summary>
    public void Wire(string path, string colour)
    {
        Stroke(path, colour == "white" ? "#303030" : "#ffffff", colour == "white" ? 5.5 : 6.5);
        Stroke(path, InkOf(colour), 3.5);
        if (colour == "green-yellow")
        {
            Stroke(path, "#f2d500", 3.5, "8 8");
        }
    }

    public void Dot(int x, int y, int radius) =>
        _root.Add(Element("circle", ("cx", x), ("cy", y), ("r", radius), ("fill", "#202020")));

    public void Ring(int x, int y, int halfWidth, int halfHeight) => _root.Add(Element(
        "ellipse",
        ("cx", x),
        ("cy", y),
        ("rx", halfWidth),
        ("ry", halfHeight),
        ("fill", "none"),
        ("stroke", "#606060"),
        ("stroke-width", 5)));

    public void Rectangle(int[] at, int[] size, string ground, string rim, int rimWidth = 1) => _root.Add(Element(
        "rect",
        ("x", at[0]),
        ("y", at[1]),
        ("width", size[0]),
        ("height", size[1]),
        ("fill", ground),
        ("stroke", rim),
        ("stroke-width", rimWidth)));

    public void Text(int x, int y, string text, int size, bool bold = false, string? anchor = null, string ink = "#101010")
    {
        XElement element = Element("text", ("x", x), ("y", y), ("font-size", size), ("fill", ink));
        element.SetAttributeValue("text-anchor", anchor);
        element.SetAttributeValue("font-weight", bold ? "bold" : null);
        element.Value = text;
        _root.Add(element);
    }

    private static XElement Element(string name, params (string Name, object Value)[] attributes) =>
        new(s_svg + name, attributes.Select(attribute => new XAttribute(attribute.Name, attribute.Value)));

    private static string InkOf(string colour) => colour switch
    {
        "black" => "#111111",
        "red" => "#d01818",
        "brown" => "#8a4a1c",
        "blue" => "#1c5fd0",
        "green" or "green-yellow" => "#1d9a3c",
        "orange" => "#f08a00",
        "grey" => "#808890",
        "violet" => "#8a3cc8",
        "pink" => "#e860b0",
        _ => "#ffffff",
    };
}
