using System.Globalization;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>Where things are on the driver board: the console apart, the cradle's holes, parts beside their pins.</summary>
[TestClass]
public class BoardPlaceTests
{
    private const double Apart = 8.0;
    private readonly BoardFile _board = BoardFile.Read("driver");

    // Reinforced insulation at 250 V (hardware/barriers.csv). The box around all of the console's copper, on both faces.
    [TestMethod]
    public void TheConsolesCopperIsEightMillimetresFromAllElse() => Findings.AssertNone(TooNear(_board.Copper));

    [TestMethod]
    public void ATrackTooNearToTheConsoleIsFound() => Findings.AssertFound(
        "a track of 5V is 7.9 mm from the console's side",
        TooNear([.. _board.Copper, new Copper("5V", "a track", Box.Around((46.3, 5), (46.3, 20), 0.0))]));

    [TestMethod]
    public void TheGroundsFillKeepsAwayFromTheConsoleToo()
    {
        Box console = Console(_board.Copper);
        foreach ((string net, (double X, double Y)[] corners) in _board.Fills)
        {
            Assert.AreEqual("0V", net);
            for (int i = 0; i < corners.Length; i++)
            {
                (double x, double y) = corners[i];
                (double nextX, double nextY) = corners[(i + 1) % corners.Length];
                Assert.IsTrue(x == nextX || y == nextY, "The outline is not along the edges.");
                Assert.IsGreaterThanOrEqualTo(Apart, console.GapTo(Box.Around((x, y), (nextX, nextY), 0)), $"{x}, {y}");
            }

            Assert.IsFalse(IsInside(corners, console.X, console.Y), "The ground lies around the console.");
        }
    }

    // The ESP32's antenna is over it; radio is off, and still nothing should lie there (common practice, no source).
    [TestMethod]
    public void NothingLiesBelowTheAntenna()
    {
        (double X, double Y)[] corners = _board.KeptFree.Single();
        Box free = new(corners.Min(at => at.X), corners.Min(at => at.Y), corners.Max(at => at.X), corners.Max(at => at.Y));
        Findings.AssertNone(
            _board.Copper.Where(copper => copper.Box.GapTo(free) == 0).Select(copper => $"{copper.Name} {copper.Net}"));

        // The board's end is 7.6 mm beyond its first pins; the module is 18 mm wide and its antenna 6.2 mm long (Espressif's
        // drawings of the DevKitC V4 and the WROOM-32; memory).
        double middle = (PadAt("A11.1").Box.X + PadAt("A12.1").Box.X) / 2;
        double end = PadAt("A11.1").Box.Y - 7.6;
        Assert.IsLessThanOrEqualTo(middle - 8.9, free.Left);
        Assert.IsGreaterThanOrEqualTo(middle + 8.9, free.Right);
        Assert.IsLessThanOrEqualTo(end, free.Top);
        Assert.IsGreaterThanOrEqualTo(end + 6.2, free.Bottom);
    }

    [TestMethod]
    public void ItFitsTheCradle()
    {
        double[] size = Parameter("board");
        double[] hole = Parameter("board_hole");
        Assert.AreEqual((0.0, 0.0), (_board.Edge.Min(at => at.X), _board.Edge.Min(at => at.Y)));
        Assert.AreEqual((size[0], size[1]), (_board.Edge.Max(at => at.X), _board.Edge.Max(at => at.Y)));
        Pad[] holes = [.. _board.Pads.Where(pad => pad.Kind == "np_thru_hole")];
        double[] across = [hole[0], size[0] - hole[0]];
        double[] along = [hole[1], size[1] - hole[1]];
        CollectionAssert.AreEquivalent(
            across.SelectMany(x => along.Select(y => (x, y))).ToArray(),
            holes.Select(pad => (Math.Round(pad.Box.X, 3), Math.Round(pad.Box.Y, 3))).ToArray());

        // A screw of 3 mm goes through; its head of 6 mm (common practice, no source) touches no copper.
        foreach (Pad pad in holes)
        {
            Assert.IsGreaterThan(3.0, pad.Box.Right - pad.Box.Left);
            Box head = Box.Around(pad.Box.X, pad.Box.Y, 3, 3);
            Findings.AssertNone(_board.Copper.Where(copper => copper.Box.GapTo(head) == 0).Select(copper => copper.Name));
        }
    }

