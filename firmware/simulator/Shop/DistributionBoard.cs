namespace NanoDustSwitch.Simulator.Shop;

/// <summary>The shop's wiring: which circuits there are, and which load is plugged into which.</summary>
public sealed class DistributionBoard
{
    private readonly List<Tool> _tools = new List<Tool>();
    private readonly List<SupplyCircuit> _circuits = new List<SupplyCircuit>();
    private readonly double _hertz;
    private readonly double _flattening;
    private readonly long _seed;
    private Outlet[] _outlets = Array.Empty<Outlet>();
    private Outlet[] _onToolLine = Array.Empty<Outlet>();
    private bool _supplied = true;

    internal DistributionBoard(ShopSpecification specification, long seed)
    {
        _seed = seed;
        Vacuum = new VacuumCleaner(
            specification.VacuumAmperes,
            specification.Hertz,
            seed,
            specification.VacuumSoftStartSeconds,
            specification.Flattening);
        _hertz = specification.Hertz;
        _flattening = specification.Flattening;
        foreach (CircuitSpecification circuit in specification.Circuits)
        {
            AddCircuit(circuit.Name, circuit.Amperes, circuit.Curve);
        }

        VacuumCircuit = FindCircuit(specification.VacuumCircuit);
    }

    /// <summary>The circuits; the first feeds all that names no other.</summary>
    public IReadOnlyList<SupplyCircuit> Circuits => _circuits;

    /// <summary>All tools, on the sensed line or not.</summary>
    public IReadOnlyList<Tool> Tools => _tools;

    /// <summary>What the current of the sensed line comes to at nominal voltage, A: the sum of its tools that are on.</summary>
    public double SettledOnToolLine =>
        _onToolLine.Sum(outlet => outlet.Tool.IsRunning ? outlet.Tool.SettledAmperes : outlet.Tool.StandbyAmperes);

    /// <summary>Tells whether something runs on the sensed line that needs no vacuum, and nothing else of note.</summary>
    /// <param name="note">From how much on the rest is of note, A rms.</param>
    /// <returns>True when it is so.</returns>
    public bool NeedsNoVacuum(double note)
    {
        bool isSomeRunning = false;
        double rest = 0.0;
        foreach (Outlet outlet in _onToolLine)
        {
            isSomeRunning |= outlet.Tool.IsRunning && outlet.Tool.NeedsNoVacuum;
            rest += outlet.Tool.NeedsNoVacuum ? 0.0 : outlet.Tool.RmsAmperes;
        }

        return isSomeRunning && rest < note;
    }

    /// <summary>The vacuum.</summary>
    public VacuumCleaner Vacuum { get; }

    /// <summary>The circuit that feeds the vacuum and the box.</summary>
    public SupplyCircuit VacuumCircuit { get; }

    /// <summary>Adds a circuit.</summary>
    /// <param name="name">Its name, not used before.</param>
    /// <param name="ratedAmperes">Rating of its breaker, A rms.</param>
    /// <param name="curve">Kind of its breaker.</param>
    /// <returns>The circuit.</returns>
    public SupplyCircuit AddCircuit(string name, double ratedAmperes, BreakerCurve curve)
    {
        if (Search(name) != null)
        {
            throw new ArgumentException("there is a circuit of this name: " + name, nameof(name));
        }

        SupplyCircuit circuit = new SupplyCircuit(name, ratedAmperes, curve);
        _circuits.Add(circuit);
        return circuit;
    }

    /// <summary>Finds a circuit.</summary>
    /// <param name="name">Its name; null = the first.</param>
    /// <returns>The circuit.</returns>
    public SupplyCircuit FindCircuit(string? name) => (name is null ? _circuits[0] : Search(name))
        ?? throw new ArgumentException("there is no circuit of this name: " + name, nameof(name));

    /// <summary>Adds a tool, plugged in and off.</summary>
    /// <param name="specification">What the tool is.</param>
    /// <returns>The tool.</returns>
    public Tool AddTool(ToolSpecification specification)
    {
        SupplyCircuit circuit = FindCircuit(specification.CircuitName);
        Tool tool = new Tool(specification, _hertz, _seed + _tools.Count + 1, _flattening);
        bool isWithVacuum = ReferenceEquals(circuit, VacuumCircuit);
        Outlet outlet = new Outlet(tool, circuit, isWithVacuum, specification.IsOnToolLine);
        _tools.Add(outlet.Tool);
        _outlets = Append(_outlets, outlet);
        if (specification.IsOnToolLine)
        {
            _onToolLine = Append(_onToolLine, outlet);
        }

        return outlet.Tool;
    }

    /// <summary>Closes a circuit's breaker again.</summary>
    internal void Reset(long now, string circuitName)
    {
        FindCircuit(circuitName).Breaker.Reset();
        Energise(now);
    }

    /// <summary>The supply fails or comes back.</summary>
    internal void Supply(long now, bool on)
    {
        _supplied = on;
        Energise(now);
    }

    /// <summary>Current of the sensed line; the dip pulls down what shares the vacuum's circuit.</summary>
    internal double ToolLineAmperes(long now, in MainsPoint point, double dip)
    {
        double sum = 0.0;
        MainsPoint dipped = point with { Factor = point.Factor * dip };
        foreach (Outlet outlet in _onToolLine)
        {
            sum += outlet.Tool.Current(now, outlet.IsWithVacuum ? dipped : point);
        }

        return sum;
    }

    /// <summary>Loads the breakers with their rms currents and takes the voltage from what hangs on a tripped one.</summary>
    internal void Judge(long now, in MainsPoint point)
    {
        foreach (SupplyCircuit circuit in _circuits)
        {
            circuit.Clear();
        }

        foreach (Outlet outlet in _outlets)
        {
            if (!outlet.IsOnToolLine)
            {
                // Nobody else asks for it.
                outlet.Tool.Current(now, point);
            }

            outlet.Circuit.Add(outlet.Tool.RmsAmperes);
        }

        VacuumCircuit.Add(Vacuum.RmsAmperes);
        foreach (SupplyCircuit circuit in _circuits)
        {
            circuit.Judge(now);
        }

        Energise(now);
    }

    private void Energise(long now)
    {
        foreach (Outlet outlet in _outlets)
        {
            outlet.Tool.SetLive(now, _supplied && outlet.Circuit.IsLive);
        }

        Vacuum.SetLive(now, _supplied && VacuumCircuit.IsLive);
    }

    private static Outlet[] Append(Outlet[] outlets, Outlet outlet)
    {
        Array.Resize(ref outlets, outlets.Length + 1);
        outlets[outlets.Length - 1] = outlet;
        return outlets;
    }

    private SupplyCircuit? Search(string name) =>
        _circuits.Find(circuit => string.Equals(circuit.Name, name, StringComparison.Ordinal));
}
