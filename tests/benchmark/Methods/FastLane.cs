using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Ours: the swing of quarter-cycle means over a cycle, some looks in a row.</summary>
/// <param name="name">Its name.</param>
/// <param name="confirm">Looks in a row that make a start.</param>
internal sealed class FastLane(string name, int confirm) : Method
{
    private readonly BucketFiller _filler = new(Line.FullScale);
    private readonly Bucket _bucket = new();
    private readonly SwingWindow _window = new();

    /// <summary>Gets a swing's rms current in A; the core's own scale.</summary>
    public static double AmperesASwing { get; } = 1000.0 / new SensorScale(Line.MicrovoltsAnAmpere, 1, Line.MicrovoltsACount).ToSwing(1_000_000);

    /// <summary>As it is delivered.</summary>
    public static FastLane AsDelivered() => new("ours, fast lane", new SettingValues()[SettingId.Confirm]);

    /// <inheritdoc/>
    public override string Name => name;

    /// <inheritdoc/>
    public override double Window => (SwingWindow.Length + 1) / (double)Bucket.ASecond;

    /// <inheritdoc/>
    public override int Confirm => confirm;

    /// <inheritdoc/>
    public override int ConfirmStop => RunDetector.StopBuckets;

    /// <inheritdoc/>
    public override bool Accept(int[] readings, int count)
    {
        _filler.Fill(readings, count, 0, _bucket);
        _window.Add(_bucket.Sum, _bucket.Count);
        Answer = _window.Swing * AmperesASwing;
        return _window.IsValid;
    }
}
