using System;
using System.Collections.Generic;
using System.Linq;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests.Sequences;

// Every sequence of events to a depth of eight. Sequences that lead to the same switch are followed once.
[TestClass]
public class SequenceTests
{
    private const int Depth = 8;

    private static readonly SequenceEvent[] s_events = Enum.GetValues<SequenceEvent>();

    public TestContext TestContext { get; set; }

    // As delivered but for the starts a minute, which eight events must be able to reach; then a fixed delay and short times;
    // then nothing that waits or ends, and every run-on stretched.
    [TestMethod]
    [DataRow(CoreSettings.AfterSurge, 5000, 2, 4 * 60)]
    [DataRow(300, 1000, 2, 20)]
    [DataRow(0, 0, 1, 0)]
    public void EverySequenceOfEightEventsKeepsThePromises(int startDelay, int runOn, int startsAMinute, int longestRunMinutes)
    {
        CoreSettings settings = CoreBench.Settings(
            startDelay, runOn: runOn, startsAMinute: startsAMinute, longestRun: longestRunMinutes * 60000);

        HashSet<string> known = new HashSet<string>(StringComparer.Ordinal);
        HashSet<VacuumState> states = new HashSet<VacuumState>();
        List<(SequencedVacuum Vacuum, string Way)> frontier = new() { (new SequencedVacuum(settings), "") };
        long moves = 0;
        for (int depth = 0; depth < Depth; depth++)
        {
            List<(SequencedVacuum Vacuum, string Way)> next = new();
            foreach ((SequencedVacuum before, string way) in frontier)
            {
                foreach (SequenceEvent happened in s_events)
                {
                    SequencedVacuum after = before.Fork();
                    after.Do(happened);
                    moves++;
                    string wayHere = way + " " + happened;
                    Promise broken = Promises.All.FirstOrDefault(promise => !promise.IsKept(before, happened, after));
                    Assert.IsNull(broken, $"{broken?.Words} Broken by:{wayHere}; now {after.Key}");
                    if (known.Add(after.Key))
                    {
                        states.Add(after.Control.State);
                        next.Add((after, wayHere));
                    }
                }
            }

            frontier = next;
        }

        TestContext.WriteLine("{0} different switches, {1} moves", known.Count, moves);
        // Else a state was never tried. Without a start delay nobody meets the switch in it.
        Assert.AreEqual(startDelay == 0 ? VacuumTable.States - 1 : VacuumTable.States, states.Count);
    }
}
