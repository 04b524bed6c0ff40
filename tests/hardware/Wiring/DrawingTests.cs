using NanoDustSwitch.HardwareTests.Wiring.Drawing;

namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>The drawings are those of the netlists. DUST_WRITE=1 writes them anew.</summary>
[TestClass]
public class DrawingTests
{
    public static IEnumerable<object[]> Builds => Build.Names.Append(Build.Board).Select(name => new object[] { name });

    [TestMethod]
    [DynamicData(nameof(Builds))]
    public void TheDrawingIsThatOfTheNetlist(string name)
    {
        string drawing = Sheet.Draw(Build.Load(name)).ReplaceLineEndings("\n");
        string file = Repository.PathOf(Build.DrawingOf(name));
        if (Environment.GetEnvironmentVariable("DUST_WRITE") == "1")
        {
            File.WriteAllText(file, drawing);
        }

        string checkedIn = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : "";
        Assert.AreEqual(checkedIn, drawing, $"{Build.DrawingOf(name)} is not that of its netlist: write it with DUST_WRITE=1 and look at it.");
    }
}
