using BenchmarkDotNet.Attributes;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks;

/// <summary>
/// One second of shop time at 2,000 readings a second: a plain sum of the readings, the core, and the whole shop with the
/// firmware.
/// </summary>
public class SpeedBenchmark
{
    private const int Readings = 2000;
    private const int PerBucket = Readings / Bucket.ASecond;
    private const int FullScale = 4095;

    private readonly int[] _second = new int[Readings];
    private readonly int[] _burst = new int[PerBucket];
    private readonly Bucket _bucket = new();
    private readonly BucketFiller _filler = new(FullScale);
    private DetectionCore _core = null!;
    private Rig _rig = null!;
    private long _coreTime;

    /// <summary>Builds a shop with a saw that runs, and a second of its readings.</summary>
    [GlobalSetup]
    public void Setup()
    {
        ToolSpecification saw = new() { Name = "saw", Kind = ToolKind.Universal, RatedAmperes = 6 };
        ToolSpecification lamp = new() { Name = "lamp", Kind = ToolKind.Lamp, RatedAmperes = 0.3 };
        Day day = new() { Seconds = 10, Tools = [saw, lamp] };
        VirtualShop shop = ShopBuilder.Build(day, 1);
        Person nobody = new(day, 1, shop, []);
        _rig = new Rig(new PcBoard(new ShopLine(shop, nobody), day.Pace.Clock(1), FlashImage.Blank()));
        foreach (Tool tool in shop.Wiring.Tools)
        {
            tool.Start(0);
        }

        VirtualShop other = ShopBuilder.Build(day, 1);
        other.Wiring.Tools[0].Start(0);
        for (int i = 0; i < Readings; i++)
        {
            _second[i] = other.Read(1_000_000 + (i * 500L));
        }

        _core = new DetectionCore(new ConverterScale(FullScale, 806, 850, 1750), new SettingValues().ToCore(), 0);
    }

    /// <summary>Only sums the readings.</summary>
    /// <returns>The sum, so that the loop is not left out.</returns>
    [Benchmark(Baseline = true)]
    public int PlainSum()
    {
        int sum = 0;
        foreach (int reading in _second)
        {
            sum += reading;
        }

        return sum;
    }

    /// <summary>The core: fills buckets and decides.</summary>
    [Benchmark]
    public void Core()
    {
        for (int at = 0; at < Readings; at += PerBucket)
        {
            Array.Copy(_second, at, _burst, 0, PerBucket);
            _coreTime += Bucket.Microseconds;
            _filler.Fill(_burst, PerBucket, _coreTime, _bucket);
            _core.Accept(_bucket);
        }
    }

    /// <summary>The whole: shop, board, firmware.</summary>
    [Benchmark]
    public void ShopAndFirmware() => _rig.RunUntil(_rig.Board.ShopTime + 1_000_000);
}
