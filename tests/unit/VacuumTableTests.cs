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
    [DataRow("idle", "hand on", "by-hand")]
    [DataRow("idle", "hand off", "idle")]
    [DataRow("idle", "auto", "idle")]
    [DataRow("idle", "hold", "held")]
    [DataRow("idle", "fault rose", "fault")]
    [DataRow("idle", "fault ended", "idle")]

    // A tool that stops before the delay is over was too short for the vacuum.
    [DataRow("starting", "tool starts", "starting")]
    [DataRow("starting", "tool stops", "idle")]
    [DataRow("starting", "time up", "on")]
    [DataRow("starting", "hand on", "by-hand")]
    [DataRow("starting", "hand off", "until-stop")]
    [DataRow("starting", "auto", "starting")]
    [DataRow("starting", "hold", "held")]
    [DataRow("starting", "fault rose", "fault")]
    [DataRow("starting", "fault ended", "starting")]

    [DataRow("on", "tool starts", "on")]
    [DataRow("on", "tool stops", "run-on")]
    [DataRow("on", "time up", "until-stop")]
    [DataRow("on", "hand on", "by-hand")]
    [DataRow("on", "hand off", "until-stop")]
    [DataRow("on", "auto", "on")]
    [DataRow("on", "hold", "held")]
    [DataRow("on", "fault rose", "fault")]
    [DataRow("on", "fault ended", "on")]

    // A restart is never made to wait: the tool's start during the run-on keeps the vacuum on.
    [DataRow("run-on", "tool starts", "on")]
    [DataRow("run-on", "tool stops", "run-on")]
    [DataRow("run-on", "time up", "idle")]
    [DataRow("run-on", "hand on", "by-hand")]
    [DataRow("run-on", "hand off", "idle")]
    [DataRow("run-on", "auto", "run-on")]
    [DataRow("run-on", "hold", "held")]
    [DataRow("run-on", "fault rose", "fault")]
    [DataRow("run-on", "fault ended", "run-on")]

    // The tool does not matter while by hand. Its end, by time or by hand, goes through the run-on.
    [DataRow("by-hand", "tool starts", "by-hand")]
    [DataRow("by-hand", "tool stops", "by-hand")]
    [DataRow("by-hand", "time up", "run-on")]
    [DataRow("by-hand", "hand on", "by-hand")]
    [DataRow("by-hand", "hand off", "until-stop")]
    [DataRow("by-hand", "auto", "run-on")]
    [DataRow("by-hand", "hold", "held")]
    [DataRow("by-hand", "fault rose", "fault")]
    [DataRow("by-hand", "fault ended", "by-hand")]

    // Off already: a fault changes nothing, so that its end cannot bring back a vacuum that was switched off by hand.
    [DataRow("until-stop", "tool starts", "until-stop")]
    [DataRow("until-stop", "tool stops", "idle")]
    [DataRow("until-stop", "time up", "until-stop")]
    [DataRow("until-stop", "hand on", "by-hand")]
    [DataRow("until-stop", "hand off", "until-stop")]
    [DataRow("until-stop", "auto", "idle")]
    [DataRow("until-stop", "hold", "held")]
    [DataRow("until-stop", "fault rose", "until-stop")]
    [DataRow("until-stop", "fault ended", "until-stop")]

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
    [DataRow("fault", "tool starts", "fault")]
    [DataRow("fault", "tool stops", "fault")]
    [DataRow("fault", "time up", "fault")]
    [DataRow("fault", "hand on", "fault")]
    [DataRow("fault", "hand off", "until-stop")]
    [DataRow("fault", "auto", "fault")]
    [DataRow("fault", "hold", "held")]
    [DataRow("fault", "fault rose", "fault")]
    [DataRow("fault", "fault ended", "idle")]
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
