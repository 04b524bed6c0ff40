namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The relay's contact behind its coil: 10 ms to operate with bounce within 2 ms, 5 ms to release
/// (usual for a power relay: common practice, no source).
/// </summary>
/// <param name="random">Stream its bounce is drawn from.</param>
public sealed class Relay(ShopRandom random)
{
    private const int OperateMicroseconds = 10_000;
    private const int ReleaseMicroseconds = 5_000;
    private const int BounceMicroseconds = 2_000;
    private const int MostBounces = 3;

    private readonly long[] _changes = new long[1 + (2 * MostBounces)];
    private int _next;
    private int _count;
    private long _nextAt = long.MaxValue;
    private bool _coil;

    /// <summary>Whether the contact is closed.</summary>
    public bool IsClosed { get; private set; }

    /// <summary>How often it has closed; bounces do not count.</summary>
    public int ClosedCount { get; private set; }

    /// <summary>What is wrong with it.</summary>
    public RelayFault Fault { get; private set; }

    /// <summary>Breaks or mends the relay; mended, the contact goes to where its coil wants it.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="fault">What is wrong from now on.</param>
    public void SetFault(long now, RelayFault fault)
    {
        Fault = fault;
        Plan(now);
    }

    /// <summary>Moves on to a time.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="coil">Whether the coil is energised.</param>
    /// <param name="coilSince">Virtual time since which it is so, µs.</param>
    /// <returns>Whether the contact is closed.</returns>
    public bool Update(long now, bool coil, long coilSince)
    {
        if (coil != _coil)
        {
            Move(coilSince);
            _coil = coil;
            Plan(coilSince);
        }

        if (now >= _nextAt)
        {
            Move(now);
        }

        return IsClosed;
    }

    private void Plan(long from)
    {
        _next = 0;
        _count = 0;
        _nextAt = long.MaxValue;
        if (_coil && !IsClosed && Fault != RelayFault.NeverCloses)
        {
            PlanClosing(from + OperateMicroseconds);
        }
        else if (IsClosed && Fault != RelayFault.Welded && (!_coil || Fault == RelayFault.NeverCloses))
        {
            _changes[0] = from + ReleaseMicroseconds;
            _count = 1;
        }

        _nextAt = _count > 0 ? _changes[0] : long.MaxValue;
    }

    private void PlanClosing(long touch)
    {
        // An odd number of changes, so that it ends closed.
        int bounces = 1 + (int)(random.NextDouble() * MostBounces);
        _count = 1 + (2 * bounces);
        _changes[0] = touch;
        for (int i = 1; i < _count; i++)
        {
            _changes[i] = touch + 1 + (long)(random.NextDouble() * BounceMicroseconds);
        }

        Array.Sort(_changes, 0, _count);
    }

    private void Move(long now)
    {
        while (_nextAt <= now)
        {
            IsClosed = !IsClosed;
            if (IsClosed && _next == 0)
            {
                ClosedCount++;
            }

            _next++;
            _nextAt = _next < _count ? _changes[_next] : long.MaxValue;
        }
    }
}
