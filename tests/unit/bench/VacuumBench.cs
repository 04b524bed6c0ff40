using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A watch over the vacuum's line on the bench, with the faults it tells of.</summary>
internal sealed class VacuumBench
{
    public readonly FaultMonitor Faults;
    public readonly VacuumWatch Watch;
    public long Now = 1000000;

    public VacuumBench()
    {
        Faults = new FaultMonitor(new NoticeQueue(), Now);
        Watch = new VacuumWatch(Now);
    }

    /// <summary>The relay closes or opens, and the line shows a current for a time.</summary>
    public void Switch(bool closed, int milliamperes, int milliseconds)
    {
        Watch.NoteRelay(closed, Now);
        Run(milliamperes, milliseconds);
    }

    /// <summary>The line shows a current for a time.</summary>
    public void Run(int milliamperes, int milliseconds)
    {
        for (int i = 0; i < milliseconds; i += 50)
        {
            Now += 50000;
            Watch.Accept(milliamperes, Faults, Now);
        }
    }
}
