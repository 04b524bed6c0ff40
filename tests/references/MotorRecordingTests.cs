using MathNet.Numerics;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// Recorded currents of a 3/4 hp three-phase motor running idle, split-core transformers, 1 kHz, 60 Hz: the open ITSC
/// recordings (repository ibarram/ITSC, folders of raw and of cropped signals). The cropped ones are in amperes; the raw
/// ones are scaled by their fundamental to the cropped ones.
/// </summary>
[TestClass]
public sealed class MotorRecordingTests
{
    private const double Rate = 1000;
    private const double Hertz = 60;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Every_cropped_recording_is_found_and_never_dropped()
    {
        foreach (string file in Files("cropped"))
        {
            foreach (double[] phase in Recordings.Columns(file))
            {
                Check(file, phase);
            }
        }
    }

    [TestMethod]
    public void Every_raw_recording_is_found_and_never_dropped()
    {
        string cropped = Path.Combine(Recordings.Folder("itsc"), "cropped");
        foreach (string file in Files("raw"))
        {
            double[][] raw = Recordings.Columns(file);
            double[][] reference = Recordings.Columns(Path.Combine(cropped, Path.GetFileName(file)));
            for (int phase = 0; phase < raw.Length; phase++)
            {
                double scale = Fundamental(reference[phase]) / Fundamental(raw[phase]);
                Check(file, [.. raw[phase].Select(value => value * scale)]);
            }
        }
    }

    [TestMethod]
    public void The_rms_that_the_switch_shows_is_that_of_the_recording()
    {
        // 1.9 to 2.05 A rms in the healthy files, by the recordings' own figures.
        foreach (string file in Files("cropped").Where(file => Path.GetFileName(file).Contains("HLT", StringComparison.Ordinal)))
        {
            double[] phase = Recordings.Columns(file)[0];
            double rms = Math.Sqrt(phase.Average(value => value * value));
            ReplayRun run = Replay(file, phase);
            double shown = run.Trace.Where(point => point.Seconds is > 0.5 and < 0.9).Average(point => point.SwingAmperes);
            Assert.AreEqual(rms, shown, 0.07 * rms, file);
        }
    }

    // The motor has no start in them: each recording begins at full current, as one of a heater.
    [TestMethod]
    public void The_healthy_motor_is_one_tool_in_all_recordings()
    {
        string[] files = [.. Files("cropped").Where(file => Path.GetFileName(file).Contains("HLT", StringComparison.Ordinal))];
        double[] quiet = new double[(int)(8 * Rate)];
        double[] course = [.. files.SelectMany(file => Recordings.Columns(file)[0].Concat(quiet))];
        TableSource source = Source("one after the other", course);
        DetectionCore? last = null;
        source.Run(source.Settings, (_, core) => last = core);
        ToolBook book = last!.Vacuum.Book;
        TestContext.WriteLine(
            $"{book[0, ToolFigure.Starts]} starts, level {book[0, ToolFigure.Least]} to {book[0, ToolFigure.Most]}");
        Assert.HasCount(5, files);
        Assert.AreEqual(files.Length, book[0, ToolFigure.Starts]);
        Assert.AreEqual(0, book[1, ToolFigure.Height]);
    }

    private static string[] Files(string folder) =>
        [.. Directory.GetFiles(Path.Combine(Recordings.Folder("itsc"), folder), "*.csv").Order()];

    // Peak of the mains fundamental, by a least squares fit of a sine and a cosine.
    private static double Fundamental(double[] values)
    {
        double[] angles = [.. Enumerable.Range(0, values.Length).Select(i => 2 * Math.PI * Hertz * i / Rate)];
        double[] fit = Fit.LinearCombination(angles, values, _ => 1.0, Math.Sin, Math.Cos);
        return Math.Sqrt((fit[1] * fit[1]) + (fit[2] * fit[2]));
    }

    private static TableSource Source(string name, double[] amperes) =>
        new(name, new TableReadings([.. amperes.Select(value => (float)value)], false, Rate, ""), 2, 1);

    private static ReplayRun Replay(string file, double[] amperes)
    {
        TableSource source = Source(file, amperes);
        return new ReplayRun(source, source.Settings).Run(_ => { });
    }

    private void Check(string file, double[] amperes)
    {
        ReplayRun run = Replay(file, amperes);
        TestContext.WriteLine(
            $"{Path.GetFileName(file)}: seen after {run.SeenAt * 1000:0.0} ms, {run.MedianOverStart:0.0} x start, "
            + $"least {run.LeastOverStop:0.0} x stop");
        Assert.IsTrue(run.IsGood, $"{file}: seen after {run.SeenAt} s, {run.Drops} drops, {run.FalseStarts} false");
        Assert.IsLessThan(2 / Hertz, run.SeenAt, file);
        Assert.IsGreaterThan(1.0, run.LeastOverStop, file);
    }
}
