using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>A box with blank flash in the shop of a day, stepped by the test.</summary>
internal static class ShopRig
{
    /// <summary>Builds shop and box; the day's person is there, but acts only where the test asks.</summary>
    /// <param name="day">The day.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="isTimed">Whether the board's work takes the time that the day's pace says.</param>
    /// <returns>The shop, the person, and the box.</returns>
    public static (VirtualShop Shop, Person Person, Rig Rig) Build(Day day, int seed, bool isTimed = true)
    {
        VirtualShop shop = ShopBuilder.Build(day, seed);
        Person person = new(day, seed, shop, []);
        PcBoard board = new(
            new ShopLine(shop, person), day.Pace.Clock(seed), FlashImage.Blank(), isTimed ? day.Pace.Time(seed) : null);
        return (shop, person, new Rig(board));
    }

    /// <summary>Lets time pass.</summary>
    /// <param name="rig">The box.</param>
    /// <param name="seconds">How long.</param>
    public static void Run(this Rig rig, double seconds) => rig.RunUntil(rig.Board.ShopTime + (long)(seconds * 1e6));

    /// <summary>Types <c>record</c>, lets time pass, and ends it with a key.</summary>
    /// <param name="rig">The box.</param>
    /// <param name="pass">Lets the time pass.</param>
    /// <returns>What came.</returns>
    public static string Record(this Rig rig, Action pass)
    {
        rig.Board.Serial.TakeSent();
        rig.Board.Serial.Type("record\r");
        pass();
        rig.Board.Serial.Type(" ");
        rig.RunUntilAnswered();
        return SentText.Of(rig.Board.Serial.TakeSent());
    }
}
