namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// Calls of the board throw, return nonsense, hang or take long, and the power goes in the middle of a write to flash; see
/// <see cref="Trouble"/>. How much is tried: <see cref="AbusePart"/>.
/// </summary>
[TestClass]
public sealed class InjectionTests
{
    private const int Seed = 1;
    private const int Draws = 10_000;
    private const int Days = 20;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Whatever_call_of_the_minute_goes_wrong_it_follows_or_is_off_and_the_next_start_works() =>
        Try(new Survey(Scripts.Minute()), cases => Part(cases.All(), 5));

    // A seventh of them, which takes each trouble in turn: a fault that stays makes these cases long.
    [TestMethod]
    public void The_same_with_a_contact_that_welds() =>
        Try(new Survey(Scripts.Weld()), cases => Part(cases.All().Where((_, i) => i % 7 == 0), 2));

    [TestMethod]
    public void The_same_with_pairs_of_calls() => Try(
        new Survey(Scripts.Minute()), cases => cases.Drawn(Number(Draws, 150), new Random(Seed), arePairs: true));

    [TestMethod]
    public void The_same_with_a_power_cut_at_any_byte_of_a_write_to_flash_that_fails_before_or_after() =>
        Try(new Survey(Scripts.Minute()), cases => Part(cases.Cuts(), 150));

    [TestMethod]
    public void The_same_in_whole_days()
    {
        int days = AbusePart.Every == 0 ? 1 : Days;
        for (int day = 0; day < days; day++)
        {
            Try(
                new Survey(Scripts.Whole(day)),
                cases => cases.Drawn(Number(Draws / Days, 60), new Random(Seed + day), arePairs: false));
        }
    }

    private static int Number(int all, int sample) => AbusePart.Every == 0 ? sample : all / AbusePart.Every;

    // Without the variable so many of every kind.
    private static IEnumerable<InjectionCase> Part(IEnumerable<InjectionCase> cases, int sample)
    {
        Random random = new(Seed);
        return AbusePart.Every > 0
            ? cases.Where(_ => random.Next(AbusePart.Every) == 0)
            : cases.GroupBy(tried => (tried.Member, tried.First.Trouble))
                .SelectMany(kind => kind.OrderBy(_ => random.Next()).Take(sample))
                .OrderBy(tried => tried.Step);
    }

    private void Try(Survey survey, Func<Cases, IEnumerable<InjectionCase>> choose)
    {
        InjectionCase[] cases = [.. choose(new Cases(survey))];
        InjectionTally tally = new();
        new Injector(survey).Run(cases, tally);
        TestContext.WriteLine($"{survey.Day.Name}: {survey.Calls} calls\n{tally}");
        Assert.IsNotEmpty(cases);
        Assert.AreEqual(cases.Length, tally.Tried);
        foreach (Verdict failure in InjectionTally.Failures)
        {
            Assert.AreEqual(0, tally.Of(failure), $"{failure}\n{tally}");
        }
    }
}
