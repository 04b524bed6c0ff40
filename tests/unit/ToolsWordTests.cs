using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>The word 'tools', and what comes of it.</summary>
[TestClass]
public class ToolsWordTests
{
    private const int Compressor = 2000;

    [TestMethod]
    public void AToolIsListedAfterThreeStarts()
    {
        SwitchBench bench = new SwitchBench();
        AssertHas(bench.Answer("tools"), "No tool is known yet");
        Start(bench, 3);
        AssertHas(bench.Answer("tools"), "3 starts");
        AssertHas(bench.Answer("tools name 1 table saw"), "1  table saw");
        AssertHas(bench.Answer("tools run-on 1 8"), "run-on 8 s");
        bench.Tool(Compressor, 3000);
        AssertHas(bench.Answer("why"), "tool 1 (table saw)");
        bench.Tool(0, 6500);
        Assert.AreEqual(Words.Of(VacuumState.RunOn), Words.Of(bench.State));
        bench.Run(3000);
        Assert.AreEqual(Words.Of(VacuumState.Idle), Words.Of(bench.State));
        AssertHas(bench.Answer("events"), "vacuum told off: run-on over, tool 1");
    }

    [TestMethod]
    [DataRow("tools run-on", "Say which tool")]
    [DataRow("tools run-on 7", "There is no tool '7'")]
    [DataRow("tools run-on 1", "is no value for run-on")]
    [DataRow("tools run-on 1 soon", "is no value for run-on")]
    [DataRow("tools run-on 1 1000", "run-on cannot be 1000")]
    [DataRow("tools run-on 0 5", "There is no tool '0'")]
    [DataRow("tools name 1", "A name has 1 to 20")]
    [DataRow("tools name 1 my 'saw'", "A name has 1 to 20")]
    [DataRow("tools name 1 abcdefghijklmnopqrstu", "A name has 1 to 20")]
    [DataRow("tools paint 1", "is nothing")]
    [DataRow("tools forget", "Say which tool")]
    [DataRow("tools forget 1 2", "Nothing may stand behind")]
    [DataRow("tools put 1 1,2,3", "no line of 'tools copy'")]
    public void BadInputChangesNothing(string line, string answer)
    {
        SwitchBench bench = new SwitchBench();
        Start(bench, 3);
        string before = bench.Answer("tools");
        AssertHas(bench.Answer(line), answer);
        Assert.AreEqual(before, bench.Answer("tools"));
    }

    [TestMethod]
    public void ALoadThatNeedsNoVacuumIsNotFollowed()
    {
        SwitchBench bench = new SwitchBench();
        Start(bench, 3);
        AssertHas(bench.Answer("tools no-vacuum 1"), "no vacuum");
        bench.Tool(Compressor, 2500);
        Assert.AreEqual(Words.Of(VacuumState.Idle), Words.Of(bench.State));
        AssertHas(bench.Answer("why"), "which needs no vacuum");

        // A saw beside it is followed, and after it the load alone is not.
        bench.Tool(Compressor + SwitchBench.Saw, 3000);
        Assert.AreEqual(Words.Of(VacuumState.On), Words.Of(bench.State));
        bench.Tool(Compressor, 2000);
        Assert.AreEqual(Words.Of(VacuumState.RunOn), Words.Of(bench.State));
        Assert.IsTrue(bench.Answer("why").IndexOf("tool 1") < 0);
        bench.Tool(Compressor, 5500);
        Assert.AreEqual(Words.Of(VacuumState.Idle), Words.Of(bench.State));
        bench.Answer("tools vacuum 1");
        bench.Run(2500);
        Assert.AreEqual(Words.Of(VacuumState.On), Words.Of(bench.State));
    }

    [TestMethod]
    public void AHandAndAHoldGoBeforeIt()
    {
        SwitchBench bench = new SwitchBench();
        Start(bench, 3);
        bench.Answer("tools no-vacuum 1");
        bench.Tool(Compressor, 2500);
        bench.Answer("vacuum on");
        Assert.AreEqual(Words.Of(VacuumState.ByHand), Words.Of(bench.State));
        bench.Answer("hold");
        Assert.AreEqual(Words.Of(VacuumState.Held), Words.Of(bench.State));
        bench.Tool(Compressor + SwitchBench.Saw, 3000);
        Assert.AreEqual(Words.Of(VacuumState.Held), Words.Of(bench.State));
    }

    [TestMethod]
    public void AFaultGoesBeforeIt()
    {
        SwitchBench bench = new SwitchBench();
        Start(bench, 3);
        bench.Answer("tools no-vacuum 1");
        bench.Tool(Compressor, 2500);
        bench.Switch.Core.Faults.See(Fault.ClockStands, 0, bench.Switch.Now);
        bench.Tool(Compressor + SwitchBench.Saw, 3000);
        Assert.AreEqual(Words.Of(VacuumState.Fault), Words.Of(bench.State));
    }

    [TestMethod]
    public void TwoToolsHaveTwoNames()
    {
        SwitchBench bench = new SwitchBench();
        Start(bench, 3);
        for (int i = 0; i < ToolBook.StartsToKnow; i++)
        {
            bench.Tool(2 * SwitchBench.Saw, 4000);
            bench.Tool(0, 6000);
        }

        bench.Answer("tools name 1 saw");
        AssertHas(bench.Answer("tools name 2 saw"), "Another tool has this name");
        AssertHas(bench.Answer("tools name 2 planer"), "planer");
    }

    [TestMethod]
    public void WhatIsCopiedCanBeTypedAgain()
    {
        SwitchBench bench = new SwitchBench();
        Start(bench, 3);
        bench.Answer("tools name 1 air");
        bench.Answer("tools run-on 1 1.5");
        string list = bench.Answer("tools");
        string[] lines = bench.Answer("tools copy").Split('\n');
        Assert.AreEqual(3, lines.Length);
        bench.Answer("tools forget 1");
        Assert.AreNotEqual(list, bench.Answer("tools"));
        for (int i = 0; i < lines.Length; i++)
        {
            bench.Answer(lines[i].Trim());
        }

        Assert.AreEqual(list, bench.Answer("tools"));
    }

    // With a hand the vacuum runs for no tool, and what starts meanwhile is not looked at.
    [TestMethod]
    public void WhatRanBeforeIsNotNamedLater()
    {
        SwitchBench bench = new SwitchBench();
        Start(bench, 4);
        bench.Answer("vacuum on");
        AssertHas(bench.Answer("events"), "vacuum on: by hand");
        Assert.IsTrue(bench.Answer("events").IndexOf("by hand, tool 1") < 0);
        bench.Tool(2 * SwitchBench.Saw, 3000);
        bench.Answer("vacuum auto");
        Assert.AreEqual(Words.Of(VacuumState.On), Words.Of(bench.State));
        Assert.IsTrue(bench.Answer("why").IndexOf("tool 1") < 0);
    }

    private static void Start(SwitchBench bench, int times)
    {
        for (int i = 0; i < times; i++)
        {
            bench.Tool(Compressor, 4000);
            bench.Tool(0, 6000);
        }
    }

    private static void AssertHas(string text, string part)
    {
        Assert.IsTrue(text.IndexOf(part) >= 0, text);
    }
}
