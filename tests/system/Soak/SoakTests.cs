using NanoDustSwitch.Simulator.Commands;
using NanoDustSwitch.Simulator.Soak;

namespace NanoDustSwitch.SystemTests.Soak;

/// <summary>An hour of the soak that <c>soak --hours 500</c> runs.</summary>
[TestClass]
public sealed class SoakTests
{
    // An evening with small tools and large ones.
    private const long Seed = 3;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void An_hour_of_evenings_misses_nothing_and_starts_nothing_by_itself()
    {
        SoakRun run = new SoakRun(Seed, 1).Run(_ => { });
        TestContext.WriteLine(run.Sums.ToString());
        string[] verdicts = [.. run.Verdicts];
        TestContext.WriteLine(string.Join(Environment.NewLine, verdicts));

        // Two in a hundred may be inside the surge; of so few starts that is one.
        Assert.IsTrue(run.Sums.Counts.IsRight && run.Heap.IsFlat);
        Assert.IsLessThanOrEqualTo(1, run.Sums.Counts.InSurge + run.Sums.Counts.Wild);
        Assert.HasCount(run.Sums.Counts.InSurge + run.Sums.Counts.Wild, verdicts);
        Assert.IsGreaterThan(20, run.Sums.Starts);
        Assert.IsGreaterThanOrEqualTo(1, run.Sums.Hours);
    }

    [TestMethod]
    public void The_same_seed_is_the_same_evening()
    {
        Simulator.Days.Day one = Evening.Draw(7);
        Simulator.Days.Day other = Evening.Draw(7);
        Assert.AreEqual(string.Join(";", one.Steps), string.Join(";", other.Steps));
        Assert.AreNotEqual(string.Join(";", one.Steps), string.Join(";", Evening.Draw(8).Steps));
    }

    [TestMethod]
    [DataRow("soak --hours 0", "--hours 0 is not allowed: more than 0, at most 100000.")]
    [DataRow("soak --hours -3", "--hours -3 is not allowed: more than 0, at most 100000.")]
    [DataRow("soak --hours NaN", "--hours NaN is not allowed: more than 0, at most 100000.")]
    [DataRow("soak --seed -1", "--seed -1 is not allowed: 0 to 2147483647.")]
    [DataRow("dya", "Unrecognized command or argument 'dya'. Did you mean 'day'? '--help' shows what there is.")]
    [DataRow(
        "--seed abc",
        "Cannot parse argument 'abc' for option '--seed'; it takes a whole number. '--help' shows what there is.")]
    [DataRow("--sed 3", "Unrecognized command or argument '--sed'. Did you mean '--seed'? '--help' shows what there is.")]
    [DataRow(
        "soak --huors 3", "Unrecognized command or argument '--huors'. Did you mean '--hours'? '--help' shows what there is.")]
    [DataRow("ser", "Unrecognized command or argument 'ser'. Did you mean 'serve'? '--help' shows what there is.")]
    [DataRow("xyz", "Unrecognized command or argument 'xyz'. '--help' shows what there is.")]
    [DataRow("--csv ", "--csv cannot be written: '' is no name of a file.")]
    [DataRow("--csv nodir/x.csv", "--csv nodir/x.csv cannot be written: there is no folder 'nodir'.")]
    [DataRow("--chart nodir/x.png", "--chart nodir/x.png cannot be written: there is no folder 'nodir'.")]
    [DataRow("live --settings nodir/x", "--settings nodir/x cannot be written: there is no folder 'nodir'.")]
    [DataRow("serve --settings .", "--settings . cannot be written: it is a folder; name a file in it.")]
    [DataRow("watch --port x", "'watch' is a verb of the inspector: dotnet run --project firmware/inspector -- watch")]
    public void What_cannot_be_done_is_refused_in_a_sentence(string typed, string sentence)
    {
        TextWriter before = Console.Error;
        using StringWriter said = new();
        Console.SetError(said);
        int code;
        try
        {
            code = CommandLine.Run(typed.Split(' '));
        }
        finally
        {
            Console.SetError(before);
        }

        Assert.AreEqual(sentence, said.ToString().Trim());
        Assert.AreEqual(2, code);
    }
}
