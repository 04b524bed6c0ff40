using NanoDustSwitch.Benchmarks.Report;
using System.Globalization;
using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>
/// What stands on the line besides tools: wild readings, a lamp or charger beside hum, a generator, half-wave and chopped loads.
/// </summary>
internal static class StandingStudy
{
    private const double StartAt = 0.6;
    private const double Lamp = 0.5;
    private const double LongestWait = (CoreSettings.LongestSurgeMilliseconds / 1000.0) + 0.1;
    private const double Ever = double.PositiveInfinity;

    private static readonly int[] s_rates = [1000, 1300, 2000, 5400];

    /// <summary>Tries everything.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <returns>The rows of a table: what, how many trials, what came out, what must, what is aimed at.</returns>
    public static List<StudyRow> Run(Bench bench)
    {
        // What must never be is tried 10,000 times.
        int often = bench.IsQuick ? 400 : 10_000;
        double stood = bench.IsQuick ? 60 : 600;
        List<StudyRow> rows =
        [
            Wild(bench, "single wild readings, 5 a second of up to 50 A: starts in 60 s", bench.IsQuick ? 100 : 1000, 5, 0),
            Wild(bench, "showers of wild readings of 0.1 s, one in 2 s: starts in 60 s", bench.IsQuick ? 100 : 1000, 0.5, 0.1),
            .. Further(bench, bench.IsQuick ? 200 : 1000, stood),
            Further(bench, often, 20).Last(),
            Idling(bench, often),
            LampLit(bench, often),
            GoingOff(bench, often),
            Generator(bench, bench.IsQuick ? 4 : 40),
            .. NearTheLevel(bench, often),
        ];
        return rows;
    }

    private static StudyRow Wild(Bench bench, string name, int trials, double aSecond, double showerSeconds)
    {
        double[] starts = Each(bench, name, trials, (i, random) =>
        {
            StandingLine line = NewLine(i, random);
            line.Sensor.Wild = new WildReadings(random, aSecond, 50, showerSeconds, 0);
            StandingTrial trial = new(line);
            trial.RunTo(60);
            return trial.Commands;
        });
        return new StudyRow(name, trials, starts.Average(), 0.1, 0.01);
    }

    // A lamp or charger, hum at any phase, and a tool that stops again. Where lamp and hum together are a tool in the ten seconds
    // before it, there is nothing to be found beside them. A charger's pulses beat with few readings a second: they show half and
    // twice as much in turn, over many seconds, so that what stood there cannot be known. So chargers are tried from 2,000
    // readings a second on.
    private static IEnumerable<StudyRow> Further(Bench bench, int trials, double stood)
    {
        string name = string.Create(
            CultureInfo.InvariantCulture, $"0.5 A for {stood:0} s, hum of up to 0.4 A; a further 0.6 A not found in 0.1 s");
        int[] stays = new int[trials];
        double[] missed = Each(bench, name, trials, (i, random) =>
        {
            StandingLine line = NewLine(i, random);
            line.Mains.WanderHertz = 0.1;
            line.Mains.WanderSeconds = 60 + (120 * random.NextDouble());
            line.Sensor.HumAmperes = 0.4 * random.NextDouble();
            line.Sensor.HumDegrees = 360 * random.NextDouble();
            double degrees = -30 + (90 * random.NextDouble());
            Shape charger = Shape.Pulses(line.Mains.Hertz, 2 + (2 * random.NextDouble()));
            bool isCharger = i % 3 == 0 && s_rates[i % s_rates.Length] >= 2000;
            degrees = isCharger ? 0 : degrees;
            line.Add(isCharger ? point => charger.At(point.Turn) : StandingLine.Sine(degrees), _ => Lamp, 1, Ever);
            double onset = 1 + stood + random.NextDouble();
            double between = 180 * (random.NextDouble() - 0.5);
            line.Add(StandingLine.Sine(degrees + between), _ => 0.6, onset, onset + 6);
            StandingTrial trial = new(line);
            trial.RunTo(onset - 10);
            if (trial.RunUntil(() => trial.Core.Vacuum.WantsVacuum || trial.Core.IsToolRunning, onset))
            {
                return double.NaN;
            }

            bool isFound = trial.RunUntil(() => trial.Core.IsToolRunning, onset + 0.1);
            trial.RunTo(onset + 6);

            // Ten seconds until it is let go, mostly two, and the run-on of five.
            stays[i] = trial.RunUntil(() => !trial.Core.Vacuum.WantsVacuum, onset + 6 + 10 + 5) ? 0 : 1;
            return isFound ? 0 : 1;
        });
        double[] counted = [.. missed.Where(value => !double.IsNaN(value))];
        yield return new StudyRow(name, counted.Length, 100 * counted.Average(), 5, 1, "%");
        yield return new StudyRow(
            string.Create(CultureInfo.InvariantCulture, $"… after {stood:0} s: when that tool stops, the vacuum does not"),
            counted.Length, 100.0 * stays.Sum() / counted.Length, 0, 0, "%");
    }

