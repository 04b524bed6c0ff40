using System;
using System.IO;
using System.Text;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// The table as people read it: printed from the code, and the same as the file beside this one.
[TestClass]
public class StateTableTests
{
    public TestContext TestContext { get; set; }

    [TestMethod]
    public void ThePrintedTableIsTheOneInTheCode()
    {
        string printed = Print(new VacuumTable());
        TestContext.WriteLine("{0}", printed);
        string kept = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "desktop", "state-table.md"));
        Assert.AreEqual(printed, kept);
    }

    private static string Print(VacuumTable table)
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
            text.Append("| **").Append(Words.Of((VacuumState)i)).Append("**");
            for (int j = 0; j < VacuumTable.Events; j++)
            {
                VacuumState next = table.Next((VacuumState)i, (VacuumEvent)j);
                text.Append(" | ").Append(next == (VacuumState)i ? "–" : Words.Of(next));
            }

            text.Append(" |\n");
        }

        return text.ToString();
    }
}
