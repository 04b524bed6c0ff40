using System;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>A memory of tools that is torn or holds anything at all: nothing throws, and no current starts no vacuum.</summary>
[TestClass]
public class RandomToolsTests
{
    private const int Times = 300;

    [TestMethod]
    public void WhateverTheBookHoldsItCanBeAsked()
    {
        Random random = new(1);
        for (int i = 0; i < 100 * Times; i++)
        {
            ToolBook book = new();
            for (int place = 0; place < ToolBook.Places; place++)
            {
                for (int figure = 0; figure < ToolBook.Figures; figure++)
                {
                    book[place, (ToolFigure)figure] = Any(random);
                }

                book.Check(place);
            }

            ToolFigures seen = new()
            {
                Height = 1 + random.Next(ToolFigures.MostSwing),
                After = random.Next(ToolFigures.MostSwing),
                Level = 1 + random.Next(ToolFigures.MostSwing),
                Third = random.Next(ToolFigures.MostPart),
                Half = random.Next(ToolFigures.MostPart),
                Length = random.Next(256),
            };
            ToolGuess guess = new(book);
            guess.Ask(true);
            while (guess.IsAsking)
            {
                guess.Step(seen);
            }

            guess.MayNeedNone(seen);
            Assert.IsTrue(book.Check(guess.Learned));
        }
    }

    // The check value of the slot is right, so nothing but the numbers themselves tells that they are none.
    [TestMethod]
    public void WhateverIsInFlashAQuietLineStaysQuietAndASawStarts()
    {
        Random random = new(2);
        for (int i = 0; i < Times / 10; i++)
        {
            SwitchBench bench = new();
            SlotPair slots = new(new SafeBoard(bench.Board), Slots.Tools);
            random.NextBytes(slots.Buffer);
            LittleEndian.Write(slots.Buffer, SlotPair.Head, bench.Switch.Settings[SettingId.SensorGain]);
            LittleEndian.Write(slots.Buffer, SlotPair.Head + 4, bench.Switch.Settings[SettingId.Turns]);
            slots.Write(KnownTools.Version, SlotPair.MostContent);
            bench.Boot();
            Assert.IsFalse(bench.Switch.Core.Vacuum.WantsVacuum);
            bench.Run(1000);
            Assert.AreEqual(VacuumState.Idle, bench.State);
            bench.Answer("tools");
            bench.Tool(SwitchBench.Saw, 3500);
            Assert.AreEqual(VacuumState.On, bench.State);
        }
    }

    private static int Any(Random random) => random.Next(4) switch
    {
        0 => random.Next(int.MinValue, int.MaxValue),
        1 => random.Next(4),
        _ => random.Next(70_000),
    };
}
