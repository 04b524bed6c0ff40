using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Spectrum;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>
/// The frequency comes from the buckets of a recording, shape and harmonics from the readings that go with
/// them.
/// </summary>
[TestClass]
public sealed class BurstSpectrumTests
{
    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void A_recording_at_the_boards_pace_shows_frequency_and_harmonics_of_the_tool()
    {
        // The model's universal motor has a third harmonic of 15 %, as the published ones of vacuums have it, and none that is
        // even.
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 6), 20, [], 6, 18);
        day.Pace = Pace.Esp32();
        day.Shop.Hertz = 50.13;
        BoardRecording recording = BoardRecording.Parse(ShopRecorder.Record(day, isTimed: true).Split('\n'), "test");
        MainsSpectrum spectrum = MainsSpectrum.Of(recording.Wave, recording.Shapes);
        string harmonics = string.Join(", ", spectrum.Amperes.Select(ampere => $"{100 * ampere / spectrum.Amperes[0]:0.0}"));
        TestContext.WriteLine($"{spectrum.Hertz:0.000} Hz, {spectrum.Cycles:0.0} cycles; {harmonics} %");
        Assert.IsFalse(spectrum.IsOfBuckets);
        Assert.AreEqual(50.13, spectrum.Hertz, 0.05);
        Assert.AreEqual(6, spectrum.Amperes[0], 0.3);
        Assert.IsGreaterThanOrEqualTo(3, spectrum.Amperes.Length);

        // Noise in a hundred readings with holes among them makes a harmonic up to two and a half in a hundred wrong.
        Assert.AreEqual(0.15, spectrum.Amperes[2] / spectrum.Amperes[0], 0.025);
        Assert.AreEqual(0, spectrum.Amperes[1] / spectrum.Amperes[0], 0.025);
    }
}
