using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Ours: the power of the mains in a cycle, or in two.</summary>
internal sealed class FastLane : Method
{
    // Where the line's noise sets the levels, that of two cycles is so much lower. One answer serves both when it is raised by as
    // much.
    private const double TwoOverOne = (double)ToolLevels.StartPercent / ToolLevels.StartOfTwoPercent;

    // Any swing: its power makes a swing of another.
    private const int Unit = 1000;

    private readonly BucketFiller _filler = new(Line.FullScale);
    private readonly Bucket _bucket = new();
    private readonly SwingWindow _window = new();

    /// <summary>Gets a swing's rms current in A; the core's own scale.</summary>
    public static double AmperesASwing { get; } =
        1000.0 / new SensorScale(Line.MicrovoltsAnAmpere, 1, Line.MicrovoltsACount).ToSwing(1_000_000);

    /// <inheritdoc/>
    public override string Name => "ours, fast lane";

    /// <inheritdoc/>
    public override double Window => SwingWindow.Length / (double)Bucket.ASecond;

    /// <inheritdoc/>
    public override int Freedom => 4;

    /// <inheritdoc/>
    public override int ConfirmStop => RunDetector.StopLooks;

    /// <summary>Gets what the core calls the swing, A: that of one cycle alone.</summary>
    public double Swing => _window.Swing * AmperesASwing;

    /// <inheritdoc/>
    public override bool Accept(int[] readings, int count)
    {
        _filler.Fill(readings, count, 0, _bucket);
        _window.Add(_bucket.Sum, _bucket.Count);
        double power = Math.Max(_window.Power, _window.MeanPowerOfTwo() * TwoOverOne * TwoOverOne);
        Answer = Math.Sqrt(power / SwingWindow.PowerOf(Unit)) * Unit * AmperesASwing;
        return _window.IsValid;
    }
}
