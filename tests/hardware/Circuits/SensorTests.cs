using System.Globalization;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;

namespace NanoDustSwitch.HardwareTests.Circuits;

/// <summary>
/// The sensors' circuits against the virtual shop's models, which all days and figures of the firmware rest on.
/// </summary>
[TestClass]
public class SensorTests
{
    private const double MillivoltsACount = 0.806;

    // The band of firmware/switch/Board/Converters.cs, in which a sensor in order rests, mV.
    private const double LeastRest = 850.0;
    private const double GreatestRest = 1750.0;

    // Below this the ESP32's converter reads 0: half of the lower end of its usable band, 150 mV (Espressif ESP-IDF; the half is
    // the virtual shop's).
    private const double Rail = 0.075;

    [TestMethod]
    [DataRow(SensorKind.Transformer, "transformer", 50)]
    [DataRow(SensorKind.Transformer, "transformer", 60)]
    [DataRow(SensorKind.Hall, "hall", 50)]
    [DataRow(SensorKind.Hall, "hall", 60)]
    public void CountsForAnAmpereAndTheRestAreThoseOfTheVirtualShop(SensorKind kind, string name, int frequency)
    {
        Circuit circuit = Circuit.Run(name, $"amps=10 frequency={frequency}");
        (double top, double bottom) = Modelled(kind, 10.0, frequency);

        // Limits: 1 % of the swing, 10 mV of the rest, which is a fiftieth of the band of the resting point.
        Assert.AreEqual(top - bottom, Counts(circuit["top"]) - Counts(circuit["bottom"]), 0.01 * (top - bottom));
        Assert.AreEqual((top + bottom) / 2.0, Counts(circuit["rest"]), 10.0 / MillivoltsACount);
    }

    // 29 counts/A, from 2000 : 1 (transformer of 100 A : 50 mA, data sheet), 47 ohm and 12 bits of 3.3 V.
    [TestMethod]
    public void TheTransformerGives29CountsForAnAmpere()
    {
        Circuit circuit = Circuit.Run("transformer", "amps=10");
        double swing = Counts(circuit["top"]) - Counts(circuit["bottom"]);
        Assert.AreEqual(29.2, swing / (2.0 * Math.Sqrt(2.0) * 10.0), 0.3);
    }

    // The sizing program's models: within 1 % of the gain, 30 mV of the rest (a tenth of the way to the band's end).
    [TestMethod]
    [DataRow("transformer-100A", "transformer")]
    [DataRow("hall-20A", "hall")]
    public void GainAndRestAreThoseOfTheSizingProgram(string model, string name)
    {
        SensorModel sensor = SensorModels.All.Single(one => one.Name == model);
        Circuit circuit = Circuit.Run(name, "amps=10");
        double gain = 1000.0 * (circuit["top"] - circuit["bottom"]) / (2.0 * Math.Sqrt(2.0) * 10.0);
        Assert.AreEqual(sensor.MillivoltsPerAmpere, gain, 0.01 * gain);
        Assert.AreEqual(sensor.Rest.Millivolts, 1000.0 * circuit["rest"], 30.0);
    }

    [TestMethod]
    [DataRow(0.5)]
    [DataRow(3.0)]
    public void AtTheFilterNoToolIsLost(double amps)
    {
        // 300 Hz stands for the 1.5 ms pulses of a brushless tool: less than a twentieth lost.
        double slow = Swing(Circuit.Run("transformer", $"amps={amps} frequency=60"));
        double fast = Swing(Circuit.Run("transformer", $"amps={amps} frequency=300"));
        Assert.IsInRange(0.95, 1.0, fast / slow);
    }

    // The filter of 10 kohm and 10 nF, a pole at 1592 Hz: 20 lg sqrt(1 + (f / 1592 Hz)²) (textbook). The page argues from these.
    [TestMethod]
    [DataRow(1000, 1.4)]
    [DataRow(2000, 4.1)]
    [DataRow(20000, 22.0)]
    public void TheFilterTakesAwayWhatThePageSays(int frequency, double decibels)
    {
        double slow = Swing(Circuit.Run("transformer", "amps=3 frequency=60"));
        double fast = Swing(Circuit.Run("transformer", $"amps=3 frequency={frequency} step=5u"));
        Assert.AreEqual(decibels, 20.0 * Math.Log10(slow / fast), 0.1);
        Assert.Contains(
            $"{decibels.ToString("0.#", CultureInfo.InvariantCulture)} dB at {frequency / 1000} kHz",
            Repository.ReadText("hardware/circuits/README.md"));
    }

    // What the sheet's line 10 rests on: winding W alone, and W and 47 ohm side by side. Where the burden is missing or the
    // winding open the reading is more than a tenth off, for windings of 10 to 300 ohm (data sheets; memory).
    [TestMethod]
    public void TheCheckOfTheBurdenFindsABareWindingAndABareBurden()
    {
        const double Burden = 47.0;
        for (double winding = 10.0; winding <= 300.0; winding += 10.0)
        {
            double both = winding * Burden / (winding + Burden);
            Assert.IsGreaterThan(1.1 * both, winding, "no burden");
            Assert.IsGreaterThan(1.1 * both, Burden, "no winding");
        }

        string page = Repository.ReadText("hardware/README.md");
        Assert.Contains("W × 47 / (W + 47)", page);
        Assert.Contains($"100 Ω and 47 Ω give {100.0 * Burden / (100.0 + Burden):0} Ω", page);
    }

