using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A watch over the vacuum's own line under test, with the fault monitor to which it reports.</summary>
internal sealed class VacuumBench
{
    public readonly FaultMonitor Faults;
    public readonly VacuumWatch Watch;
    public long Now = 1000000;
    private bool _isClosed;

    public VacuumBench()
    {
        Faults = new FaultMonitor(new NoticeQueue(), Now);
        Watch = new VacuumWatch(Now);
    }

    /// <summary>The relay is told to close or to open.</summary>
    public void Relay(bool isClosed)
    {
        _isClosed = isClosed;
        Watch.NoteRelay(Now);
    }

    /// <summary>The relay closes or opens, and the vacuum's line shows a current for a time.</summary>
    public void Switch(bool isClosed, int milliamperes, int milliseconds)
    {
        Relay(isClosed);
        Run(milliamperes, milliseconds);
    }

    /// <summary>The vacuum's line shows a current for a time.</summary>
    public void Run(int milliamperes, int milliseconds)
    {
        for (int i = 0; i < milliseconds; i += 50)
        {
            Now += 50000;
            Watch.Accept(milliamperes, _isClosed, Faults, Now);
        }
    }
}
