using System;
using System.IO;
using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.UnitTests.Sequences;

namespace NanoDustSwitch.UnitTests;

// The page that people read has the table of the code and the promises of SequenceTests, word for word. The variable
// DUST_WRITE=1 lets the test write them into the page instead of comparing.
[TestClass]
public class StateTableTests
{
    private const string Page = "firmware/states.md";

    // As .editorconfig has it.
    private const int LongestLine = 130;

    [TestMethod]
    public void ThePageHasTheTableOfTheCode()
    {
        Check("table", Table(new VacuumTable()));
    }

    [TestMethod]
    public void ThePageHasThePromisesThatEverySequenceKeeps()
    {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Promises.All.Count; i++)
        {
            text.Append(Wrapped((i + 1) + ". " + Promises.All[i].Words)).Append('\n');
        }

        Check("promises", text.ToString());
    }

    private static string Wrapped(string item)
    {
        int end = item.Length > LongestLine ? item.LastIndexOf(' ', LongestLine) : -1;
        return end < 0 ? item : item.Remove(end) + "\n" + Wrapped("   " + item.Remove(0, end + 1));
    }

    private static void Check(string part, string printed)
    {
        string path = Repository.PathOf(Page);
        string page = File.ReadAllText(path);
        string mark = "<!-- " + part + ", written by StateTableTests -->\n";
        int begin = page.IndexOf(mark, StringComparison.Ordinal);
        Assert.IsTrue(begin >= 0, Page + " has no mark: " + mark);
        begin += mark.Length;
        int end = page.IndexOf("<!-- end -->", begin, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("DUST_WRITE") == "1")
        {
            File.WriteAllText(path, page.Remove(begin, end - begin).Insert(begin, printed));
        }
        else
        {
            Assert.AreEqual(printed, page.Substring(begin, end - begin));
        }
    }

    private static string Table(VacuumTable table)
    {
        StringBuilder text = new StringBuilder("|");
        for (int i = 0; i < VacuumTable.Events; i++)
        {
            text.Append(" | ").Append(Words.Of((VacuumEvent)i));
        }

        text.Append(" |\n|---");
        for (int i = 0; i < VacuumTable.Events; i++)
        {
            text.Append("|---");
        }

        text.Append("|\n");
        for (int i = 0; i < VacuumTable.States; i++)
        {
            text.Append("| **").Append(StateText.Name((VacuumState)i)).Append("**");
            for (int j = 0; j < VacuumTable.Events; j++)
            {
                VacuumState next = table.Next((VacuumState)i, (VacuumEvent)j);
                text.Append(" | ").Append(next == (VacuumState)i ? "–" : StateText.Name(next));
            }

            text.Append(" |\n");
        }

        return text.ToString();
    }
}
