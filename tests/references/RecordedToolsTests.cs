using System.Globalization;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// Two vacuums whose starts are recorded as rms currents every 30 and 100 ms: the open smart-plug recordings (repository
/// ancy-gg/TinyML_Smart-Plug). Height, what follows it, level and settling are taken from them by hand; there is no waveform.
/// </summary>
[TestClass]
public sealed class RecordedToolsTests
{
    private const int SwingAnAmpere = 1000;
    private const double OnAmperes = 0.3;
    private const double AfterMilliseconds = 110;
    private const int StretchMilliseconds = 20;
    private const double Settled = 33.0 / 32;

    private int _unsure;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void A_vacuum_and_a_hand_vacuum_are_told_apart()
    {
        ToolFigures[] hand = Starts("brush_universal_motor__handheld_vacuum");
        ToolFigures[] floor = Starts("universal_motor__vacuum_cleaner");
        ToolBook book = new();
        int handPlace = LearnThrice(book, hand);
        int floorPlace = LearnThrice(book, floor);
        Assert.AreNotEqual(handPlace, floorPlace);
        AssertNamed(book, handPlace, hand);
        AssertNamed(book, floorPlace, floor);

        // One of the starts is higher than all others by a quarter.
        Assert.IsLessThanOrEqualTo(1, _unsure);
    }

    private static int LearnThrice(ToolBook book, ToolFigures[] starts)
    {
        int[] places = [.. starts.Take(ToolBook.StartsToKnow).Select(seen => Ask(book, seen, true).Learned)];
        Assert.AreEqual(places.Min(), places.Max(), "three starts of one tool are taken for those of several");
        return places[0];
    }

    private static ToolGuess Ask(ToolBook book, ToolFigures seen, bool learns)
    {
        ToolGuess guess = new(book);
        guess.Ask(learns);
        while (guess.IsAsking)
        {
            guess.Step(seen);
        }

        return guess;
    }

    private static ToolFigures[] Starts(string name) =>
    [
        .. Directory.GetFiles(Recordings.Folder("smartplug-rms"), name + "*start.csv").Order().Select(Seen),
    ];

    private static ToolFigures Seen(string file)
    {
        string[] lines = File.ReadAllLines(file);
        string[] heads = lines[0].Split(',');
        int time = Array.IndexOf(heads, "uptime_ms");
        int rms = Array.IndexOf(heads, "i_rms");
        (double Milliseconds, double Amperes)[] all =
        [
            .. lines.Skip(1).Select(line => line.Split(',')).Select(cells => (
                double.Parse(cells[time], CultureInfo.InvariantCulture), double.Parse(cells[rms], CultureInfo.InvariantCulture)))
                .SkipWhile(row => row.Item2 < OnAmperes).TakeWhile(row => row.Item2 >= OnAmperes),
        ];
        double[] end = [.. all.TakeLast(all.Length / 5).Select(row => row.Amperes).Order()];
        double level = end[end.Length / 2];
        double begun = all[0].Milliseconds;
        return new ToolFigures
        {
            Height = Swing(Math.Max(all[0].Amperes, all[1].Amperes)),
            After = Swing(all.First(row => row.Milliseconds >= begun + AfterMilliseconds).Amperes),
            Level = Swing(level),
            Length = (int)((all.First(row => row.Amperes <= Settled * level).Milliseconds - begun) / StretchMilliseconds),
        };
    }

    private static int Swing(double amperes) => (int)(amperes * SwingAnAmpere);

    private void AssertNamed(ToolBook book, int place, ToolFigures[] starts)
    {
        foreach (ToolFigures seen in starts.Skip(ToolBook.StartsToKnow))
        {
            ToolGuess guess = Ask(book, seen, false);
            TestContext.WriteLine(
                $"height {seen.Height}, after {seen.After}, level {seen.Level}, length {seen.Length}: {guess.Tool}");
            Assert.IsTrue(guess.Tool == place || guess.Tool == ToolGuess.None, "taken for the other one");
            _unsure += guess.Tool == ToolGuess.None ? 1 : 0;
        }
    }
}