    // Heights of the parts' kinds above the board, mm (data sheets; memory). Below the ESP32 board 11 mm stay: socket 8.5 mm,
    // header 2.5 mm.
    [TestMethod]
    public void ThePartsAreLowEnough()
    {
        Dictionary<string, double> heights = new()
        {
            ["R_Axial"] = 2.5, ["C_Disc"] = 7, ["C_Rect"] = 11, ["CP_Radial_D8"] = 12, ["D_DO-35"] = 2, ["D_DO-15"] = 3.6,
            ["SOT-23"] = 1.1, ["SOIC"] = 2.65, ["DIP-8"] = 8.5, ["TO-92"] = 8, ["TO-220"] = 20, ["TerminalBlock"] = 10,
            ["PinSocket"] = 8.5, ["PinHeader"] = 9, ["MountingHole"] = 3,
        };
        Box first = PadAt("A11.1").Box;
        Box last = PadAt("A12.19").Box;
        Box under = new(first.Right, first.Top - 7.6, last.Left, last.Bottom + 3);
        foreach ((string part, string footprint) in _board.Parts)
        {
            double height = heights.Single(kind => footprint.Split(':')[1].StartsWith(kind.Key, StringComparison.Ordinal)).Value;
            bool isUnder = _board.Pads.Where(pad => pad.Part == part).Any(pad => under.GapTo(pad.Box) == 0);
            Assert.IsLessThanOrEqualTo(isUnder && part is not ("A11" or "A12") ? 9.0 : Parameter("board_parts")[0], height, part);
        }

        // The ESP32 board on top: 8.5 + 2.5 + 1.6 mm and its module of 3.1 mm (Espressif's data sheet of the WROOM; memory).
        Assert.IsLessThan(Parameter("board_parts")[0], 8.5 + 2.5 + 1.6 + 3.1);
    }

    // As parts.csv asks: "close to the pin", "at the plug", "at U2's supply pins". Limits: common practice, no source.
    [TestMethod]
    [DataRow("D13.3", "A11.5", 8)]
    [DataRow("C9.1", "A11.5", 12)]
    [DataRow("D23.3", "A11.6", 8)]
    [DataRow("C19.1", "A11.6", 12)]
    [DataRow("C20.1", "A11.8", 8)]
    [DataRow("C22.1", "U2.8", 8)]
    [DataRow("C24.1", "U1.3", 8)]
    [DataRow("C25.1", "U1.14", 8)]
    [DataRow("D12.1", "P3.2", 18)]
    [DataRow("D22.1", "P4.2", 18)]
    [DataRow("D25.1", "P5.1", 18)]
    [DataRow("C21.1", "P1.1", 24)]
    public void WhatMustBeCloseToAPinIs(string pad, string pin, double millimetres)
    {
        Assert.AreEqual(PadAt(pin).Net, PadAt(pad).Net);
        Assert.IsLessThan(millimetres, PadAt(pad).Box.From(PadAt(pin).Box));
    }

    // Rows 25.4 mm apart, 19 pins of 2.54 mm: ESP32-DevKitC V4, from a third party's board file, not Espressif's drawing.
    [TestMethod]
    public void TheSocketsAreAsFarApartAsTheRows()
    {
        Assert.AreEqual(25.4, PadAt("A12.1").Box.X - PadAt("A11.1").Box.X, 0.001);
        Assert.AreEqual(PadAt("A12.1").Box.Y, PadAt("A11.1").Box.Y, 0.001);
        Assert.AreEqual(18 * 2.54, PadAt("A11.19").Box.Y - PadAt("A11.1").Box.Y, 0.001);
    }

    [TestMethod]
    [DataRow("driver")]
    [DataRow("burden")]
    public void BothFacesSayUntried(string name)
    {
        (string Layer, string Words)[] texts = [.. BoardFile.Read(name).Texts];
        Assert.Contains(text => text.Layer == "F.SilkS" && text.Words.Contains("UNTRIED", StringComparison.Ordinal), texts);
        Assert.Contains(text => text.Layer == "B.SilkS" && text.Words == "UNTRIED", texts);
    }

    private static IEnumerable<string> TooNear(IReadOnlyList<Copper> all)
    {
        Box console = Console(all);
        return all.Where(one => !IsConsole(one)).Select(one => (one, Gap: one.Box.GapTo(console))).Where(pair => pair.Gap < Apart)
            .Select(pair => string.Create(
                CultureInfo.InvariantCulture, $"{pair.one.Name} of {pair.one.Net} is {pair.Gap:0.0} mm from the console's side"));
    }

    private static Box Console(IReadOnlyList<Copper> all) => Box.Around(all.Where(IsConsole).Select(one => one.Box));

    // The isolator's unused pins of that side too.
    private static bool IsConsole(Copper one) => one.Net.StartsWith("J3.", StringComparison.Ordinal)
        || one.Name is "U1.10" or "U1.11" or "U1.15";

    private static bool IsInside((double X, double Y)[] corners, double x, double y)
    {
        bool inside = false;
        for (int i = 0, j = corners.Length - 1; i < corners.Length; j = i++)
        {
            if ((corners[i].Y > y) != (corners[j].Y > y)
                && x < ((corners[j].X - corners[i].X) * (y - corners[i].Y) / (corners[j].Y - corners[i].Y)) + corners[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static double[] Parameter(string name) =>
    [
        .. Regex.Match(
            Repository.ReadText("hardware/enclosure/parameters.scad"),
            $@"^{name} = \[?([0-9., ]+)",
            RegexOptions.Multiline,
            TimeSpan.FromSeconds(1))
            .Groups[1].Value.Split(',').Select(text => double.Parse(text, CultureInfo.InvariantCulture)),
    ];

    private Pad PadAt(string name) => _board.Pads.Single(pad => pad.Name == name);
}
