using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>Ours: the power at mains frequency over 0.4 s, ten answers a second.</summary>
internal sealed class SlowLaneMethod : Method
{
    private readonly BucketFiller _filler = new(Line.FullScale);
    private readonly Bucket _bucket = new();
    private readonly SwingWindow _window = new();
    private readonly SlowLane _lane = new();
    private bool _isSecondMean;

    /// <inheritdoc/>
    public override string Name => "ours, slow lane";

    /// <inheritdoc/>
    public override double Window => 0.1 * SlowLane.Blocks;

    /// <inheritdoc/>
    public override int Freedom => 2 * SlowLane.Blocks;

    /// <inheritdoc/>
    public override bool Accept(int[] readings, int count)
    {
        _filler.Fill(readings, count, 0, _bucket);
        _window.Add(_bucket.Sum, _bucket.Count);
        _isSecondMean = !_isSecondMean && _window.IsValid;
        if (!_isSecondMean || !_lane.Add(_window.QuarterMean()))
        {
            return false;
        }

        Answer = _lane.Swing * FastLane.AmperesASwing;
        return true;
    }
}