    private static StudyRow Idling(Bench bench, int trials)
    {
        const string Name = "a tool that adds 0.35 to 0.6 A to 0.5 A, idling for a minute: let go";
        double[] stops = Each(bench, Name, trials, (i, random) =>
        {
            StandingLine line = NewLine(i, random);
            line.Add(StandingLine.Sine(0), _ => Lamp, 1, Ever);
            double idle = 0.35 + (0.25 * random.NextDouble());
            double degrees = 180 * (random.NextDouble() - 0.5);
            line.Add(StandingLine.Sine(degrees), since => idle + (3 * Math.Exp(-since / 0.1)), 15, 80);
            StandingTrial trial = new(line);
            trial.RunUntil(() => trial.Core.Vacuum.WantsVacuum, 18);
            int before = trial.Stops;
            trial.RunTo(80);
            return trial.Core.Vacuum.WantsVacuum ? trial.Stops - before : 1;
        });
        return new StudyRow(Name, trials, stops.Sum(), 0, 0);
    }

    // Nobody can tell it from a tool that idles, so the vacuum stays on; 'why' says so.
    private static StudyRow LampLit(Bench bench, int trials)
    {
        const string Name = "a lamp of 0.5 A lit during the run: let go when the tool stops";
        double[] stops = Each(bench, Name, trials, (i, random) =>
        {
            StandingLine line = NewLine(i, random);
            line.Add(StandingLine.Sine(0), _ => Lamp, 15, Ever);
            line.Add(StandingLine.Sine(60 * random.NextDouble()), _ => 2, 12, 20);
            StandingTrial trial = new(line);
            trial.RunTo(40);
            return trial.Stops;
        });
        return new StudyRow(Name, trials, stops.Sum(), 0, 0);
    }

    // What grew so slowly that it was never a tool, or one that a hand has switched the vacuum off for.
    private static StudyRow GoingOff(Bench bench, int trials)
    {
        const string Name = "a standing load of up to 5 A going off: starts in 10,000";
        double[] starts = Each(bench, Name, trials, (i, random) =>
        {
            StandingLine line = NewLine(i, random);
            double amperes = 0.1 + (4.9 * random.NextDouble());
            bool isCrept = i % 2 == 0;
            double off = (isCrept ? 60 : 20) + random.NextDouble();
            double growth = Math.Log(Math.Max(1, amperes / 0.3)) / 50;
            line.Add(
                StandingLine.Sine(180 * (random.NextDouble() - 0.5)),
                since => isCrept ? Math.Min(amperes, 0.3 * Math.Exp(growth * since)) : amperes,
                1,
                off);
            StandingTrial trial = new(line);
            trial.RunTo(5);
            if (trial.Core.Vacuum.WantsVacuum && !isCrept)
            {
                trial.Core.Handle(VacuumEvent.HandOff, (long)(line.Seconds * 1e6));
            }

            trial.RunTo(off);
            if (trial.Core.Vacuum.WantsVacuum)
            {
                return double.NaN;
            }

            int before = trial.Commands;
            trial.RunTo(off + 3);
            return trial.Commands - before;
        });
        double[] counted = [.. starts.Where(value => !double.IsNaN(value))];
        return new StudyRow(Name, counted.Length, 10_000 * counted.Average(), 1, 0);
    }

    private static StudyRow Generator(Bench bench, int trials)
    {
        const string Name = "a generator wandering 57 to 63 Hz beside 0.5 A for an hour: starts";
        double[] starts = Each(bench, Name, trials, (i, random) =>
        {
            StandingLine line = new(s_rates[i % s_rates.Length], 60, random);
            line.Mains.WanderHertz = 3;
            line.Mains.WanderSeconds = 5 + (115 * random.NextDouble());
            line.Mains.Flattening = 0.1 * random.NextDouble();
            line.Add(StandingLine.Sine(60 * random.NextDouble()), _ => Lamp, 1, Ever);
            StandingTrial trial = new(line);
            trial.RunTo(3600);
            return trial.Commands;
        });
        return new StudyRow(Name, trials, starts.Sum(), 0, 0);
    }

    private static IEnumerable<StudyRow> NearTheLevel(Bench bench, int trials)
    {
        const string Name = "half-wave and chopped loads, 1.05 to 1.5 times start-at as shown at the worst: let go in 20 s";
        int[] late = new int[trials];
        double[] stops = Each(bench, Name, trials, (i, random) =>
        {
            int rate = s_rates[i % s_rates.Length];
            double hertz = i / 4 % 2 == 0 ? 60 : 50;
            Shape wave = (i / 8 % 3) switch
            {
                0 => Shape.HalfWave(),
                1 => Shape.Chopped(0.2 + (0.7 * random.NextDouble())),
                _ => Shape.Pulses(hertz, 1.5 + (2 * random.NextDouble())),
            };
            double times = 1.05 + (0.45 * random.NextDouble());
            double amperes = times * StartAt / WorstShown.Of(wave, rate, hertz);
            StandingLine line = new(rate, hertz, random);
            line.Add(point => wave.At(point.Turn), _ => amperes, 5, Ever);
            StandingTrial trial = new(line);
            trial.RunTo(5);
            late[i] = trial.RunUntil(() => trial.Core.Vacuum.WantsVacuum, 5 + LongestWait) ? 0 : 1;
            trial.RunTo(25);
            return trial.Stops;
        });
        yield return new StudyRow(Name, trials, stops.Sum(), 0, 0);
        yield return new StudyRow("… no command within 3 s, the longest wait for a surge", trials, late.Sum(), 0, 0);
    }

    private static StandingLine NewLine(int i, ShopRandom random) =>
        new(s_rates[i % s_rates.Length], i / 4 % 2 == 0 ? 60 : 50, random);

    private static double[] Each(Bench bench, string name, int trials, Func<int, ShopRandom, double> trial)
    {
        double[] results = new double[trials];
        bench.InParallel(name, trials, (i, random) => results[i] = trial(i, random));
        return results;
    }
}
