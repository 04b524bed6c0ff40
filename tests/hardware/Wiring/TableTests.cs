using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using NanoDustSwitch.Esp32;

namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>The tables of pins and of parts against the firmware and the builds.</summary>
[TestClass]
public class TableTests : BuildTest
{
    private static readonly TimeSpan s_second = TimeSpan.FromSeconds(1);

    [TestMethod]
    public void TheTableOfPinsIsThePlanOfTheFirmware()
    {
        List<string> table = [];
        foreach (IDictionary<string, string> row in Csv.Rows("hardware/pins.csv"))
        {
            table.Add($"{row["name"]} {row["gpio"]}");
            if (row["channel"] != "")
            {
                table.Add($"{row["channel_name"]} {row["channel"]}");
            }
        }

        FieldInfo[] fields = typeof(PinPlan).GetFields(BindingFlags.Public | BindingFlags.Static);
        CollectionAssert.AreEquivalent(fields.Select(field => $"{field.Name} {field.GetRawConstantValue()}").ToArray(), table);
    }

    // GPIO25 goes to the driver on the same board and leaves it as the coil's two wires.
    [TestMethod]
    [DynamicData(nameof(Builds))]
    public void EveryPinOfTheBoardGoesToThePartOfTheTable(string name)
    {
        Build build = BuildFiles.Load(name);
        Connections closed = new(build, closed: true);
        foreach (IDictionary<string, string> row in Csv.Rows("hardware/pins.csv"))
        {
            string pin = row["gpio"] == "25" ? "A1.K+" : $"A1.GPIO{row["gpio"]}";
            string[] parts =
            [
                .. build.Parts.Where(part => part.Kind is not ("board" or "plug-in" or "burden"))
                    .Where(part => part.Pins.Any(one => closed.Joined(part.PinName(one), pin)))
                    .Select(part => part.Name),
            ];
            // Where nothing of the mains is wired the bought unit stands in the relay's place.
            string part = row["part"] == "K1" && name == BuildFiles.ReadyMade ? "SU1" : row["part"];
            CollectionAssert.AreEqual(new[] { part }, parts, pin);
        }
    }

    [TestMethod]
    public void EveryPartOfTheBuildsIsOnTheListWithARating()
    {
        IDictionary<string, string>[] rows = Csv.Rows("hardware/parts.csv");
        string[] listed = [.. rows.Select(row => row["part"])];
        string[] built = [.. BuildFiles.Parts.Where(part => part.PartOf == "").Select(part => part.Name)];
        Findings.AssertNone(built.Except(listed).Select(part => $"{part} is not on the list"));
        Findings.AssertNone(listed.Where(part => Regex.IsMatch(part, @"^[A-Z]{1,2}\d+$", RegexOptions.None, s_second))
            .Except(built).Select(part => $"{part} is in no drawing"));
        Findings.AssertNone(rows.Where(row => row["rating"].Length < 10).Select(row => $"{row["part"]} has no rating"));
        Findings.AssertNone(rows.Where(row => row["mark"] is not ("yes" or "no"))
            .Select(row => $"{row["part"]} needs a mark or not?"));
    }

    // What carries mains, and what stands between mains and a hand, bears an approval mark: the transformer too, whose housing is
    // one of the two insulations around the tool's wire. The stud and what is at extra-low voltage need none.
    [TestMethod]
    public void WhatCarriesMainsOrInsulatesItNeedsAMark()
    {
        Dictionary<string, string> marks = Csv.Rows("hardware/parts.csv").ToDictionary(row => row["part"], row => row["mark"]);
        foreach (Part part in BuildFiles.Parts)
        {
            bool carriesMains = part.Pins.Any(pin => pin.Island == "mains");
            Assert.AreEqual(
                carriesMains || part.Kind is "metal" or "isolator" or "bleed" ? "yes" : "no",
                marks[part.PartOf == "" ? part.Name : part.PartOf],
                part.Name);
        }
    }

    // Whoever buys by the list must find there what the table of barriers rests on.
    [TestMethod]
    public void TheListAsksForTheTestVoltageOfEveryBarrier()
    {
        Dictionary<string, string> ratings =
            Csv.Rows("hardware/parts.csv").ToDictionary(row => row["part"], row => row["rating"]);
        foreach (Barrier row in Barrier.Table().Where(row => row.Strength == 2 && !row.Between.StartsWith("touch ")))
        {
            Assert.Contains($"{row.TestVolts / 1000} kV", ratings[row.Part], row.Part);
        }
    }

    // 470 + 470 kΩ.
    [TestMethod]
    public void TheBleedIs940Kilohms()
    {
        const string Sum = "940 kΩ";
        Findings.AssertNone(BuildFiles.Parts.Where(part => part.Kind == "bleed" && !part.Text.StartsWith(Sum))
            .Select(part => part.Text));
        Assert.Contains($"{Sum} of two 470 kΩ", Csv.Rows("hardware/parts.csv").Single(row => row["part"] == "Q1")["rating"]);
        Assert.StartsWith(Sum, Barrier.Table().Single(row => row.Part == "Q1").Kind);
    }

    // As many as the largest build needs: a ferrule on every mains end but those in plug, socket and hole; a lug on every wire of
    // the stud, and at box and lid; a tie near each of them, and three at the transformer.
    [TestMethod]
    public void TheListCountsFerrulesLugsAndTies()
    {
        Dictionary<string, int> counts = Csv.Rows("hardware/parts.csv")
            .ToDictionary(row => row["part"], row => int.Parse(row["quantity"], CultureInfo.InvariantCulture));
        int ferrules = BuildFiles.Names.Max(name => Ends(name, "mains", "plug", "outlet", "transformer"));
        int lugs = BuildFiles.Names.Max(name => Ends(name, "earth", "plug", "outlet", "bleed"));
        Assert.AreEqual(ferrules, counts["ferrule"]);
        Assert.AreEqual(lugs, counts["ring lug"]);
        Assert.AreEqual(ferrules + lugs + 3, counts["cable tie"]);

        static int Ends(string name, string island, params string[] others) => BuildFiles.Load(name).Parts
            .Where(part => part.Box == "vacuum" && !others.Contains(part.Kind))
            .Sum(part => part.Pins.Count(pin => pin.Island == island));
    }

    // 0.1 µF across an open contact: U · 2πfC (textbook). Why there is none: as much as a class A residual-current device trips
    // at (4 to 6 mA, UL 943; read), and more than the 3.5 mA of an appliance test where earth carries it (VDE 0701-0702; read).
    [TestMethod]
    [DataRow(120.0, 60.0, "4.5 mA at 120 V")]
    [DataRow(230.0, 50.0, "7.2 mA at 230 V")]
    public void TheLeakOfContactSuppressionIsThatOfThePage(double volts, double hertz, string said)
    {
        double milliamperes = volts * 2.0 * Math.PI * hertz * 0.1e-6 * 1000.0;
        Assert.Contains(said, Repository.ReadText("hardware/wiring/README.md"), StringComparison.Ordinal);
        Assert.StartsWith($"{milliamperes:0.0} mA", said, StringComparison.Ordinal);
    }
}
