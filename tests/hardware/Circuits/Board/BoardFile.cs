using System.Globalization;

namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>A board of hardware/circuits/board, read without KiCad. Lengths in mm.</summary>
internal sealed class BoardFile
{
    private readonly List<object> _root;

    private BoardFile(string text)
    {
        _root = Brackets.Read(text);
        Pads = [.. Brackets.Named(_root, "footprint").SelectMany(PadsOf)];
        Dictionary<string, string> names =
            Brackets.Named(_root, "net").ToDictionary(net => (string)net[1], net => (string)net[2]);
        Copper =
        [
            .. Pads.Where(pad => pad.Kind != "np_thru_hole").Select(pad => new Copper(pad.Net, pad.Name, pad.Box)),
            .. Brackets.Named(_root, "segment").Select(track => new Copper(
                names[Word(track, "net")],
                "a track",
                Box.Around(Point(track, "start"), Point(track, "end"), Number(track, "width") / 2))),
            .. Brackets.Named(_root, "via").Select(via => new Copper(
                names[Word(via, "net")], "a via", Box.Around(Point(via, "at"), Point(via, "at"), Number(via, "size") / 2))),
        ];
    }

    public IReadOnlyList<Pad> Pads { get; }

    /// <summary>Pads, tracks and vias, each with a box around it; the ground's fill is in <see cref="Fills"/>.</summary>
    public IReadOnlyList<Copper> Copper { get; }

    /// <summary>Corners of the outlines that ground may fill.</summary>
    public IEnumerable<(string Net, (double X, double Y)[] Corners)> Fills =>
        Brackets.Named(_root, "zone").Where(zone => Word(zone, "net_name") != "")
            .Select(zone => (Word(zone, "net_name"), CornersOf(zone)));

    /// <summary>Places where no copper may be.</summary>
    public IEnumerable<(double X, double Y)[]> KeptFree =>
        Brackets.Named(_root, "zone").Where(zone => Brackets.Named(zone, "keepout").Any()).Select(CornersOf);

    /// <summary>Ends of the lines of the board's edge.</summary>
    public IEnumerable<(double X, double Y)> Edge =>
        Brackets.Named(_root, "gr_line").Where(line => Word(line, "layer") == "Edge.Cuts")
            .SelectMany(line => new[] { Point(line, "start"), Point(line, "end") });

    /// <summary>What is printed on either face, but for the parts' names.</summary>
    public IEnumerable<(string Layer, string Words)> Texts =>
        Brackets.Named(_root, "gr_text").Select(text => (Word(text, "layer"), (string)text[1]));

    /// <summary>Kind and library of each part.</summary>
    public IEnumerable<(string Part, string Footprint)> Parts =>
        Brackets.Named(_root, "footprint").Select(footprint => (ReferenceOf(footprint), (string)footprint[1]));

    public static BoardFile Read(string name) => new(Repository.ReadText($"hardware/circuits/board/{name}.kicad_pcb"));

    private static IEnumerable<Pad> PadsOf(List<object> footprint)
    {
        List<object> at = Brackets.Named(footprint, "at").First();
        double turn = at.Count > 3 ? Value(at[3]) * Math.PI / 180 : 0;
        foreach (List<object> pad in Brackets.Named(footprint, "pad"))
        {
            (double x, double y) = Point(pad, "at");
            List<object> size = Brackets.Named(pad, "size").First();
            bool isAcross = Math.Abs(Math.Sin(turn)) > 0.5;
            (double wide, double high) = (Value(size[1]) / 2, Value(size[2]) / 2);
            Box box = Box.Around(
                Value(at[1]) + (x * Math.Cos(turn)) + (y * Math.Sin(turn)),
                Value(at[2]) - (x * Math.Sin(turn)) + (y * Math.Cos(turn)),
                isAcross ? high : wide,
                isAcross ? wide : high);
            string net = Brackets.Named(pad, "net").Select(list => (string)list[2]).FirstOrDefault("");
            yield return new Pad(ReferenceOf(footprint), (string)pad[1], (string)pad[2], net, box);
        }
    }

    private static string ReferenceOf(List<object> footprint) =>
        (string)Brackets.Named(footprint, "fp_text").First(text => (string)text[1] == "reference")[2];

    private static (double X, double Y)[] CornersOf(List<object> zone) =>
        [
            .. Brackets.Named(Brackets.Named(Brackets.Named(zone, "polygon").First(), "pts").First(), "xy")
                .Select(xy => (Value(xy[1]), Value(xy[2]))),
        ];

    private static string Word(List<object> list, string name) => (string)Brackets.Named(list, name).First()[1];

    private static double Number(List<object> list, string name) => Value(Brackets.Named(list, name).First()[1]);

    private static (double X, double Y) Point(List<object> list, string name)
    {
        List<object> point = Brackets.Named(list, name).First();
        return (Value(point[1]), Value(point[2]));
    }

    private static double Value(object word) => double.Parse((string)word, CultureInfo.InvariantCulture);
}
