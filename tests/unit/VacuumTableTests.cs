using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// Every cell, written out from the words of the design and not from the table. A row reads: in this state, when this
// happens, that state follows.
[TestClass]
public class VacuumTableTests
{
    [TestMethod]
    [DataRow("idle", "tool starts", "starting")]
    [DataRow("idle", "tool stops", "idle")]
    [DataRow("idle", "time up", "idle")]
    [DataRow("idle", "hand on", "by hand")]
    [DataRow("idle", "hand off", "idle")]
    [DataRow("idle", "auto", "idle")]
    [DataRow("idle", "hold", "held")]
    [DataRow("idle", "fault rose", "faulted")]
    [DataRow("idle", "fault ended", "idle")]

    // A tool that stops before the delay is over was too short for the vacuum.
    [DataRow("starting", "tool starts", "starting")]
    [DataRow("starting", "tool stops", "idle")]
    [DataRow("starting", "time up", "following")]
    [DataRow("starting", "hand on", "by hand")]
    [DataRow("starting", "hand off", "awaiting stop")]
    [DataRow("starting", "auto", "starting")]
    [DataRow("starting", "hold", "held")]
    [DataRow("starting", "fault rose", "faulted")]
    [DataRow("starting", "fault ended", "starting")]

    [DataRow("following", "tool starts", "following")]
    [DataRow("following", "tool stops", "running on")]
    [DataRow("following", "time up", "awaiting stop")]
    [DataRow("following", "hand on", "by hand")]
    [DataRow("following", "hand off", "awaiting stop")]
    [DataRow("following", "auto", "following")]
    [DataRow("following", "hold", "held")]
    [DataRow("following", "fault rose", "faulted")]
    [DataRow("following", "fault ended", "following")]

    // A restart is never made to wait: the tool's start during the run-on keeps the vacuum on.
    [DataRow("running on", "tool starts", "following")]
    [DataRow("running on", "tool stops", "running on")]
    [DataRow("running on", "time up", "idle")]
    [DataRow("running on", "hand on", "by hand")]
    [DataRow("running on", "hand off", "idle")]
    [DataRow("running on", "auto", "running on")]
    [DataRow("running on", "hold", "held")]
    [DataRow("running on", "fault rose", "faulted")]
    [DataRow("running on", "fault ended", "running on")]

    // The tool does not matter while by hand. Its end, by time or by hand, goes through the run-on.
    [DataRow("by hand", "tool starts", "by hand")]
    [DataRow("by hand", "tool stops", "by hand")]
    [DataRow("by hand", "time up", "running on")]
    [DataRow("by hand", "hand on", "by hand")]
    [DataRow("by hand", "hand off", "awaiting stop")]
    [DataRow("by hand", "auto", "running on")]
    [DataRow("by hand", "hold", "held")]
    [DataRow("by hand", "fault rose", "faulted")]
    [DataRow("by hand", "fault ended", "by hand")]

    // Off already: a fault changes nothing, so that its end cannot bring back a vacuum that was switched off by hand.
    [DataRow("awaiting stop", "tool starts", "awaiting stop")]
    [DataRow("awaiting stop", "tool stops", "idle")]
    [DataRow("awaiting stop", "time up", "awaiting stop")]
    [DataRow("awaiting stop", "hand on", "by hand")]
    [DataRow("awaiting stop", "hand off", "awaiting stop")]
    [DataRow("awaiting stop", "auto", "idle")]
    [DataRow("awaiting stop", "hold", "held")]
    [DataRow("awaiting stop", "fault rose", "awaiting stop")]
    [DataRow("awaiting stop", "fault ended", "awaiting stop")]

    // Somebody may have a hand in the bin: only the person's release ends it.
    [DataRow("held", "tool starts", "held")]
    [DataRow("held", "tool stops", "held")]
    [DataRow("held", "time up", "held")]
    [DataRow("held", "hand on", "held")]
    [DataRow("held", "hand off", "held")]
    [DataRow("held", "auto", "idle")]
    [DataRow("held", "hold", "held")]
    [DataRow("held", "fault rose", "held")]
    [DataRow("held", "fault ended", "held")]

    // Not on even by hand: the vacuum does not run on readings that cannot be believed. Off by hand outlives the fault.
    [DataRow("faulted", "tool starts", "faulted")]
    [DataRow("faulted", "tool stops", "faulted")]
    [DataRow("faulted", "time up", "faulted")]
    [DataRow("faulted", "hand on", "faulted")]
    [DataRow("faulted", "hand off", "awaiting stop")]
    [DataRow("faulted", "auto", "faulted")]
    [DataRow("faulted", "hold", "held")]
    [DataRow("faulted", "fault rose", "faulted")]
    [DataRow("faulted", "fault ended", "idle")]
    public void EveryCellIsAsDecided(string state, string happened, string next)
    {
        Assert.AreEqual(next, Words.Of(new VacuumTable().Next(Words.State(state), Words.Event(happened))));
    }

    [TestMethod]
    public void TheTableHasNoMoreCellsThanAreTestedHere()
    {
        int cells = 0;
        for (int i = 0; i < VacuumTable.States; i++)
        {
            for (int j = 0; j < VacuumTable.Events; j++)
            {
                // Words.Of fails for a state or an event that has no words here.
                VacuumState next = new VacuumTable().Next((VacuumState)i, (VacuumEvent)j);
                cells += Words.Of(next).Length > 0 && Words.Of((VacuumEvent)j).Length > 0 ? 1 : 0;
            }
        }

        Assert.AreEqual(72, cells);
    }
}
