using System.Text;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>A radio beside the sensor's lead, as a day file brings it in.</summary>
[TestClass]
public sealed class RadioTests
{
    // A slot in a frame: 577 of 4615 µs (GSM, from memory).
    private const double Share = 577.0 / 4615;

    [TestMethod]
    public void A_day_switches_it_on_and_off_and_its_bursts_are_seen()
    {
        Day day = Parse("""{ "at": 1, "do": "radio", "amperes": 2, "seconds": 3 }""");
        day.NoiseAmperes = 0;
        VirtualShop shop = ShopBuilder.Build(day, 1);
        List<Entry> timeline = [];
        Person person = new(day, 1, shop, timeline);
        person.Act(person.Due);
        int high = 0;
        const int Looks = 100_000;
        for (int i = 1; i <= Looks; i++)
        {
            long now = person.Due - 3_000_000 + (i * 20L);
            shop.Advance(now);
            double amperes = (shop.Sensor.Millivolts() - shop.Sensor.RestMillivolts) / shop.Sensor.MillivoltsPerAmpere;
            Assert.IsTrue(Math.Abs(amperes) < 1e-9 || Math.Abs(amperes - 2) < 1e-9, $"{amperes}");
            high += amperes > 1 ? 1 : 0;
        }

        Assert.AreEqual(Share, (double)high / Looks, 0.003);
        person.Act(person.Due);
        Assert.IsNull(shop.Sensor.Radio);
        Assert.AreEqual(3_000_000, timeline[1].Time - timeline[0].Time);
    }

    [TestMethod]
    [DataRow(
        """{ "at": 1, "do": "radio", "seconds": 3 }""",
        "a 'radio' step needs 'amperes'; its members are at, do, amperes, seconds")]
    [DataRow("""{ "at": 1, "do": "radio", "amperes": 200, "seconds": 3 }""", "'amperes' must be from 0 to 100, not 200")]
    public void A_bad_one_is_explained_in_a_sentence(string step, string sentence) =>
        Assert.AreEqual($"bad.json, line 1: {sentence}.", Assert.ThrowsExactly<UserException>(() => Parse(step)).Message);

    private static Day Parse(string step) => DayFile.Parse(
        Encoding.UTF8.GetBytes(
            $$"""{ "seconds": 9, "tools": [ { "name": "saw", "kind": "induction", "amperes": 8 } ], "steps": [ {{step}} ] }"""),
        "bad.json");
}
