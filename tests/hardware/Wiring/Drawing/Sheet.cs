using System.Xml.Linq;

namespace NanoDustSwitch.HardwareTests.Wiring.Drawing;

/// <summary>Draws a build as SVG.</summary>
internal sealed class Sheet
{
    private const int Small = 12;
    private const string Footer =
        "Mains can kill, start a fire, and start a blade. Local codes and licensed practice come first. Pull every plug before the box is opened. The box isolates nothing.";

    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    private readonly Build _build;
    private readonly XElement _root;

    private Sheet(Build build)
    {
        _build = build;
        _root = new XElement(
            s_svg + "svg",
            new XAttribute("viewBox", $"0 0 {build.Size[0]} {build.Size[1]}"),
            new XAttribute("width", build.Size[0]),
            new XAttribute("height", build.Size[1]),
            new XAttribute("font-family", "DejaVu Sans, Arial, sans-serif"));
    }

    public static string Draw(Build build)
    {
        Sheet sheet = new(build);
        sheet.Rectangle(0, 0, build.Size[0], build.Size[1], "white", "none");
        foreach (Zone zone in build.Zones)
        {
            sheet.DrawZone(zone);
        }

        sheet.DrawTitle();
        foreach (Part part in build.Parts)
        {
            sheet.DrawPart(part);
        }

        sheet.DrawWires();
        foreach (Part part in build.Parts)
        {
            sheet.DrawPins(part);
        }

        return sheet._root + "\n";
    }

    private static int Units(int grid) => grid * Layout.Grid;

    private static string PathOf(IEnumerable<Spot> spots) => "M" + string.Join(" L", spots.Select(spot => $"{Units(spot.X)} {Units(spot.Y)}"));

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

    private void DrawTitle()
    {
        Text(20, 30, _build.Title, 22, bold: true);
        for (int i = 0; i < _build.Notes.Length; i++)
        {
            Text(20, 52 + (20 * i), _build.Notes[i], 14);
        }

        Text(20, _build.Size[1] - 8, Footer, 13, bold: true, ink: "#b01010");
    }

    private void DrawZone(Zone zone)
    {
        (string ground, string rim) = zone.Kind switch
        {
            "mains" => ("#fff3ee", "#d9a08c"),
            "barrier" => ("#ffd9d0", "#c03020"),
            "elv" => ("#eef6ff", "#8caed0"),
            _ => ("#f3f3f3", "#a0a0a0"),
        };
        Rectangle(zone.At[0], zone.At[1], zone.Size[0], zone.Size[1], ground, rim);
        if (zone.Kind == "barrier")
        {
            string[] lines = ["barrier", "8 mm and reinforced", "or double insulation:", "hardware/barriers.csv"];
            for (int i = 0; i < lines.Length; i++)
            {
                Text(zone.At[0] + zone.Size[0] - 10, zone.At[1] + 30 + (18 * i), lines[i], Small + 1, bold: i == 0, anchor: "end", ink: "#a02010");
            }
        }
        else
        {
            // The wires that come through the barrier would cross a text at the top.
            int y = zone.At[1] + (zone.Kind == "elv" ? zone.Size[1] - 10 : 20);
            Text(zone.At[0] + 10, y, zone.Text, 14, bold: true, ink: "#505050");
        }
    }

