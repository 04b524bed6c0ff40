using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Days;
using ScottPlot;

namespace NanoDustSwitch.SystemTests;

/// <summary>The eight words for the states, and that chart and CSV use them; page and pictures have tests of their own.</summary>
[TestClass]
public sealed class StateNamesTests
{
    private static readonly string[] s_words = ["idle", "starting", "on", "run-on", "by-hand", "until-stop", "held", "fault"];

    [TestMethod]
    public void Every_state_has_the_word_of_the_file_format_and_none_has_that_of_another()
    {
        CollectionAssert.AreEqual(s_words, Enum.GetValues<VacuumState>().Select(StateText.Name).ToArray());
        CollectionAssert.AllItemsAreUnique(s_words);
    }

    [TestMethod]
    public void The_member_of_the_enum_is_the_word()
    {
        CollectionAssert.AreEqual(
            s_words.Select(word => word.Replace("-", "", StringComparison.Ordinal)).ToArray(),
            Enum.GetNames<VacuumState>().Select(name => name.ToLowerInvariant()).ToArray());
    }

    [TestMethod]
    public void The_rows_of_the_chart_have_the_words()
    {
        Plot panel = StatePanel.Draw([], 0, 0);
        panel.RenderInMemory();

        CollectionAssert.AreEquivalent(
            (string[])["contact", "relay", .. s_words],
            panel.Axes.Left.TickGenerator.Ticks.Select(tick => tick.Label).ToArray());
    }

    [TestMethod]
    public void The_CSV_of_a_day_has_the_words()
    {
        string file = Path.GetTempFileName();
        try
        {
            TraceCsv.Save(
                file,
                [.. Enum.GetValues<VacuumState>().Select(state => new TracePoint(0, 0, 0, 0, 0, 0, state, false, false, false))]);

            CollectionAssert.AreEqual(s_words, File.ReadLines(file).Skip(1).Select(line => line.Split(',')[6]).ToArray());
        }
        finally
        {
            File.Delete(file);
        }
    }
}
