namespace NanoDustSwitch.Simulator.Soak;

/// <summary>Measures the managed heap while evenings pass: what is kept of each of them would show.</summary>
internal sealed class HeapWatch
{
    // Two evenings are under way at any time, and each holds its timeline; a quarter's mean differs by less.
    private const double MegabytesOfChance = 8;

    private readonly List<double> _megabytes = [];
    private readonly Lock _lock = new();

    /// <summary>Gets a value indicating whether there are enough measures to tell.</summary>
    public bool CanTell => _megabytes.Count >= 8;

    /// <summary>Gets the mean of the first quarter in MB.</summary>
    public double First => _megabytes.Take(_megabytes.Count / 4).DefaultIfEmpty(0).Average();

    /// <summary>Gets the mean of the last quarter in MB.</summary>
    public double Last => _megabytes.TakeLast(_megabytes.Count / 4).DefaultIfEmpty(0).Average();

    /// <summary>Gets a value indicating whether the heap has not grown.</summary>
    public bool IsFlat => !CanTell || Last - First < MegabytesOfChance;

    /// <summary>Measures, what can be collected left out.</summary>
    public void Measure()
    {
        lock (_lock)
        {
            _megabytes.Add(GC.GetTotalMemory(forceFullCollection: true) / 1e6);
        }
    }
}