    private void DrawPart(Part part)
    {
        Rectangle(part.At[0], part.At[1], part.Size[0], part.Size[1], "white", part.Kind == "metal" ? "#1d9a3c" : "#202020", part.Touch ? 3 : 2);
        if (part.Kind == "transformer")
        {
            DrawRing(part);
        }

        foreach (string contact in part.Contacts.Where(_ => part.Kind is "relay" or "contactor"))
        {
            DrawContact(part, contact.Split('-'));
        }

        // Words stay clear of the pins' names on the sides.
        bool left = part.Pins.Any(pin => pin.Side == "left");
        bool right = part.Pins.Any(pin => pin.Side == "right");
        int inset = part.Kind is "component" or "port" ? 12 : part.Kind == "metal" ? 34 : 40;
        int x = part.At[0] + (left ? inset : 6);
        int width = part.Size[0] - (left ? inset : 6) - (right ? inset : 6);
        string[] lines = part.Text.Length == 0 ? [part.Label] : [part.Label, .. Wrap(part.Text, width / 6.6)];
        int pins = (part.Pins.Any(pin => pin.Side == "top") ? 8 : 0) - (part.Pins.Any(pin => pin.Side == "bottom") ? 8 : 0);
        int y = part.At[1] + (part.Size[1] / 2) + 4 + (part.Kind == "port" ? 0 : pins) - ((lines.Length - 1) * 7) + (part.Kind is "transformer" or "relay" ? 7 : 0);
        for (int i = 0; i < lines.Length; i++)
        {
            Text(x + (width / 2), y + (15 * i), lines[i], Small, bold: i == 0, anchor: "middle");
        }
    }

    // The wire of the tool goes in, once through the ring, and out.
    private void DrawRing(Part part)
    {
        Spot from = Layout.PlaceOf(part, part.Pins.Single(pin => pin.Name == "in"));
        Spot to = Layout.PlaceOf(part, part.Pins.Single(pin => pin.Name == "out"));
        string colour = _build.Wires.SelectMany(wire => wire.Through.Contains(part.Name) ? new[] { wire.Colour } : []).FirstOrDefault("black");
        int depth = Units(from.Y) + 20;
        int middle = (Units(from.X) + Units(to.X)) / 2;
        Ellipse(middle, depth, 9, 17);
        Line($"M{Units(from.X)} {Units(from.Y)} L{Units(from.X)} {depth} L{Units(to.X)} {depth} L{Units(to.X)} {Units(to.Y)}", colour);
    }

    private void DrawContact(Part part, string[] pins)
    {
        Spot one = Layout.PlaceOf(part, part.Pins.Single(pin => pin.Name == pins[0]));
        Spot other = Layout.PlaceOf(part, part.Pins.Single(pin => pin.Name == pins[1]));
        if (one.Y == other.Y)
        {
            int y = Units(one.Y) + 24;
            Thin($"M{Units(one.X)} {y - 6} L{Units(one.X)} {y + 6} L{Units(other.X) - 8} {y - 8} M{Units(other.X)} {y - 6} L{Units(other.X)} {y + 6}");
        }
    }

    private void DrawPins(Part part)
    {
        foreach (Pin pin in part.Pins)
        {
            Spot spot = Layout.PlaceOf(part, pin);
            if (_build.Wires.Count(wire => wire.From == part.PinName(pin) || wire.To == part.PinName(pin)) > 1)
            {
                Spot joint = spot.Next(Layout.DirectionOf(pin)).Next(Layout.DirectionOf(pin));
                Dot(Units(joint.X), Units(joint.Y), 5);
            }

            int x = Units(spot.X);
            int y = Units(spot.Y);
            Dot(x, y, 4);

            if (part.Kind == "port" || (part.Kind == "component" && part.Pins.Count == 2 && char.IsDigit(pin.Name[0])))
            {
                continue;
            }

            // The board's pins of one net have names of their own in the source; a letter tells them apart.
            string name = part.Kind == "board" && pin.Name.StartsWith("0V", StringComparison.Ordinal) ? "0V" : part.Kind == "board" && pin.Name == "5Vs" ? "5V" : pin.Name;
            switch (pin.Side)
            {
                case "left":
                    Text(x + 8, y + 4, name, Small);
                    break;
                case "right":
                    Text(x - 8, y + 4, name, Small, anchor: "end");
                    break;
                case "bottom":
                    Text(x, y - 7, name, Small, anchor: "middle");
                    break;
                default:
                    Text(part.Kind is "transformer" or "relay" ? x + (pin.Name is "in" or "11" or "21" ? -16 : 16) : x, y + 16, name, Small, anchor: "middle");
                    break;
            }
        }
    }

