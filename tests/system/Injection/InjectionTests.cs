using System.Globalization;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// Every call of the board in a scripted minute throws once, throws for ever, returns nonsense, or never returns. The variable
/// DUST_INJECTION names the part that is tried: "all", or 20 for a twentieth of the cases; without it a sample of every kind is.
/// </summary>
[TestClass]
public sealed class InjectionTests
{
    private const int ASample = 4;
    private const int ConstantSample = 40;
    private const int Seed = 1;

    private static readonly Verdict[] s_failures = [Verdict.RelayHeld, Verdict.VacuumLost, Verdict.NoNextStart];

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Whatever_call_goes_wrong_the_relay_is_off_within_a_second_or_it_did_not_matter_and_the_next_start_works()
    {
        Survey survey = new();
        List<InjectionCase> cases = Chosen(survey);
        InjectionTally tally = new();
        int workers = Math.Max(1, Environment.ProcessorCount);
        Parallel.For(0, workers, worker => new Injector(survey).Run(cases.Where((_, i) => i % workers == worker), tally));

        TestContext.WriteLine($"{survey.Calls} calls in the minute\n{tally}");
        Assert.AreEqual(cases.Count, tally.Tried);
        foreach (Verdict failure in s_failures)
        {
            Assert.IsEmpty(tally.Of(failure), tally.ToString());
        }
    }

    private static bool IsConstant(BoardCall member) => member is BoardCall.FullScale or BoardCall.MicrovoltsACount;

    private static List<InjectionCase> Chosen(Survey survey)
    {
        Random random = new(Seed);
        string? part = Environment.GetEnvironmentVariable("DUST_INJECTION");
        if (string.IsNullOrEmpty(part))
        {
            return [.. survey.Cases().GroupBy(tried => (tried.Member, tried.Trouble))
                .SelectMany(kind => kind.OrderBy(_ => random.Next()).Take(IsConstant(kind.Key.Member) ? ConstantSample : ASample))
                .OrderBy(tried => tried.Step)];
        }

        int every = part == "all" ? 1 : int.Parse(part, CultureInfo.InvariantCulture);
        return [.. survey.Cases().Where(_ => random.Next(every) == 0)];
    }
}
