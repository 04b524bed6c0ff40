namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>Which pin of a package is what, from data sheets: by these the floor plan gives each pin its pad.</summary>
[TestClass]
public class PinOrderTests
{
    private static readonly Dictionary<string, string> s_plan = Csv.Rows("hardware/circuits/board/driver.csv")
        .SelectMany(row => row["pads"].Split(';')).Select(element => element.Split('='))
        .ToDictionary(one => one[0], one => one[1]);

    [TestMethod]
    // drain gate source (and body): TO-220 of a P-channel power transistor is gate, drain, source (IRF9540N; KiCad's symbol).
    [DataRow("Q2", "2 1 3 3")]
    // drain gate source: TO-92 of BS170, style 30: 1 drain, 2 gate, 3 source (onsemi BS170/D, pin assignment; read). A 2N7000
    // is the other way round.
    [DataRow("Q3", "1 2 3 3")]
    // collector base emitter: TO-92 of 2N3904: 3 collector, 2 base (onsemi 2N3903/D, symbol; read), so 1 emitter.
    [DataRow("Q4", "3 2 1")]
    // + - out supply: DIP-8 of MCP6542: 1 out, 2 -, 3 +, 4 ground, 5 +, 6 -, 7 out, 8 supply (Microchip DS21696, package
    // types; read). TI TLV3202 is alike (SBOS561, table of pins; read).
    [DataRow("U2A", "3 2 1 8")]
    [DataRow("U2B", "5 6 7 8")]
    [DataRow("U2", "4")]
    // anode cathode: SOT-23 of BAT54S: 1 anode, 2 cathode, 3 both others (Diodes Inc. ds11005; its figure read).
    [DataRow("D1A", "1 3")]
    [DataRow("D1B", "3 2")]
    [DataRow("D13A", "1 3")]
    [DataRow("D13B", "3 2")]
    [DataRow("D23A", "1 3")]
    [DataRow("D23B", "3 2")]
    // The list's order of U1's pins, wide SO-16 of ISO7721 (TI SLLSEP3G, table of pins; read): ground 1 7, supply 3, out 4, in 5,
    // and on the far side ground 9 16, out 12, in 13, supply 14.
    [DataRow("U1", "1 3 4 5 7 9 12 13 14 16")]
    // The ESP32 board: 3V3 EN - - 34 35 - 33 25 26 27 - - ground - - - - 5V, and ground 23 22 - - - ground (Espressif,
    // ESP32-DevKitC V4, header block; read).
    [DataRow("A11", "1 2 5 6 8 9 10 11 14 19")]
    [DataRow("A12", "1 2 3 7")]
    public void ThePinsAreTheDataSheets(string element, string pads) => Assert.AreEqual(pads, s_plan[element]);

    // Anode cathode: pad 1 of a diode in a row of two is the cathode (KiCad's library convention), 1 of C21 is plus.
    [TestMethod]
    public void ADiodesFirstPadIsItsCathode()
    {
        foreach (string diode in new[] { "D5", "D6", "D8", "D12", "D22", "D25", "D28" })
        {
            Assert.AreEqual("2 1", s_plan[diode], diode);
        }

        Assert.AreEqual("1 2", s_plan["C21"]);
    }
}
