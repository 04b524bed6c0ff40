using System.Globalization;
using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;

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

`status` and `why` say of each fault that stands since when it does and what was seen; `why` begins with why the vacuum is on
or off, and says for each fault what to do now, how it ends, and whether it stays over a power cut; `events` keeps when it came
up and what to do. Times are hours, minutes and seconds since the box got its power; after a power cut a fault that stayed counts
from then. A fault that keeps the vacuum off sounds once as it comes up; one that cannot, every 10 s.

*Told off* means that the relay is told to open. Only a second sensor, on the vacuum's own wire (`vacuum-turns`), shows whether
the vacuum is then off: a contact can weld, a driver can be shorted. Where that sensor shows no current, the box says *off*.
*Held off* is what a person has held off, with the word `hold` or a long press; nothing else is called so.


""";

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
        (string lamp, int beeps) = LampWatch.Look(bench);
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"## {name}\n\n");
        string vacuum = FaultTable.Has(fault, FaultTraits.KeepsVacuumOff) ? "told off"
            : bench.Switch.Core.Vacuum.State == VacuumState.UntilStop ? "told off until the tool stops" : "works on";
        string again = bench.Switch.Core.Faults.IsVacuumStuck ? ", again every 10 s" : "";
        string sounder = beeps == 0 ? "silent" : beeps + " short beeps" + again;
        text.Append(CultureInfo.InvariantCulture, $"Vacuum: {vacuum}. Lamp: {lamp}. Sounder: {sounder}.\n");
        FaultState state = bench.Switch.Core.Faults[fault];
        string seen = FirmwareText.Of(output => FaultText.Seen(output, fault, state.Figure));
        text.Append(CultureInfo.InvariantCulture, $"\n| | |\n|---|---|\n| seen | {seen} |\n");
        text.Append(CultureInfo.InvariantCulture, $"| do now | {FaultText.ToDo(fault)} |\n");
        text.Append(CultureInfo.InvariantCulture, $"| end | {FaultText.Ends(fault, state.IsLatched)} |\n");
        text.Append(CultureInfo.InvariantCulture, $"| after a power cut | {OverPowerCut(fault, state.IsLatched)} |\n\n```\n");
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

    private static string OverPowerCut(Fault fault, bool isLatched) =>
        FaultText.StaysOverPowerCut(fault, isLatched) ? "it stays, and is told as one that stood before"
            : FaultTable.Has(fault, FaultTraits.StaysWhenRepeated) ? "it is judged anew; once it stays, it stays over that too"
            : "it is judged anew";

    // Of `why` the first line, of all only what is about this fault.
    private static List<string> Answer(Workbench bench, string word, string name)
    {
        bench.Forget();
        bench.Board.Serial.Type(word + "\r");
        bench.Run(0.7);
        string[] lines = [.. bench.Said.Split('\n').Select(line => line.TrimEnd('\r'))];
        List<string> answer = [];
        int at = 0;
        for (int i = 1; i < lines.Length; i++)
        {
            at = lines[i].StartsWith("    ", StringComparison.Ordinal) ? at : i;
            bool isFirst = i == 1 && (word == "why" || lines[i] == WhyText.VacuumRuns);
            if (lines[at].Contains(name, StringComparison.Ordinal) || isFirst)
            {
                answer.Add(lines[i]);
            }
        }

        Assert.IsNotEmpty(answer, $"'{word}' says nothing of '{name}'");
        return answer;
    }
}
