using System.Globalization;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// The model of the vacuum's start against open recordings of vacuum cleaners' starts (repository ancy-gg/TinyML_Smart-Plug): rms
/// per frame of about 97 ms, taken from the model in the same frames.
/// </summary>
[TestClass]
public sealed class VacuumStartTests
{
    private const double FrameMicroseconds = 97e3;
    private const double RunningAmperes = 4.3;
    private const double Near = 1.15;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void The_models_first_frame_and_its_settling_lie_among_the_recordings()
    {
        List<(double First, double Settled)> recorded = [.. Files().Select(Recorded)];
        foreach ((double first, double settled) in recorded)
        {
            TestContext.WriteLine($"recorded: first frame {first:0.00} x running, within 15 % after {settled:0.00} s");
        }

        List<(double First, double Settled)> model = [.. Enumerable.Range(0, 20).Select(i => Model(i / 20.0))];
        double least = model.Min(start => start.First);
        double most = model.Max(start => start.First);
        double median = model.Select(start => start.First).Order().ElementAt(10);
        TestContext.WriteLine(
            $"model: first frame {least:0.00} to {most:0.00}, median {median:0.00}, within 15 % after "
            + $"{model.Min(start => start.Settled):0.00} to {model.Max(start => start.Settled):0.00} s");
        Assert.IsInRange(recorded.Min(start => start.First), recorded.Max(start => start.First), median);

        // A frame before the earliest recording and a frame after the latest.
        Assert.IsGreaterThan(recorded.Min(start => start.Settled) - 0.1, model.Min(start => start.Settled));
        Assert.IsLessThan(recorded.Max(start => start.Settled) + 0.1, model.Max(start => start.Settled));
    }

    [TestMethod]
    public void The_models_course_is_that_of_the_recordings_within_their_spread()
    {
        double[][] recorded =
        [
            .. Files().Select(Read).Select(frames => new[] { 0.1, 0.2, 0.3, 0.5, 0.7 }.Select(at => At(frames, at)).ToArray()),
        ];
        (double Seconds, double Ratio)[] model = ModelFrames(0);
        double[] times = [0.1, 0.2, 0.3, 0.5, 0.7];
        for (int i = 0; i < times.Length; i++)
        {
            double least = recorded.Min(values => values[i]);
            double most = recorded.Max(values => values[i]);
            double here = At(model, times[i]);
            TestContext.WriteLine($"{times[i]:0.0} s: recordings {least:0.00} to {most:0.00} x running, model {here:0.00}");

            // A tenth of the running current beside them: the recordings' frames do not begin with the current.
            Assert.IsInRange(least - 0.1, most + 0.1, here);
        }
    }

    private static string[] Files() =>
        [.. Directory.GetFiles(Recordings.Folder("smartplug-rms"), "universal_motor__vacuum_cleaner__*__start.csv").Order()];

    private static (double First, double Settled) Recorded(string file)
    {
        (double Seconds, double Ratio)[] frames = Read(file);
        return (frames[0].Ratio, frames.First(frame => frame.Ratio < Near).Seconds);
    }

    // Frames from the first with current; its running current is the median of the last ten.
    private static (double Seconds, double Ratio)[] Read(string file)
    {
        (double Time, double Amperes)[] rows =
        [
            .. File.ReadLines(file)
                .Skip(1)
                .Select(line => line.Split(','))
                .Select(cells => (Number(cells[0]) / 1000, Number(cells[2]))),
        ];
        double running = rows[^10..].Select(row => row.Amperes).Order().ElementAt(5);
        (double Time, double Amperes)[] on = [.. rows.SkipWhile(row => row.Amperes < 0.1)];
        return [.. on.Select(row => (row.Time - on[0].Time, row.Amperes / running))];
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    private static double At((double Seconds, double Ratio)[] frames, double seconds)
    {
        int after = Math.Max(1, Array.FindIndex(frames, frame => frame.Seconds >= seconds));
        double part = (seconds - frames[after - 1].Seconds) / (frames[after].Seconds - frames[after - 1].Seconds);
        return frames[after - 1].Ratio + (part * (frames[after].Ratio - frames[after - 1].Ratio));
    }

    private static (double First, double Settled) Model(double degrees)
    {
        (double Seconds, double Ratio)[] frames = ModelFrames(degrees * 360);
        return (frames[0].Ratio, frames.First(frame => frame.Ratio < Near).Seconds);
    }

    private static (double Seconds, double Ratio)[] ModelFrames(double degrees)
    {
        const int Step = 50;
        Mains mains = new(50, 230, degrees);
        VacuumCleaner vacuum = new(RunningAmperes, 50);
        vacuum.Update(0, true);
        List<(double, double)> frames = [];
        double square = 0;
        int count = 0;
        for (long now = 0; frames.Count < 20; now += Step)
        {
            double amperes = vacuum.Current(now, mains.At(now));
            square += amperes * amperes;
            if (++count * Step >= FrameMicroseconds)
            {
                frames.Add((frames.Count * FrameMicroseconds * 1e-6, Math.Sqrt(square / count) / RunningAmperes));
                square = 0;
                count = 0;
            }
        }

        return [.. frames];
    }
}
