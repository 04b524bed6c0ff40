using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Spectrum;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>The frequency comes from the buckets of a recording, shape and harmonics from the readings that go with them.</summary>
[TestClass]
public sealed class BurstSpectrumTests
{
    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void A_recording_at_the_boards_pace_shows_frequency_and_harmonics_of_the_tool()
    {
        // The model's universal motor has a third harmonic of 15 %, as the published ones of vacuums have it, and none that is even.
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 20, [], 6, 18);
        day.Pace = Pace.Esp32();
        day.Shop.Hertz = 50.13;
        BoardRecording recording = Record(day);
        MainsSpectrum spectrum = MainsSpectrum.Of(recording.Wave, recording.Shapes);
        TestContext.WriteLine($"{spectrum.Hertz:0.000} Hz, {spectrum.Cycles:0.0} cycles; {string.Join(", ", spectrum.Amperes.Select(ampere => $"{100 * ampere / spectrum.Amperes[0]:0.0}"))} %");
        Assert.IsFalse(spectrum.IsOfBuckets);
        Assert.AreEqual(50.13, spectrum.Hertz, 0.05);
        Assert.AreEqual(6, spectrum.Amperes[0], 0.3);
        Assert.IsInRange(0.13, 0.17, spectrum.Amperes[2] / spectrum.Amperes[0]);
        Assert.IsGreaterThanOrEqualTo(3, spectrum.Amperes.Length);
        // Noise in a hundred readings with holes among them leaves up to two in a hundred where there is nothing.
        Assert.IsLessThan(0.025, spectrum.Amperes[1] / spectrum.Amperes[0]);
    }

    private static BoardRecording Record(Day day)
    {
        VirtualShop shop = ShopBuilder.Build(day, 5);
        Person person = new(day, 5, shop, []);
        Rig rig = new(new PcBoard(new ShopLine(shop, person), day.Pace.Clock(5), FlashImage.Blank(), day.Pace.Time(5)));
        rig.RunUntil(2_000_000);
        rig.Board.Serial.TakeSent();
        rig.Board.Serial.Type("record\r");
        rig.RunUntil(20_000_000);
        rig.Board.Serial.Type(" ");
        rig.RunUntilAnswered();
        return BoardRecording.Parse(SentText.Of(rig.Board.Serial.TakeSent()).Split('\n'), "test");
    }
}
