using NanoDustSwitch.Drawing.Netlists;

namespace NanoDustSwitch.Drawing.Sheets;

/// <summary>Draws a build as SVG.</summary>
internal sealed class Sheet(Build build)
{
    private const int Small = 12;
    private const string Footer =
        "Mains can kill, start a fire, and start a blade. Local codes and licensed practice come first. "
        + "Pull every plug before the box is opened. The box isolates nothing.";

    private readonly Canvas _canvas = new(build.Size[0], build.Size[1]);

    public string Draw()
    {
        _canvas.Rectangle([0, 0], build.Size, "white", "none");
        foreach (Zone zone in build.Zones)
        {
            DrawZone(zone);
        }

        DrawTitle();
        foreach (Part part in build.Parts)
        {
            DrawPart(part);
        }

        DrawWires();
        foreach (Part part in build.Parts)
        {
            DrawPins(part);
        }

        return _canvas.ToString();
    }

    private static int Units(int grid) => grid * Layout.Grid;

    private static string PathOf(IEnumerable<Spot> spots) =>
        "M" + string.Join(" L", spots.Select(spot => $"{Units(spot.X)} {Units(spot.Y)}"));

    private void DrawTitle()
    {
        _canvas.Text(20, 30, build.Title, 22, bold: true);
        for (int i = 0; i < build.Notes.Length; i++)
        {
            _canvas.Text(20, 52 + (20 * i), build.Notes[i], 14);
        }

        _canvas.Text(20, build.Size[1] - 8, Footer, 13, bold: true, ink: "#b01010");
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
        _canvas.Rectangle(zone.At, zone.Size, ground, rim);
        if (zone.Kind == "barrier")
        {
            int right = zone.At[0] + zone.Size[0] - 10;
            string[] lines = ["barrier", "8 mm and reinforced", "or double insulation:", "hardware/barriers.csv"];
            for (int i = 0; i < lines.Length; i++)
            {
                _canvas.Text(right, zone.At[1] + 30 + (18 * i), lines[i], Small + 1, bold: i == 0, anchor: "end", ink: "#a02010");
            }
        }
        else
        {
            // The wires that come through the barrier would cross a text at the top.
            int y = zone.At[1] + (zone.Kind == "elv" ? zone.Size[1] - 10 : 20);
            _canvas.Text(zone.At[0] + 10, y, zone.Text, 14, bold: true, ink: "#505050");
        }
    }

    private void DrawPart(Part part)
    {
        _canvas.Rectangle(part.At, part.Size, "white", part.Kind == "metal" ? "#1d9a3c" : "#202020", part.Touch ? 3 : 2);
        if (part.Kind == "transformer")
        {
            DrawRing(part);
        }

        foreach (string contact in part.Contacts.Where(_ => part.Kind is "relay" or "contactor"))
        {
            DrawContact(part, contact.Split('-'));
        }

        // Words stay clear of the pins' names on the sides.
        int inset = part.Kind == "metal" ? 34 : 40;
        int left = HasPinsAt(part, "left") ? inset : 6;
        int width = part.Size[0] - left - (HasPinsAt(part, "right") ? inset : 6);
        string[] lines = part.Text.Length == 0 ? [part.Name] : [part.Name, .. Wrap(part.Text, width / 6.6)];
        int pins = (HasPinsAt(part, "top") ? 8 : 0) - (HasPinsAt(part, "bottom") ? 8 : 0);
        int lowered = part.Kind is "transformer" or "relay" or "contactor" ? pins + 7 : pins;
        int y = part.At[1] + (part.Size[1] / 2) + 4 + lowered - ((lines.Length - 1) * 7);
        for (int i = 0; i < lines.Length; i++)
        {
            _canvas.Text(part.At[0] + left + (width / 2), y + (15 * i), lines[i], Small, bold: i == 0, anchor: "middle");
        }
    }

    private static bool HasPinsAt(Part part, string side) => part.Pins.Any(pin => pin.Side == side);

    // The wire of the tool goes in, once through the ring, and out.
    private void DrawRing(Part part)
    {
        Spot from = Layout.PlaceOf(build, $"{part.Name}.in");
        Spot to = Layout.PlaceOf(build, $"{part.Name}.out");
        string colour = build.Wires.FirstOrDefault(wire => wire.Through.Contains(part.Name))?.Colour ?? "black";
        int depth = Units(from.Y) + 20;
        int middle = (Units(from.X) + Units(to.X)) / 2;
        _canvas.Ring(middle, depth, 9, 17);
        _canvas.Wire(
            $"M{Units(from.X)} {Units(from.Y)} L{Units(from.X)} {depth} L{Units(to.X)} {depth} L{Units(to.X)} {Units(to.Y)}",
            colour);
    }

    private void DrawContact(Part part, string[] pins)
    {
        Spot one = Layout.PlaceOf(build, $"{part.Name}.{pins[0]}");
        Spot other = Layout.PlaceOf(build, $"{part.Name}.{pins[^1]}");
        if (one.Y == other.Y)
        {
            (int x, int otherX, int y) = (Units(one.X), Units(other.X), Units(one.Y) + 24);
            string path = $"M{x} {y - 6} L{x} {y + 6} L{otherX - 8} {y - 8} M{otherX} {y - 6} L{otherX} {y + 6}";
            _canvas.Stroke(path, "#202020", 2);
        }
    }

    private void DrawPins(Part part)
    {
        foreach (Pin pin in part.Pins)
        {
            Spot spot = Layout.PlaceOf(part, pin);
            if (build.Wires.Count(wire => wire.From == part.PinName(pin) || wire.To == part.PinName(pin)) > 1)
            {
                Spot joint = spot.Next(Layout.DirectionOf(pin)).Next(Layout.DirectionOf(pin));
                _canvas.Dot(Units(joint.X), Units(joint.Y), 5);
            }

            int x = Units(spot.X);
            int y = Units(spot.Y);
            _canvas.Dot(x, y, 4);

            string name = ShownName(part, pin);
            int aside = part.Kind is not ("transformer" or "relay" or "contactor") ? 0
                : pin.Name is "in" or "11" or "21" ? -16 : 16;
            (int right, int down, string? anchor) = pin.Side switch
            {
                "left" => (8, 4, null),
                "right" => (-8, 4, "end"),
                "bottom" => (0, -7, "middle"),
                _ => (aside, 16, "middle"),
            };
            _canvas.Text(x + right, y + down, name, Small, anchor: anchor);
        }
    }

    // The board's pins of one net have names of their own in the source; a letter tells them apart.
    private static string ShownName(Part part, Pin pin) =>
        part.Kind != "board" ? pin.Name
        : pin.Name.StartsWith("0V", StringComparison.Ordinal) ? "0V"
        : pin.Name == "5Vs" ? "5V"
        : pin.Name;

    private void DrawWires()
    {
        Router router = new(build);
        foreach (Wire wire in build.Wires)
        {
            string at = wire.From;
            foreach (string name in wire.Through)
            {
                _canvas.Wire(PathOf(router.Lay(at, $"{name}.in")), wire.Colour);
                at = $"{name}.out";
            }

            _canvas.Wire(PathOf(router.Lay(at, wire.To)), wire.Colour);
        }
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