    private void DrawWires()
    {
        Router router = new(_build);
        List<(string Colour, IReadOnlyList<Spot> Spots)> runs = [];
        foreach (Wire wire in _build.Wires)
        {
            string at = wire.From;
            foreach (string name in wire.Through)
            {
                runs.Add((wire.Colour, Lay(router, at, $"{name}.in")));
                at = $"{name}.out";
            }

            runs.Add((wire.Colour, Lay(router, at, wire.To)));
        }

        foreach ((string colour, IReadOnlyList<Spot> spots) in runs)
        {
            Line(PathOf(spots), colour);
        }
    }

    private IReadOnlyList<Spot> Lay(Router router, string from, string to) => router.Lay(
        Layout.PlaceOf(_build, from),
        Layout.DirectionOf(_build.PinOf(from)),
        Layout.PlaceOf(_build, to),
        Layout.DirectionOf(_build.PinOf(to)));

    // A light rim keeps crossing wires apart; a white wire has a dark one.
    private void Line(string path, string colour)
    {
        Stroke(path, colour == "white" ? "#303030" : "#ffffff", colour == "white" ? 5.5 : 6.5);
        Stroke(path, InkOf(colour), 3.5);
        if (colour == "green-yellow")
        {
            Stroke(path, "#f2d500", 3.5, "8 8");
        }
    }

    private void Thin(string path) => Stroke(path, "#202020", 2);

    private void Stroke(string path, string ink, double width, string? dashes = null)
    {
        XElement line = new(
            s_svg + "path",
            new XAttribute("d", path),
            new XAttribute("fill", "none"),
            new XAttribute("stroke", ink),
            new XAttribute("stroke-width", width),
            new XAttribute("stroke-linejoin", "round"));
        if (dashes != null)
        {
            line.Add(new XAttribute("stroke-dasharray", dashes));
        }

        _root.Add(line);
    }

    private void Dot(int x, int y, int radius) => _root.Add(new XElement(
        s_svg + "circle",
        new XAttribute("cx", x),
        new XAttribute("cy", y),
        new XAttribute("r", radius),
        new XAttribute("fill", "#202020")));

    private void Ellipse(int x, int y, int halfWidth, int halfHeight) => _root.Add(new XElement(
        s_svg + "ellipse",
        new XAttribute("cx", x),
        new XAttribute("cy", y),
        new XAttribute("rx", halfWidth),
        new XAttribute("ry", halfHeight),
        new XAttribute("fill", "none"),
        new XAttribute("stroke", "#606060"),
        new XAttribute("stroke-width", 5)));

    private void Rectangle(int x, int y, int width, int height, string ground, string rim, int rimWidth = 1) => _root.Add(new XElement(
        s_svg + "rect",
        new XAttribute("x", x),
        new XAttribute("y", y),
        new XAttribute("width", width),
        new XAttribute("height", height),
        new XAttribute("fill", ground),
        new XAttribute("stroke", rim),
        new XAttribute("stroke-width", rimWidth)));

    private void Text(int x, int y, string text, int size, bool bold = false, string anchor = "start", string ink = "#101010")
    {
        XElement element = new(
            s_svg + "text",
            new XAttribute("x", x),
            new XAttribute("y", y),
            new XAttribute("font-size", size),
            new XAttribute("fill", ink),
            text);
        if (anchor != "start")
        {
            element.Add(new XAttribute("text-anchor", anchor));
        }

        if (bold)
        {
            element.Add(new XAttribute("font-weight", "bold"));
        }

        _root.Add(element);
    }

    private static IEnumerable<string> Wrap(string text, double most)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > most)
            {
                yield return line;
                line = "";
            }

            line += (line.Length > 0 ? " " : "") + word;
        }

        yield return line;
    }
}
