using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.SizingTests;

/// <summary>The changes that the program offers, typed as it says them: each must make it fit.</summary>
[TestClass]
public sealed class ChangesTests
{
    public static IEnumerable<object[]> Lines =>
        WorkedCases.All.Where(each => each.ExitCode == 1).Select(each => new object[] { each.Line });

    [TestMethod]
    [DynamicData(nameof(Lines))]
    [DataRow("--vacuum 4A --tool 1hp --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A")]
    [DataRow(
        "--vacuum 8A --tool 8A --supply 120V/60Hz --breaker 20A --plug US20 --cord 30m/16AWG "
        + "--cord vacuum:3m/18AWG --sensor hall-5A")]
    public void Every_offer_fits_when_it_is_typed(string line)
    {
        Judged judged = new(line);
        Advice advice = new(judged.Judgement, judged.Trials);
        Assert.IsNotEmpty(advice.Changes, line);
        foreach (Offer offer in advice.Changes)
        {
            string options = string.Join(" ", offer.Changes.Select(change => change.Options));
            Assert.AreEqual(offer.Additions.Count == 0 ? 0 : 3, new Terminal(With(line, options)).ExitCode, options);
        }

        if (advice.LargestVacuum is { } judgement)
        {
            int amperes = (int)judgement.Order.VacuumCurrent.Amperes;
            Assert.AreNotEqual(1, new Terminal(With(line, $"--vacuum {amperes}A")).ExitCode, line);
            Assert.AreEqual(1, new Terminal(With(line, $"--vacuum {amperes + 1}A")).ExitCode, line);
        }
    }

    [TestMethod]
    public void No_smaller_set_of_changes_is_passed_by()
    {
        // 1 hp at 120 V wants a 20 A circuit of its own, if it cannot be rewired: neither change alone helps.
        Judged judged = new("--vacuum 4A --tool 1hp --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A");
        Advice advice = new(judged.Judgement, judged.Trials);
        IReadOnlyList<Change> pair = advice.Changes.First(offer => !offer.HangsOnTheMotor).Changes;
        Assert.HasCount(2, pair);
        foreach (Change change in pair)
        {
            Assert.AreEqual(Outcome.Fails, new Judgement(change.Apply(judged.Order), judged.Trials).Outcome, change.Text);
        }
    }

    [TestMethod]
    [DataRow("--vacuum 4A --tool 40W/universal --supply 230V/50Hz --breaker C16 --plug EU16 --cord 2m/1.5mm2 --sensor hall-20A",
        "--sensor transformer-100A --turns 2")]
    [DataRow("--vacuum 4A --tool 10A --supply 120V/60Hz --breaker 20A --plug US20 --cord 2m/12AWG --sensor transformer-100A "
        + "--turns 10",
        "--sensor transformer-100A --turns 3")]
    [DataRow(
        "--vacuum 1400W --tool 2000W --supply 230V/50Hz --breaker B32 --plug UK13 --cord 2m/1.5mm2 --sensor transformer-100A",
        "--vacuum-circuit same")]
    [DataRow("--vacuum 4A --tool 1hp --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A",
        "--supply 240V/60Hz")]
    [DataRow("--vacuum 4A --tool 1hp --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A",
        "--tool 8A/induction")]
    public void What_helps_is_offered_and_never_a_sensor_of_basic_insulation(string line, string options)
    {
        string shown = Words(new Terminal(line).Shown);
        StringAssert.Contains(shown, options, StringComparison.Ordinal);
        Assert.IsFalse(shown.Contains("--sensor hall", StringComparison.Ordinal), shown);
    }

    // The drawings of two circuits have the vacuum at 120 V or 230 V only.
    [TestMethod]
    public void What_is_in_no_drawing_is_neither_judged_nor_offered()
    {
        const string Line =
            "--vacuum 8A --tool 2hp --supply 240V/60Hz --breaker 20A --cord 2m/12AWG --sensor transformer-100A";
        Terminal terminal = new(Line);
        Assert.AreEqual(1, terminal.ExitCode);
        Assert.IsFalse(terminal.Shown.Contains("--vacuum-circuit", StringComparison.Ordinal), terminal.Shown);
        Assert.AreEqual(2, new Terminal(Line + " --vacuum-circuit same").ExitCode);
        Assert.AreEqual(2, new Terminal(Line + " --vacuum-circuit 20A").ExitCode);
    }

    [TestMethod]
    public void The_amperes_offered_in_place_of_horsepower_are_the_most_that_fit()
    {
        const string Line = "--vacuum 4A --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor transformer-100A --tool ";
        Assert.AreEqual(0, new Terminal(Line + "8A/induction").ExitCode);
        Assert.AreEqual(1, new Terminal(Line + "9A/induction").ExitCode);
    }

    [TestMethod]
    [DataRow(
        "--vacuum 30A --tool 30A --supply 120V/60Hz --breaker 15A --cord 2m/16AWG --sensor transformer-100A",
        "ask a licensed electrician.")]
    [DataRow(
        "--vacuum 1000W --tool 20W/universal --supply 230V/50Hz --breaker C16 --plug EU16 "
        + "--cord 2m/1.5mm2 --sensor transformer-100A",
        "too small for the switch")]
    public void Where_nothing_helps_it_says_so(string line, string says)
    {
        Terminal terminal = new(line);
        Assert.AreEqual(1, terminal.ExitCode);
        StringAssert.Contains(Words(terminal.Shown), says, StringComparison.Ordinal);
    }

    private static string Words(string shown) =>
        string.Join(' ', shown.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    // The options in place of those of the same name; a cord in place of those that feed the same.
    private static string With(string line, string options)
    {
        List<(string Name, string Value)> old = Pairs(line);
        List<(string Name, string Value)> changed = Pairs(options);
        old.RemoveAll(pair => changed.Exists(other => other.Name == pair.Name && Use(other) == Use(pair)));
        return string.Join(" ", old.Concat(changed).Select(pair => $"{pair.Name} {pair.Value}"));
    }

    private static CordUse Use((string Name, string Value) pair) =>
        pair.Name != "--cord" || !pair.Value.Contains(':') ? CordUse.Box
        : pair.Value.StartsWith("tool:", StringComparison.Ordinal) ? CordUse.Tool
        : pair.Value.StartsWith("head:", StringComparison.Ordinal) ? CordUse.Head
        : CordUse.Vacuum;

    private static List<(string Name, string Value)> Pairs(string line) =>
        [
            .. $" {line}".Split(" --", StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Trim().Split(' '))
                .Select(pair => ("--" + pair[0], pair.Length > 1 ? pair[1] : "")),
        ];
}
