using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Writes into the timeline when a breaker trips.</summary>
/// <param name="wiring">The shop's wiring.</param>
/// <param name="timeline">The timeline.</param>
internal sealed class BreakerWatch(DistributionBoard wiring, List<Entry> timeline)
{
    private readonly bool[] _wasTripped = new bool[wiring.Circuits.Count];

    /// <summary>Gets the number of trips.</summary>
    public int Trips { get; private set; }

    /// <summary>Looks at the breakers.</summary>
    public void Look()
    {
        for (int i = 0; i < _wasTripped.Length; i++)
        {
            SupplyCircuit circuit = wiring.Circuits[i];
            bool isTripped = circuit.Breaker.IsTripped;
            if (isTripped && !_wasTripped[i])
            {
                Trips++;
                timeline.Add(new Entry(circuit.Breaker.TrippedAt, Who.Shop, $"the breaker of circuit '{circuit.Name}' trips"));
            }

            _wasTripped[i] = isTripped;
        }
    }
}
