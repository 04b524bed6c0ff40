using MathNet.Numerics.Statistics;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Spectrum;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>A table of readings, taken by a board with the whole firmware.</summary>
/// <param name="name">The file's name.</param>
/// <param name="readings">The readings.</param>
/// <param name="lead">Seconds of modelled idle before and after it.</param>
/// <param name="seed">Seed of the idle's and the sensor's noise.</param>
internal sealed class TableSource(string name, TableReadings readings, double lead, long seed) : ReplaySource
{
    private const double LongestWave = 60;

    /// <inheritdoc/>
    public override string Name => name;

    /// <inheritdoc/>
    public override string Understood => readings.Understood;

    /// <inheritdoc/>
    public override SettingValues Settings { get; } = new();

    /// <inheritdoc/>
    public override SettingsGate Gate { get; } = GateFor(new Converter(new ShopRandom(seed, 2)));

    /// <inheritdoc/>
    public override bool HasSettings => false;

    /// <inheritdoc/>
    public override double Lead => lead;

    /// <inheritdoc/>
    public override double Seconds => readings.Values.Length / readings.Rate;

    /// <inheritdoc/>
    public override Wave Wave
    {
        get
        {
            double rate = readings.Fine is null ? readings.Rate : readings.FineRate;
            ReadOnlySpan<float> values = Strongest(readings.Fine ?? readings.Values, rate, out int from);
            double ampere = readings.IsCounts
                ? Wave.AmperesACount(Settings, new Converter(new ShopRandom(seed, 2)).MicrovoltsPerCount)
                : 1;
            double[] times = new double[values.Length];
            double[] amperes = new double[values.Length];
            for (int i = 0; i < values.Length; i++)
            {
                times[i] = readings.Begin + ((from + i) / rate);
                amperes[i] = values[i] * ampere;
            }

            return new Wave(times, amperes, 0);
        }
    }

    /// <inheritdoc/>
    public override double Begin => readings.Begin;

    /// <inheritdoc/>
    public override void Run(SettingValues settings, Action<double, DetectionCore> look)
    {
        int leadReadings = (int)Math.Round(lead * readings.Rate);
        double begin = leadReadings / readings.Rate;
        double end = Seconds + begin;
        RecordingLine line = new(readings.Values, readings.IsCounts, leadReadings, seed);
        line.Fit(settings[SettingId.SensorGain] / 1000.0, settings[SettingId.Turns]);
        Rig rig = new(new PcBoard(line, ReadingClock.Ideal(readings.Rate), FlashImage.Blank()));
        rig.Switch.Desk.Change(new SettingsDraft(settings));
        while (true)
        {
            rig.Step();
            double now = (rig.Board.ShopTime / 1e6) - begin;
            if (now > end)
            {
                return;
            }

            look(now, rig.Switch.Core);
        }
    }

    // A minute is enough for a spectrum, and a long recording is never copied as a whole.
    private static ReadOnlySpan<float> Strongest(float[] values, double rate, out int from)
    {
        int length = (int)Math.Min(values.Length, LongestWave * rate);
        from = 0;
        double most = -1;
        for (int start = 0; start + length <= values.Length; start += length)
        {
            double power = values.Skip(start).Take(length).Select(value => (double)value).PopulationVariance();
            (from, most) = power > most ? (start, power) : (from, most);
        }

        return values.AsSpan(from, length);
    }

    private static SettingsGate GateFor(Converter converter) => new(converter.FullScale, (int)converter.MicrovoltsPerCount);
}
