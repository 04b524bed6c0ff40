namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>
/// Days that the board recorded, decided again on the PC: every decision is the board's, bucket for bucket. Three shortened days;
/// the variable DUST_DAYS asks for more, ten minutes each.
/// </summary>
[TestClass]
public sealed class RecordedDaysTests
{
    private const int Few = 3;
    private const double ShortMinutes = 2;
    private const double LongMinutes = 10;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Replayed_decisions_are_the_boards_bucket_for_bucket()
    {
        bool isAsked = int.TryParse(Environment.GetEnvironmentVariable("DUST_DAYS"), out int wanted);
        int count = isAsked ? wanted : Few;
        (string Difference, int Buckets, int Lost, int Starts, int Faulty)[] days = new (string, int, int, int, int)[count];
        Parallel.For(0, count, i =>
        {
            RecordedDay day = new(i + 1, isAsked ? LongMinutes : ShortMinutes);
            days[i] = (day.FirstDifference(), day.Buckets, day.BoardBuckets - day.Buckets, day.Starts, day.Faulty);
        });
        TestContext.WriteLine(
            $"{count} days, {days.Sum(day => (long)day.Buckets):#,0} buckets, {days.Sum(day => day.Starts)} starts, "
                + $"{days.Sum(day => day.Faulty):#,0} buckets with a fault; "
            + $"buckets before the snapshot and after the last line at most {days.Max(day => day.Lost)}");
        Assert.AreEqual("", string.Join(Environment.NewLine, days.Select(day => day.Difference).Where(text => text.Length > 0)));
        Assert.IsGreaterThan(0, days.Sum(day => day.Starts));
        Assert.IsGreaterThan(0, days.Sum(day => day.Faulty));

        // Half a second at the most passes until settings and header are sent, and the last line may not be whole.
        Assert.IsLessThan(400, days.Max(day => day.Lost));
    }
}
