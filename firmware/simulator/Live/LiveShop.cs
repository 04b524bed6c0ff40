using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>The demo day's shop with nobody's plan in it: the person at the keyboard does what is done.</summary>
internal sealed class LiveShop
{
    /// <summary>Initializes a new instance of the <see cref="LiveShop"/> class.</summary>
    /// <param name="flash">The board's flash.</param>
    public LiveShop(FlashImage flash)
    {
        Day demo = DayFile.Demo();

        // There from the beginning, and of use as soon as somebody sets vacuum-turns.
        demo.Shop.HasVacuumSensor = true;
        Day day = new() { Shop = demo.Shop, Tools = demo.Tools, NoiseAmperes = demo.NoiseAmperes, HumAmperes = demo.HumAmperes };
        Shop = ShopBuilder.Build(day, demo.Shop.Seed);
        Person nobody = new(day, demo.Shop.Seed, Shop, []);
        Rig = new Rig(new PcBoard(new ShopLine(Shop, nobody), day.Pace.Clock(demo.Shop.Seed), flash));
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
