using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A watch over the vacuum's own line under test, with the fault monitor to which it reports.</summary>
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

    /// <summary>The vacuum's line shows a current for a time.</summary>
    public void Run(int milliamperes, int milliseconds)
    {
        for (int i = 0; i < milliseconds; i += 50)
        {
            Now += 50000;
            Watch.Accept(milliamperes, Faults, Now);
        }
    }
}
