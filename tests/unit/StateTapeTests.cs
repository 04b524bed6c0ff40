using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class StateTapeTests
{
    [TestMethod]
    public void WhatIsWrittenIsReadBackInItsOrder()
    {
        StateTape tape = new StateTape();
        int[] numbers = Texts.Numbers("3 -4 -2147483648");
        long[] longs = { long.MaxValue, long.MinValue };
        tape.Write();
        Assert.AreEqual(-7, tape.Number(-7));
        Assert.AreEqual(12345678901L, tape.Number(12345678901L));
        Assert.IsTrue(tape.Flag(true));
        Assert.IsFalse(tape.Flag(false));
        tape.Numbers(numbers);
        tape.Numbers(longs);
        Assert.AreEqual("3 -4 -2147483648", Texts.Row(numbers));

        int[] otherNumbers = new int[3];
        long[] otherLongs = new long[2];
        tape.Read();
        Assert.AreEqual(-7, tape.Number(99));
        Assert.AreEqual(12345678901L, tape.Number(99L));
        Assert.IsTrue(tape.Flag(false));
        Assert.IsFalse(tape.Flag(true));
        tape.Numbers(otherNumbers);
        tape.Numbers(otherLongs);
        Assert.AreEqual("3 -4 -2147483648", Texts.Row(otherNumbers));
        Assert.AreEqual(long.MaxValue, otherLongs[0]);
        Assert.AreEqual(long.MinValue, otherLongs[1]);
    }

    [TestMethod]
    public void WritingAgainBeginsAgain()
    {
        StateTape tape = new StateTape();
        tape.Write();
        tape.Number(1);
        tape.Number(2);
        tape.Write();
        tape.Number(5);
        Assert.AreEqual(5L, tape[0]);
        Assert.AreEqual(2L, tape[1]);
    }

    [TestMethod]
    public void ANumberIsWhereItsPlaceSays()
    {
        StateTape tape = new StateTape();
        tape[0] = 17;
        tape[StateTape.Size - 1] = long.MinValue;
        Assert.AreEqual(17L, tape[0]);
        Assert.AreEqual(long.MinValue, tape[StateTape.Size - 1]);
        tape.Read();
        Assert.AreEqual(17, tape.Number(0));
    }

    [TestMethod]
    public void TheWholeCoreFitsAndWritingLeavesItAsItWas()
    {
        CoreBench bench = Used();
        StateTape tape = bench.Tape();
        StateTape again = bench.Tape();
        Assert.IsTrue(AreSame(tape, again));
    }

    // Both see the same from here on: a tool that runs, stops, and starts again while the vacuum runs on.
    [TestMethod]
    public void ACoreThatTookTheTapeGoesOnAsTheOtherDoes()
    {
        CoreBench first = Used();
        CoreBench second = new CoreBench(CoreBench.Settings());
        second.Now = first.Now;
        StateTape tape = first.Tape();
        second.Take(tape);

        Go(first);
        Go(second);
        StateTape ofFirst = first.Tape();
        Assert.IsTrue(AreSame(ofFirst, second.Tape()));
        Assert.IsFalse(AreSame(tape, ofFirst));
        Assert.AreEqual(first.OpenedAt, second.OpenedAt);
    }

    private static CoreBench Used()
    {
        CoreBench bench = new CoreBench(CoreBench.Settings());
        bench.Run(0, 2000);
        bench.Run(3000, 3000);
        bench.Run(0, 1000);
        return bench;
    }

    private static void Go(CoreBench bench)
    {
        bench.Run(3000, 2000);
        bench.Run(0, 7000);
    }

    private static bool AreSame(StateTape first, StateTape second)
    {
        bool areSame = true;
        for (int i = 0; i < StateTape.Size; i++)
        {
            areSame = areSame && first[i] == second[i];
        }

        return areSame;
    }
}
