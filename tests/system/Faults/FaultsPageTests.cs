using System.Globalization;
using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// The page firmware/faults.md is what the switch really says and shows: every fault is brought up in the shop, the console is
/// asked, the lamp is watched and the beeps are counted. With the variable DUST_WRITE=1 the page is written anew; read it then.
/// </summary>
[TestClass]
public sealed class FaultsPageTests
{
    private const string Head = """
# Faults

What can be wrong, how it is told, and how it ends. This page is made by a test from what the switch said and showed in the
virtual shop (`DUST_WRITE=1 dotnet test tests/system --filter FaultsPage`); the words are in `firmware/switch/Log/FaultText.cs`.

> A fault that keeps the vacuum off isolates nothing. Before you touch the sensor, the relay or a wire: pull the plug.

`status` has a line for each fault that stands, with the time since when and what was seen; `why` says first why the vacuum is
on or off, then for each fault what to do and how it ends; `events` keeps both. A fault that keeps the vacuum off
sounds once as it comes up.


""";

    private static readonly string[] s_patterns =
    [
        "a flash every three seconds", "on", "even blinking", "three flashes and a pause", "on with a wink every three seconds",
        "two flashes every three seconds",
    ];

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void The_page_says_what_the_switch_says()
    {
        Fault[] faults = Enum.GetValues<Fault>();
        string[] parts = new string[faults.Length];
        Parallel.For(0, faults.Length, i => parts[i] = Part(faults[i]));
        string made = Head.ReplaceLineEndings("\n") + string.Join("\n", parts);
        string page = Repository.PathOf("firmware/faults.md");
        if (Environment.GetEnvironmentVariable("DUST_WRITE") == "1")
        {
            File.WriteAllText(page, made);
        }

        string read = File.Exists(page) ? File.ReadAllText(page) : "";
        Assert.AreEqual(made, read, "The page is not what the switch says; DUST_WRITE=1 writes it anew.");
    }

    private static string Part(Fault fault)
    {
        Workbench bench = new();
        FaultCase.Bring(bench, fault);
        string name = FaultText.Name(fault);
        (string lamp, int beeps) = Watch(bench);
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"## {name}\n\n");
        string vacuum = FaultTable.Has(fault, FaultTraits.KeepsVacuumOff) ? "kept off"
            : bench.Switch.Core.Vacuum.State == VacuumState.UntilStop ? "off until the tool stops" : "works on";
        string sounder = beeps == 0 ? "silent" : beeps + " short beeps";
        text.Append(CultureInfo.InvariantCulture, $"Vacuum: {vacuum}. Lamp: {lamp}. Sounder: {sounder}.\n");
        string ends = FaultText.Ends(fault, bench.Switch.Core.Faults[fault].IsLatched);
        text.Append(CultureInfo.InvariantCulture, $"It {ends}.\n\n```\n");
        foreach (string word in new[] { "status", "why", "events" })
        {
            text.Append(CultureInfo.InvariantCulture, $"> {word}\n");
            foreach (string line in Answer(bench, word, name))
            {
                text.Append(line).Append('\n');
            }
        }

        Assert.IsTrue(bench.Switch.Core.Faults[fault].IsActive, $"{fault} is over");
        return text.Append("```\n").ToString();
    }

    // Of `why` the first line, of all only what is about this fault.
    private static List<string> Answer(Workbench bench, string word, string name)
    {
        bench.Forget();
        bench.Board.Serial.Type(word + "\r");
        bench.Run(0.7);
        string[] lines = [.. bench.Said.Split('\n').Select(line => line.TrimEnd('\r'))];
        List<string> answer = [];
        for (int i = 1; i < lines.Length; i++)
        {
            int at = lines[i].StartsWith("    ", StringComparison.Ordinal) ? i - 1 : i;
            if (lines[at].Contains(name, StringComparison.Ordinal) || (word == "why" && i == 1))
            {
                answer.Add(lines[i]);
            }
        }

        Assert.IsNotEmpty(answer, $"'{word}' says nothing of '{name}'");
        return answer;
    }

    // Six seconds hold a whole pattern wherever it begins. The lamp's places are a tenth of a second; it is looked at in the
    // middle.
    private static (string Lamp, int Beeps) Watch(Workbench bench)
    {
        int beeps = 0;
        bool sounded = false;
        char[] lamp = new char[60];
        long begin = ((bench.Switch.Now / 3_000_000) + 1) * 3_000_000;
        while (bench.Switch.Now < begin + 3_000_000)
        {
            bench.Run(0.005);
            beeps += bench.Board.IsSounderOn && !sounded ? 1 : 0;
            sounded = bench.Board.IsSounderOn;
            long place = (bench.Switch.Now - begin) / 100_000;
            if (bench.Switch.Now >= begin && place < 30 && (bench.Switch.Now - begin) % 100_000 is > 40_000 and < 60_000)
            {
                lamp[place] = bench.Board.IsLampOn ? '#' : '.';
            }
        }

        string seen = new(lamp, 0, 30);
        string[] known =
        [
            "#.............................", "##############################", "#####.....#####.....#####.....",
            "#.#.#.....#.#.#.....#.#.#.....", "#############################.", "#.#...........................",
        ];
        int found = Array.IndexOf(known, seen);
        return (found < 0 ? seen : s_patterns[found], beeps);
    }
}
