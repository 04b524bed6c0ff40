using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>The two sheets to drill the mounting plate by: at 1 : 1, on a printer's paper, every hole in its place.</summary>
[TestClass]
public sealed partial class TemplateTests
{
    private const double Near = 0.05;

    // Round shapes below it are in letters.
    private const double LeastHole = 3.5;

    // A4 (ISO 216) and Letter (ANSI Y14.1), less 8 mm of margin all around.
    private const double PaperWidth = 210 - 16;
    private const double PaperHeight = 279.4 - 16;

    [TestMethod]
    [DataRow("drill-mains")]
    [DataRow("drill-low-voltage")]
    public void A_sheet_is_drawn_in_millimetres_and_goes_on_paper(string sheet)
    {
        XElement svg = Svg(sheet);
        string[] box = svg.Attribute("viewBox")!.Value.Split(' ');
        Assert.AreEqual($"{box[2]}mm", svg.Attribute("width")!.Value);
        Assert.AreEqual($"{box[3]}mm", svg.Attribute("height")!.Value);
        Assert.IsLessThanOrEqualTo(PaperWidth, double.Parse(box[2]));
        Assert.IsLessThanOrEqualTo(PaperHeight, double.Parse(box[3]));
    }

    [TestMethod]
    public void Every_hole_of_the_plate_is_on_a_sheet_and_no_other() => Findings.AssertNone(HoleFindings(Parameters.Read()));

    [TestMethod]
    [DataRow("earth_stud", "[14, 133, 40, 40, 25]", "no hole of 5.3 mm at 34.0, 153.0")]
    [DataRow("rail_screw", "[48]", "nothing is to be drilled at 110.0, 76.0")]
    [DataRow("screw_hole", "5.4", "no hole of 5.4 mm at 48.0, 76.0")]
    [DataRow("sensor_ear", "16", "no hole of 4.4 mm at 61.5, 161.4")]
    [DataRow("barrier_at", "180", "no hole of 4.4 mm at 201.4, 33.3")]
    [DataRow("cradle_at", "[212, 53]", "no hole of 4.4 mm at 250.0, 60.0")]
    public void A_hole_that_was_moved_is_named(string name, string value, string wanted) =>
        Assert.Contains(wanted, HoleFindings(Parameters.ReadWith(name, value)));

    // The scale's line, both ways: a straight edge of 80 mm.
    [TestMethod]
    [DataRow("drill-mains")]
    [DataRow("drill-low-voltage")]
    public void A_sheet_has_its_lines_to_measure(string sheet)
    {
        (double X, double Y)[][] shapes = [.. Shapes(sheet)];
        Assert.Contains(shape => Math.Abs(Width(shape, point => point.X) - 80) < Near, shapes);
        Assert.Contains(shape => Math.Abs(Width(shape, point => point.Y) - 80) < Near, shapes);
    }

    private static IEnumerable<string> HoleFindings(Parameters p)
    {
        List<(double X, double Y, double Diameter)> drawn =
        [
            .. new[] { "drill-mains", "drill-low-voltage" }.SelectMany(Shapes).Select(Circle).OfType<(double, double, double)>(),
        ];
        List<string> findings = [];
        foreach ((double x, double y, double diameter) in new Plate(p).Holes)
        {
            // The ring's outer edge; its inner one is 0.5 mm smaller.
            int found = drawn.RemoveAll(hole => Math.Abs(hole.X - x) < Near && Math.Abs(hole.Y - y) < Near
                && (Math.Abs(hole.Diameter - diameter) < Near || Math.Abs(hole.Diameter - diameter + 0.5) < Near));
            if (found != 2)
            {
                findings.Add($"no hole of {diameter} mm at {x:0.0}, {y:0.0}");
            }
        }

        return findings.Concat(drawn.Select(hole => $"nothing is to be drilled at {hole.X:0.0}, {hole.Y:0.0}"));
    }

    private static (double X, double Y, double Diameter)? Circle((double X, double Y)[] shape)
    {
        double x = shape.Average(point => point.X);
        double y = shape.Average(point => point.Y);
        double[] radius = [.. shape.Select(point => double.Hypot(point.X - x, point.Y - y))];
        bool isRound = shape.Length > 20 && radius.Max() - radius.Min() < Near;
        return isRound && radius.Min() > LeastHole / 2 ? (x, y, 2 * radius.Average()) : null;
    }

    private static double Width((double X, double Y)[] shape, Func<(double X, double Y), double> along) =>
        shape.Max(along) - shape.Min(along);

    // In the box's axes: an SVG's y runs down.
    private static IEnumerable<(double X, double Y)[]> Shapes(string sheet) =>
        Svg(sheet).Elements().Single(element => element.Name.LocalName == "path").Attribute("d")!.Value
            .Split('M', StringSplitOptions.RemoveEmptyEntries)
            .Select(shape => Point().Matches(shape)
                .Select(point => (double.Parse(point.Groups["x"].Value), -double.Parse(point.Groups["y"].Value))).ToArray())
            .Where(shape => shape.Length > 0);

    private static XElement Svg(string sheet)
    {
        using StreamReader file = new(Repository.PathOf($"hardware/enclosure/pictures/{sheet}.svg"));
        using System.Xml.XmlReader reader =
            System.Xml.XmlReader.Create(file, new() { DtdProcessing = System.Xml.DtdProcessing.Ignore });
        return XElement.Load(reader);
    }

    [GeneratedRegex(@"(?<x>-?[\d.]+),(?<y>-?[\d.]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Point();
}