    // Clipping: from where the converter's pin would leave 0 to 3.3 V. About 47 A peak (shared figures of the design).
    [TestMethod]
    public void TheTransformerClipsNear47AmperesPeak()
    {
        Assert.IsGreaterThan(Rail, Circuit.Run("transformer", $"amps={46.0 / Math.Sqrt(2.0)}")["bottom"]);
        Assert.IsLessThan(2.45, Circuit.Run("transformer", $"amps={46.0 / Math.Sqrt(2.0)}")["top"]);
        Assert.IsLessThan(Rail, Circuit.Run("transformer", $"amps={54.0 / Math.Sqrt(2.0)}")["bottom"]);
    }

    // The Hall module ends at its supply's rails, the virtual shop's at 25 A: within 1 %.
    [TestMethod]
    public void TheHallModuleClipsWhereTheVirtualShopsDoes()
    {
        Circuit circuit = Circuit.Run("hall", "amps=40");
        (double top, double bottom) = Modelled(SensorKind.Hall, 40.0, 60);
        Assert.AreEqual(top, Counts(circuit["top"]), 0.01 * top);
        Assert.AreEqual(bottom, Counts(circuit["bottom"]), 5.0);
    }

    // Supply of the board 3 %, of the module 5 %, resistors 1 % (common practice, no source).
    [TestMethod]
    [DataRow("transformer", "logic=3.2")]
    [DataRow("transformer", "logic=3.4")]
    [DataRow("transformer", "logic=3.2 r=1.02")]
    [DataRow("transformer", "logic=3.4 r=0.98 leak=5 temp=70")]
    [DataRow("hall", "supply=4.75 r=1.02")]
    [DataRow("hall", "supply=5.25 r=0.98")]
    public void AtTheSupplysLimitsTheRestStaysInItsBand(string name, string changes)
    {
        Circuit circuit = Circuit.Run(name, $"amps=0 {changes}");
        Assert.IsInRange(LeastRest + 100.0, GreatestRest - 100.0, circuit["rest"] * 1000.0);
    }

    [TestMethod]
    [DataRow("transformer", "plugged=0")]
    [DataRow("transformer", "plugged=0 logic=3.4 leak=5 temp=70")]
    [DataRow("hall", "plugged=0")]
    public void AnUnpluggedSensorReadsTheRail(string name, string changes)
    {
        Circuit circuit = Circuit.Run(name, $"amps=10 {changes}");
        Assert.IsLessThan(Rail, circuit["top"]);
        Assert.IsLessThan(Rail, circuit["rest"]);
        Assert.AreEqual(0, new Converter(new ShopRandom(1, 1)).Convert(circuit["rest"] * 1000.0));
    }

    // Pin limits: -0.3 to 3.6 V (ESP32 data sheet; memory). {start} 1 is a start whose first cycle is fully offset.
    [TestMethod]
    [DataRow("transformer", "amps=40 start=1")]
    [DataRow("transformer", "amps=40 start=1 temp=-10")]
    [DataRow("transformer", "amps=40 start=1 temp=70 leak=5")]
    [DataRow("transformer", "amps=40 start=1 turns=2")]
    [DataRow("transformer", "amps=1000 start=1")]
    [DataRow("transformer", "amps=40 start=1 logic=0")]
    [DataRow("transformer", "amps=40 start=1 burden=1e9")]
    [DataRow("transformer", "amps=0 esd=8000")]
    [DataRow("transformer", "amps=0 esd=-8000")]
    [DataRow("transformer", "amps=0 esd=15000")]
    [DataRow("transformer", "amps=0 esd=-15000")]
    [DataRow("hall", "amps=40 start=1")]
    [DataRow("hall", "amps=40 start=1 supply=5.25")]
    [DataRow("hall", "amps=40 start=1 supply=5.25 lost=1 temp=-10")]
    public void ThePinStaysWithinItsLimits(string name, string changes)
    {
        Circuit circuit = Circuit.Run(name, changes);
        Assert.IsInRange(-0.3, 3.6, circuit["highest"]);
        Assert.IsInRange(-0.3, 3.6, circuit["lowest"]);
    }

    // A transformer with an open winding makes a dangerous voltage; the clamps beside it hold it to that of a toy.
    [TestMethod]
    public void ALooseBurdenMakesNoDangerousVoltage()
    {
        Assert.IsLessThan(10.0, Circuit.Run("transformer", "amps=40 start=1 burden=1e9")["winding"]);
        Assert.IsLessThan(1.0, Circuit.Run("transformer", "amps=10")["winding"]);
    }

    // The vacuum's own wire: the same circuit on GPIO35. A vacuum of 8 A with two turns shows twice the swing.
    [TestMethod]
    public void TheVacuumsTransformerCountsItsTurns()
    {
        double once = Swing(Circuit.Run("transformer", "amps=8"));
        Assert.AreEqual(2.0, Swing(Circuit.Run("transformer", "amps=8 turns=2")) / once, 0.01);
    }

    private static double Counts(double volts) => volts * 1000.0 / MillivoltsACount;

    private static double Swing(Circuit circuit) => circuit["top"] - circuit["bottom"];

    // Top and bottom of what the virtual shop's converter gives, without noise and without its bow.
    private static (double Top, double Bottom) Modelled(SensorKind kind, double amps, double frequency)
    {
        ShopRandom random = new(1, 1);
        CurrentSensor sensor = new(kind, random) { NoiseAmperes = 0.0 };
        Converter converter = new(random) { BowCounts = 0.0 };
        double top = double.MinValue;
        double bottom = double.MaxValue;
        for (long now = 0; now < 3_000_000; now += 100)
        {
            sensor.Follow(now, amps * Math.Sqrt(2.0) * Math.Sin(2.0 * Math.PI * frequency * now * 1e-6), 0.0, default);
            if (now > 2_000_000)
            {
                double count = converter.Convert(sensor.Millivolts());
                top = Math.Max(top, count);
                bottom = Math.Min(bottom, count);
            }
        }

        return (top, bottom);
    }
}
