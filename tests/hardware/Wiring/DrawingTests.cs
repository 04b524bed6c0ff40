using NanoDustSwitch.Drawing.Sheets;

namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>The drawings in the repository, and the program that draws them.</summary>
[TestClass]
public sealed class DrawingTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("dust-drawing-").FullName;
    private readonly StringWriter _output = new();
    private readonly StringWriter _errors = new();

    public static IEnumerable<object[]> Netlists =>
        Build.FilesBelow(Repository.Root).Select(file => new object[] { Path.GetRelativePath(Repository.Root, file) });

    [TestMethod]
    [DynamicData(nameof(Netlists))]
    public void TheDrawingIsThatOfTheNetlist(string netlist)
    {
        foreach ((string drawing, Build build) in Build.SheetsOf(Repository.PathOf(netlist)))
        {
            string checkedIn = File.Exists(drawing) ? File.ReadAllText(drawing).ReplaceLineEndings("\n") : "";
            Assert.AreEqual(
                checkedIn, new Sheet(build).Draw(), $"Run 'dotnet run --project hardware/drawing' and look at {drawing}.");
        }
    }

    [TestMethod]
    public void WithoutANameAllNetlistsAreDrawnBesideThem()
    {
        foreach (string file in Build.FilesBelow(Repository.Root))
        {
            Write(Path.GetRelativePath(Repository.Root, file), File.ReadAllText(file));
        }

        string[] drawings = [.. Build.FilesBelow(_root).SelectMany(Build.SheetsOf).Select(sheet => sheet.File)];
        Assert.AreEqual(0, Draw(), _errors.ToString());
        Assert.AreEqual(string.Concat(drawings.Select(file => file + Environment.NewLine)), _output.ToString());
        foreach (string file in drawings)
        {
            Assert.AreEqual(Repository.ReadText(Path.GetRelativePath(_root, file)), File.ReadAllText(file));
        }
    }

    [TestMethod]
    [DataRow("{", "", "is invalid after")]
    [DataRow("\"title\"", "\"tytle\"", "tytle")]
    [DataRow("\"size\": [1600, 1300]", "\"size\": [1600]", "size must be two numbers")]
    [DataRow("\"size\": [1600, 1300]", "\"size\": [1600, 1000000]", "size must be two numbers")]
    [DataRow("\"at\": [20, 90]", "\"at\": [20]", "of a zone must be two numbers")]
    [DataRow("\"at\": [60, 200]", "\"at\": [1600, 200]", "X1 must be on the sheet")]
    [DataRow("\"at\": [60, 200]", "\"at\": [60]", "X1 must be on the sheet")]
    [DataRow("\"L right mains\"", "\"L aside mains\"", "'L aside mains' is no pin")]
    [DataRow("\"L right mains\"", "null", "may be null")]
    [DataRow("\"X1.L\"", "\"X1.Q\"", "X1.Q is no pin")]
    [DataRow("[\"T1\"]", "[\"T9\"]", "T9.in is no pin")]
    [DataRow("[\"11-14\"]", "[\"11-15\"]", "K1.15 is no pin")]
    [DataRow("[\"T1\"]", "[\"T1\", \"T1\", \"T1\", \"T1\", \"T1\", \"T1\"]", "No room is left")]
    [DataRow("\"title\": \"One", "\"title\": \"\\u0001One", "0x01")]
    public void ANetlistThatCannotBeDrawnIsOneSentenceAndWritesNothing(string text, string wrong, string sentence)
    {
        string good = Write("good.json", Repository.ReadText("hardware/wiring/one-circuit-120.json"));
        string bad = Write("bad.json", File.ReadAllText(good).Replace(text, wrong, StringComparison.Ordinal));
        AssertRefused(sentence, good, bad);
        Assert.StartsWith(bad, _errors.ToString());
        Assert.IsEmpty(Directory.EnumerateFiles(_root, "*.svg"));
    }

    [TestMethod]
    [DataRow("There is no folder hardware/wiring here", "")]
    [DataRow("Could not find", "none.json")]
    public void AFileThatIsNotThereIsOneSentence(string sentence, string netlist) =>
        AssertRefused(sentence, netlist.Length == 0 ? [] : [Path.Combine(_root, netlist)]);

    public void Dispose()
    {
        Directory.Delete(_root, recursive: true);
        _output.Dispose();
        _errors.Dispose();
    }

    private void AssertRefused(string sentence, params string[] netlists)
    {
        Assert.AreEqual(2, Draw(netlists));
        Assert.Contains(sentence, _errors.ToString());
        Assert.EndsWith("." + Environment.NewLine, _errors.ToString());
        Assert.HasCount(2, _errors.ToString().Split(Environment.NewLine));
        Assert.AreEqual("", _output.ToString());
    }

    private int Draw(params string[] netlists) => Drawing.Program.Run(netlists, _root, _output, _errors);

    private string Write(string path, string text)
    {
        string file = Path.Combine(_root, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
        return file;
    }
}
