using NanoDustSwitch.Benchmarks;
using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Benchmarks.Starts;

namespace NanoDustSwitch.ReferenceTests;

/// <summary>
/// A sample of the benchmark of starts (<c>-- starts</c>), with other tools than it draws: motors by their equations (textbooks;
/// tests/references holds them against published figures), each start's truth taken from the motor and not from the detector.
/// </summary>
[TestClass]
public sealed class StartTests
{
    private const int Groups = 24;

    // Other seeds than the benchmark's.
    private const int Seed = 1000;

    // 24 tools of a kind tell little of a figure of a few percent: a figure fails where that many are no accident any more.
    // Of 24 first starts two may be inside (must 3 %: three or more come once in thirty times), of 144 later ones six.
    private const double MostFirst = 2.5 / Groups * 100;
    private const double MostLater = 6.5 / 144 * 100;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void The_vacuum_starts_after_the_surge_and_soon_after()
    {
        StartStudy found = StartStudy.Run(new Bench(true, [], (_, _) => { }, Seed), StartKinds.Wanted, Groups);
        List<string> missed = [];
        foreach (StudyRow row in StartGoals.All(found))
        {
            double most = row.Name.Contains("first start", StringComparison.Ordinal)
                && row.Name.Contains("above", StringComparison.Ordinal) ? MostFirst
                : row.Name.Contains("later starts above 1.5", StringComparison.Ordinal) ? MostLater
                : row.Must * 1.1;
            string text = $"{row.Name}: {row.Figure:0.00} of {row.Count}, must {row.Must}";
            TestContext.WriteLine(text);
            if (!(row.Figure <= most))
            {
                missed.Add(text);
            }
        }

        Assert.AreEqual("", string.Join(Environment.NewLine, missed));
    }
}
