using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>A day without trouble: which calls there are, when the relay is closed, when the vacuum is held off.</summary>
internal sealed class Survey
{
    private const int Slice = 2500;
    private const long ASecond = 1_000_000;
    private const int Tool = 2;

    // What trouble delays comes so much later, or a little earlier.
    private const long Late = 600_000;
    private const long Early = 300_000;

    private readonly List<int> _firstCalls = [];
    private readonly List<byte> _calls = [];
    private readonly List<byte> _slices = [];
    private readonly List<bool> _held = [];
    private readonly Dictionary<int, int> _bytes = [];

    /// <summary>Initializes a new instance of the <see cref="Survey"/> class: goes through the day.</summary>
    /// <param name="day">The day.</param>
    public Survey(Day day)
    {
        Day = day;
        InjectedRig rig = new(day);
        while (rig.Time < day.Seconds * 1e6)
        {
            if (rig.Time >= _held.Count * ASecond)
            {
                _held.Add(!rig.Shop.IsRelayClosed && new Witness(DeepCopy.Of(rig)).Ask("why")
                    .Contains(Aftermath.HeldWords, StringComparison.Ordinal));
            }

            rig.Step();
            rig.TakeSaid();
            _firstCalls.Add(_calls.Count);
            int written = 0;
            foreach (BoardCall call in rig.Board.Calls)
            {
                if (call == BoardCall.WriteSlot)
                {
                    _bytes.Add(_calls.Count, rig.Board.Written[written++]);
                }

                _calls.Add((byte)call);
            }

            byte slice = (byte)(!rig.Board.IsRelayDriven ? 0 : rig.IsToolRunning ? Tool : 1);
            while (_slices.Count * (long)Slice <= rig.Time)
            {
                _slices.Add(slice);
            }
        }

        _firstCalls.Add(_calls.Count);
    }

    /// <summary>Gets the day.</summary>
    public Day Day { get; }

    /// <summary>Gets the number of calls.</summary>
    public int Calls => _calls.Count;

    /// <summary>Gives the step of a call.</summary>
    /// <param name="call">Number of the call in the day.</param>
    /// <returns>Number of the step, and of the call in it.</returns>
    public (int Step, int Call) At(int call)
    {
        int step = _firstCalls.BinarySearch(call);
        step = step < 0 ? ~step - 1 : step;
        while (_firstCalls[step + 1] <= call)
        {
            step++;
        }

        return (step, call - _firstCalls[step]);
    }

    /// <summary>Gives what is called.</summary>
    /// <param name="call">Number of the call in the day.</param>
    /// <returns>The member.</returns>
    public BoardCall Member(int call) => (BoardCall)_calls[call];

    /// <summary>Gives the number of bytes that a write to flash writes.</summary>
    /// <param name="call">Number of the call in the day.</param>
    /// <returns>Bytes.</returns>
    public int BytesOf(int call) => _bytes[call];

    /// <summary>Says whether the relay is closed at about a time.</summary>
    /// <param name="time">Shop time in microseconds; after the day it is open.</param>
    /// <returns>True when it is.</returns>
    public bool IsClosedAbout(long time)
    {
        int last = Math.Min(_slices.Count - 1, (int)((time + Early) / Slice));
        for (int i = (int)Math.Max(0, (time - Late) / Slice); i <= last; i++)
        {
            if (_slices[i] != 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Says whether the vacuum is on while a tool runs.</summary>
    /// <param name="time">Shop time in microseconds.</param>
    /// <returns>True when it is.</returns>
    public bool IsClosedForATool(long time) => time / Slice < _slices.Count && _slices[(int)(time / Slice)] == Tool;

    /// <summary>Says whether the console says from a second before a time to a second after another that the vacuum is held
    /// off.</summary>
    /// <param name="from">Shop time in microseconds.</param>
    /// <param name="to">The other.</param>
    /// <returns>True when it does.</returns>
    public bool IsHeld(long from, long to)
    {
        int first = (int)(from / ASecond) - 1;
        int last = (int)(to / ASecond) + 1;
        return first >= 0 && last < _held.Count && _held.GetRange(first, last - first + 1).TrueForAll(held => held);
    }
}
