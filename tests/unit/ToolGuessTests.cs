using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>Which tool it is. The figures are the author's; how often it is right on motors is told by the benchmark.</summary>
[TestClass]
public class ToolGuessTests
{
    [TestMethod]
    public void ThreeStartsMakeATool()
    {
        ToolBook book = new ToolBook();
        for (int i = 0; i < ToolBook.StartsToKnow; i++)
        {
            Assert.AreEqual(ToolGuess.None, Guesses.Ask(book, Guesses.Seen(20000, 19000, 4000)).Tool);
            Assert.AreEqual(0, Guesses.Learn(book, Guesses.Seen(20000 + (400 * i), 19000, 4000 - (50 * i))));
        }

        ToolGuess guess = Guesses.Ask(book, Guesses.Seen(20100, 19100, 3950));
        Assert.AreEqual(0, guess.Tool);
        Assert.IsTrue(guess.IsSure);
    }

    [TestMethod]
    public void AToolOfAQuarterMoreIsAnother()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(20000, 19000, 4000));
        Guesses.LearnThrice(book, Guesses.Seen(25000, 23700, 5000));
        Assert.AreEqual(0, Guesses.Ask(book, Guesses.Seen(20800, 19700, 4150)).Tool);
        Assert.AreEqual(1, Guesses.Ask(book, Guesses.Seen(24200, 23000, 4850)).Tool);
        Assert.AreEqual(ToolGuess.None, Guesses.Ask(book, Guesses.Seen(16000, 15200, 3200)).Tool);
    }

    // The start tells it, whatever it cuts; but not at more than three times the idling current.
    [TestMethod]
    [DataRow(8000, true)]
    [DataRow(11900, true)]
    [DataRow(16000, false)]
    public void AToolIsKnownInACut(int level, bool isKnown)
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(30000, 28000, 4000));
        ToolGuess guess = Guesses.Ask(book, Guesses.Seen(30200, 28100, level));
        Assert.AreEqual(isKnown, guess.Tool == 0);
        Assert.IsFalse(guess.IsSure);
    }

    [TestMethod]
    public void TwoAlikeAreNotToldApart()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(20000, 19000, 4000));
        Copy(book, 0, 1);
        Assert.AreEqual(ToolGuess.None, Guesses.Ask(book, Guesses.Seen(20000, 19000, 4000)).Tool);
    }

    [TestMethod]
    public void TheOneSeenLongestAgoGivesWayButNotOneThatAPersonNamed()
    {
        ToolBook book = new ToolBook();
        int height = 1000;
        for (int i = 0; i < ToolBook.Places; i++)
        {
            Guesses.LearnThrice(book, Guesses.Seen(height, height, height));
            height = height * 3 / 2;
        }

        book[0, ToolFigure.Named] = 1;
        Assert.AreEqual(1, Guesses.Learn(book, Guesses.Seen(90000, 20000, 30000)));
        Assert.AreEqual(1, book[1, ToolFigure.Starts]);
    }

    [TestMethod]
    public void OfTwelveThatAPersonNamedNoneGivesWay()
    {
        ToolBook book = new ToolBook();
        int height = 1000;
        for (int i = 0; i < ToolBook.Places; i++)
        {
            Guesses.LearnThrice(book, Guesses.Seen(height, height, height));
            book[i, ToolFigure.Named] = 1;
            height = height * 3 / 2;
        }

        int changes = book.Changes;
        Assert.AreEqual(ToolGuess.None, Guesses.Learn(book, Guesses.Seen(90000, 20000, 30000)));
        Assert.AreEqual(changes, book.Changes);
        Assert.AreEqual(0, Guesses.Learn(book, Guesses.Seen(1000, 1000, 1000)));
    }

    [TestMethod]
    public void OnlyASureGuessNeedsNoVacuum()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(20000, 19000, 4000));
        book[0, ToolFigure.Wish] = ToolBook.NoVacuum;
        Assert.IsTrue(Guesses.Ask(book, Guesses.Seen(20000, 19000, 4000)).NeedsNone);
        Assert.IsFalse(Guesses.Ask(book, Guesses.Seen(20000, 19000, 8000)).NeedsNone);
        Assert.IsFalse(Guesses.Ask(book, Guesses.Seen(20000, 19000, 5000)).NeedsNone);
        Assert.IsFalse(Guesses.Ask(book, Guesses.Seen(26000, 24700, 4000)).NeedsNone);
        Assert.IsTrue(Guesses.Ask(book, Guesses.Seen(20000, 19000, 4000)).MayNeedNone(Guesses.Seen(20500, 19000, 0)));
        Assert.IsFalse(Guesses.Ask(book, Guesses.Seen(20000, 19000, 4000)).MayNeedNone(Guesses.Seen(30000, 29000, 0)));
    }

    [TestMethod]
    public void OfTwoThatNeedNoVacuumItIsAllTheSameWhich()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(20000, 19000, 4000));
        Copy(book, 0, 1);
        book[0, ToolFigure.Wish] = ToolBook.NoVacuum;
        Assert.IsFalse(Guesses.Ask(book, Guesses.Seen(20000, 19000, 4000)).NeedsNone);
        book[1, ToolFigure.Wish] = ToolBook.NoVacuum;
        Assert.IsTrue(Guesses.Ask(book, Guesses.Seen(20000, 19000, 4000)).NeedsNone);
    }

    // A heater has nothing but its level to be known by, which follows the mains, and draws the same from its first cycle on.
    [TestMethod]
    [DataRow(4000, 4000, 4000, true)]
    [DataRow(4200, 4200, 4200, true)]
    [DataRow(4500, 4500, 4500, true)]
    [DataRow(4700, 4700, 4700, false)]
    [DataRow(3400, 3400, 3400, false)]
    [DataRow(4000, 4150, 4000, false)]
    [DataRow(3600, 4000, 4000, false)]
    public void AHeaterIsSurelyThatOneOnlyAtItsLevel(int height, int after, int level, bool isSure)
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(4000, 4000, 4000));
        book[0, ToolFigure.Wish] = ToolBook.NoVacuum;
        Assert.AreEqual(isSure, Guesses.Ask(book, Guesses.Seen(height, after, level)).NeedsNone);
    }

    [TestMethod]
    public void WhatWasSeenAtBothEndsOfTheMainsMayNotBeFurtherOff()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(4000, 4000, 4000));
        Guesses.Learn(book, Guesses.Seen(4400, 4400, 4400));
        book[0, ToolFigure.Wish] = ToolBook.NoVacuum;
        Assert.IsTrue(Guesses.Ask(book, Guesses.Seen(4400, 4400, 4400)).NeedsNone);
        Assert.IsFalse(Guesses.Ask(book, Guesses.Seen(4700, 4700, 4700)).NeedsNone);
    }

    // Electronics come first, then what looks like the heater.
    [TestMethod]
    public void AHeaterHasNoFirstOnset()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(4000, 4000, 4000));
        book[0, ToolFigure.Wish] = ToolBook.NoVacuum;
        ToolFigures seen = Guesses.Seen(4000, 4000, 4000);
        seen.First = 900;
        Assert.IsFalse(Guesses.Ask(book, seen).NeedsNone);
    }

    // A share of the third harmonic that is off by so much may be noise where the current is small.
    [TestMethod]
    [DataRow(1700, true)]
    [DataRow(17000, false)]
    public void TheThirdHarmonicOfASmallHeaterIsLessSure(int level, bool isSure)
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(level, level, level));
        book[0, ToolFigure.Wish] = ToolBook.NoVacuum;
        ToolFigures seen = Guesses.Seen(level, level, level);
        seen.Third = 5;
        Assert.AreEqual(isSure, Guesses.Ask(book, seen).NeedsNone);
    }

    // It is given the name, for it is nearer to that tool than to any other, but teaches nothing of it; where that tool needs no
    // vacuum, a second number would start it.
    [TestMethod]
    public void WhatAgreesLittleIsNotLearnedForAKnownTool()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(20000, 19000, 4000));
        ToolFigures seen = Guesses.Seen(24800, 19000, 4000);
        Assert.AreEqual(0, Guesses.Ask(book, seen).Tool);
        Assert.AreEqual(1, Guesses.Learn(book, seen));
        book.Forget(1);
        book[0, ToolFigure.Wish] = ToolBook.NoVacuum;
        Assert.AreEqual(0, Guesses.Learn(book, seen));
    }

    // Of one start alone it is not known how much they differ.
    [TestMethod]
    public void WhatAgreesLittleIsLearnedForAToolThatIsHardlyKnown()
    {
        ToolBook book = new ToolBook();
        Guesses.Learn(book, Guesses.Seen(20000, 19000, 4000));
        Assert.AreEqual(0, Guesses.Learn(book, Guesses.Seen(24500, 19000, 5000)));
        Assert.AreEqual(1, Guesses.Learn(book, Guesses.Seen(40000, 38000, 8000)));
    }

    // A soft start is first seen anywhere on its way up, here to a hump of three times what it settles at.
    [TestMethod]
    public void ASoftStartIsKnownFromAnyHeight()
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(2800, 7400, 2850));
        Assert.AreEqual(0, Guesses.Ask(book, Guesses.Seen(5600, 8900, 2900)).Tool);
        Assert.AreEqual(ToolGuess.None, Guesses.Ask(book, Guesses.Seen(5600, 8900, 4000)).Tool);
        Assert.IsTrue(book.Find(4000, 7900));
        Assert.AreEqual(2850, book.Highest);
        Assert.IsFalse(book.Find(7900, 7900));
        Assert.IsFalse(book.Find(4000, 12000));
    }

    // What was read from flash may be anything.
    [TestMethod]
    [DataRow((int)ToolFigure.Height, -5)]
    [DataRow((int)ToolFigure.After, 0)]
    [DataRow((int)ToolFigure.Least, 9000)]
    [DataRow((int)ToolFigure.Third, -1)]
    [DataRow((int)ToolFigure.HeightSpread, 2000)]
    [DataRow((int)ToolFigure.Starts, 0)]
    [DataRow((int)ToolFigure.Wish, -2)]
    public void WhatIsNoToolIsForgotten(int figure, int number)
    {
        ToolBook book = new ToolBook();
        Guesses.LearnThrice(book, Guesses.Seen(20000, 19000, 4000));
        Assert.IsTrue(book.Check(0));
        book[0, (ToolFigure)figure] = number;
        Assert.IsFalse(book.Check(0));
        Assert.AreEqual(0, book[0, ToolFigure.Height]);
    }

    private static void Copy(ToolBook book, int from, int to)
    {
        for (int i = 0; i < ToolBook.Figures; i++)
        {
            book[to, (ToolFigure)i] = book[from, (ToolFigure)i];
        }
    }
}
