using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>A day's shop with nobody's plan in it: the person at the keyboard does what is done.</summary>
internal sealed class LiveShop
{
    /// <summary>Initializes a new instance of the <see cref="LiveShop"/> class.</summary>
    /// <param name="flash">The board's flash.</param>
    /// <param name="day">The day whose shop it is; the demo day without it. Its plan and its settings are left out.</param>
    public LiveShop(FlashImage flash, Day? day = null)
    {
        day ??= DayFile.Demo();
        day.Steps = [];

        // There from the beginning, and of use as soon as somebody sets vacuum-turns.
        day.Shop.HasVacuumSensor = true;
        Shop = ShopBuilder.Build(day, day.Shop.Seed);
        Person nobody = new(day, day.Shop.Seed, Shop, []);
        Rig = new Rig(new PcBoard(new ShopLine(Shop, nobody), day.Pace.Clock(day.Shop.Seed), flash));
        Words = new ShopWords(Shop, Rig);
    }

    /// <summary>Gets the shop.</summary>
    public VirtualShop Shop { get; }

    /// <summary>Gets the board in it.</summary>
    public Rig Rig { get; }

    /// <summary>Gets the words for the shop.</summary>
    public ShopWords Words { get; }

    /// <summary>Lets the board answer what was typed, if it has power.</summary>
    public void RunUntilAnswered()
    {
        if (!Rig.IsDark)
        {
            Rig.RunUntilAnswered();
        }
    }

    /// <summary>Types bytes at the board; without power they are lost.</summary>
    /// <param name="bytes">The bytes.</param>
    public void Type(ReadOnlySpan<byte> bytes)
    {
        if (!Rig.IsDark)
        {
            Rig.Board.Serial.Type(bytes);
        }
    }
}
