namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>How much is looked at.</summary>
/// <param name="NoiseHours">Hours of the nominal noise, at each rate.</param>
/// <param name="KindHours">Hours of each kind of noise, at the level that was taught.</param>
/// <param name="Teachings">Times that a level is taught.</param>
/// <param name="Trials">Tools of each current.</param>
/// <param name="Ratio">From one current to the next.</param>
/// <param name="Delays">Tools of each current that come and go.</param>
internal sealed record Spend(double NoiseHours, double KindHours, int Teachings, int Trials, double Ratio, int Delays)
{
    /// <summary>Gets what the figures of the page come from: minutes.</summary>
    public static Spend Full { get; } = new(150, 40, 60, 4000, 1.08, 1000);

    /// <summary>Gets what a look takes: seconds, with errors of several percent.</summary>
    public static Spend Quick { get; } = new(6, 2, 12, 240, 1.13, 120);

    /// <summary>Currents from the least up.</summary>
    /// <param name="least">The least, A.</param>
    /// <param name="most">About the greatest, A.</param>
    public double[] Currents(double least, double most) =>
        [.. Enumerable.Range(0, 2 + (int)Math.Log(most / least, Ratio)).Select(i => least * Math.Pow(Ratio, i))];
}
