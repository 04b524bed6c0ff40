using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>
/// A common method: works through a block of readings and then has an answer. Where the line rests it is told exactly.
/// </summary>
/// <param name="buckets">Buckets in a block.</param>
internal abstract class BlockMethod(int buckets) : Method
{
    private int _buckets;

    /// <inheritdoc/>
    public override double Window => buckets / (double)Bucket.ASecond;

    /// <inheritdoc/>
    public override bool Accept(int[] readings, int count)
    {
        for (int i = 0; i < count; i++)
        {
            Add(readings[i]);
        }

        if (++_buckets < buckets)
        {
            return false;
        }

        _buckets = 0;
        Answer = End();
        return true;
    }

    /// <summary>Takes a reading.</summary>
    /// <param name="reading">In counts.</param>
    protected abstract void Add(int reading);

    /// <summary>Ends the block.</summary>
    /// <returns>The answer in A rms of a sine.</returns>
    protected abstract double End();
}
