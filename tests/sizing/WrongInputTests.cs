using NanoDustSwitch.Sizing.Texts;

namespace NanoDustSwitch.SizingTests;

/// <summary>What cannot be used gets one sentence and exit code 2, and nothing is judged.</summary>
[TestClass]
public sealed class WrongInputTests
{
    private const string Good =
        "--vacuum 10A|--tool 12A|--supply 120V/60Hz|--breaker 15A|--cord 8m/14AWG|--sensor transformer-100A";

    [TestMethod]
    [DataRow("--vacuum", "5 peak hp", "peak figure")]
    [DataRow("--vacuum", "6.5HP", "peak figure")]
    [DataRow("--vacuum", "10", "amperes or watts")]
    [DataRow("--vacuum", "-5A", "amperes or watts")]
    [DataRow("--vacuum", "NaNA", "amperes or watts")]
    [DataRow("--vacuum", "1.000,5A", "amperes or watts")]
    [DataRow("--vacuum", "", "amperes or watts")]
    [DataRow("--vacuum", "0A", "0.02 to 60 A")]
    [DataRow("--vacuum", "999999999kW", "0.02 to 60 A")]
    [DataRow("--vacuum", "99999999999999999999999999kW", "amperes or watts")]
    [DataRow("--tool", "3 hp peak", "no rating")]
    [DataRow("--tool", "develops 3 hp", "no rating")]
    [DataRow("--tool", "3hp", "peak figure")]
    [DataRow("--tool", "1.7hp", "430.248")]
    [DataRow("--tool", "1/0hp", "no rating")]
    [DataRow("--tool", "12A/dc", "induction, universal, soft-start")]
    [DataRow("--supply", "120V", "volts and hertz")]
    [DataRow("--supply", "127V/60Hz", "known are")]
    [DataRow("--supply", "120V/50Hz", "known are")]
    [DataRow("--supply", "230V/50Hz", "6, 10, 13, 16, 20, 25, 32 A")]
    [DataRow("--breaker", "17A", "15, 20 A")]
    [DataRow("--breaker", "30A", "30 A is more than any listed part of this box carries; allowed are 15, 20 A")]
    [DataRow("--vacuum-circuit", "30A", "30 A is more than any listed part of this box carries")]
    [DataRow("--breaker", "C16", "rating alone")]
    [DataRow("--breaker", "C", "cannot be read")]
    [DataRow("--breaker", "", "cannot be read")]
    [DataRow("--cord", "8/14AWG", "length and size")]
    [DataRow("--cord", "8m/13AWG", "14AWG")]
    [DataRow("--cord", "200m/14AWG", "100 m")]
    [DataRow("--cord", "saw:8m/14AWG", "box:, head:, tool: and vacuum:")]
    [DataRow("--cord", "tool:8m/14AWG", "missing for the box")]
    [DataRow("--cord", "head:1m/14AWG", "missing for the box")]
    [DataRow("--sensor", "clamp", "transformer-100A")]
    [DataRow("--turns", "0", "1 to 10")]
    [DataRow("--turns", "two", "1 to 10")]
    [DataRow("--plug", "UK13", "US15, US20.")]
    [DataRow("--plug", "X", "US15, US20.")]
    [DataRow("--vacuum-circuit", "20A/230V", "does not go with")]
    [DataRow("--vacuum-circuit", "20A/UK13", "does not go with")]
    [DataRow("--vacuum-circuit", "15A/240V", "no drawing has")]
    [DataRow("--box", "200x120", "width, depth and height")]
    [DataRow("--box", "1x2x3mm", "40 to 1000 mm")]
    [DataRow("--report", ".", "folder")]
    [DataRow("--wings", "2", "Unrecognized")]
    public void A_wrong_value_gets_one_sentence(string option, string value, string says) =>
        AssertRefused(new Terminal([.. GoodWithout(option), option, value]), says);

    [TestMethod]
    [DataRow("--vacuum")]
    [DataRow("--tool")]
    [DataRow("--supply")]
    [DataRow("--breaker")]
    [DataRow("--cord")]
    [DataRow("--sensor")]
    public void Each_option_that_is_needed_is_missed(string option) =>
        AssertRefused(new Terminal([.. GoodWithout(option)]), option);

    [TestMethod]
    public void A_plug_must_be_named_where_there_is_a_choice() =>
        AssertRefused(
            new Terminal(Good.Replace("120V/60Hz", "230V/50Hz").Replace("15A", "16A").Replace('|', ' ')),
            "--plug is needed at 230 V; known are UK13");

    [TestMethod]
    public void Turns_do_not_go_with_a_hall_sensor() =>
        AssertRefused(new Terminal(Good.Replace("transformer-100A", "hall-20A").Replace('|', ' ') + " --turns 2"), "transformer");

    [TestMethod]
    [DataRow("--cord 2m/14AWG", "is a cord that you would wire; with --ready-made only tool: and vacuum: are allowed")]
    [DataRow("--cord head:2m/14AWG", "only tool: and vacuum: are allowed")]
    [DataRow("--sensor hall-20A", "only transformer-100A is allowed")]
    [DataRow("--turns 2", "1, or 10 in the window")]
    [DataRow("--box 240x160x118mm", "with --ready-made there is none")]
    public void What_is_for_a_build_with_mains_wiring_does_not_go_without_it(string option, string says)
    {
        string sensor = option.StartsWith("--sensor", StringComparison.Ordinal) ? "" : "--sensor transformer-100A ";
        AssertRefused(
            new Terminal($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A {sensor}--ready-made {option}"), says);
    }

    [TestMethod]
    [DataRow("8m/2.0mm2", "2mm2")]
    [DataRow("8m/1.0 mm²", "1mm2")]
    [DataRow("8m/2,5mm2", "2.5mm2")]
    public void A_cords_size_may_be_written_otherwise(string typed, string size) =>
        Assert.AreEqual(size, CordText.Read(typed).Size.Name);

    [TestMethod]
    public void A_comma_is_a_decimal_point_and_never_parts_thousands()
    {
        Assert.AreEqual(1.5, Judged.OrderOf(Good.Replace('|', ' ').Replace("12A", "1,5A")).ToolCurrent.Amperes, 1e-9);
        Assert.AreEqual(1.5, Judged.OrderOf(Good.Replace('|', ' ').Replace("12A", "1500mA")).ToolCurrent.Amperes, 1e-9);
        Assert.AreEqual(20, Judged.OrderOf(Good.Replace('|', ' ').Replace("12A", "1-1/2hp")).ToolCurrent.Amperes, 1e-9);
    }

    [TestMethod]
    public void Help_shows_every_option_and_examples_that_run()
    {
        Terminal help = new("--help");
        Assert.AreEqual(0, help.ExitCode);
        const string Options =
            "vacuum tool supply breaker cord sensor plug vacuum-circuit turns box ready-made contactor build report";
        foreach (string option in Options.Split(' '))
        {
            StringAssert.Contains(help.Help, "--" + option, StringComparison.Ordinal);
        }

        string[] examples =
        [
            .. help.Help.Split('\n')
                .Select(line => line.Trim())
                .Where(line => line.StartsWith("--vacuum ", StringComparison.Ordinal)
                    && line.Contains("--sensor", StringComparison.Ordinal)),
        ];
        Assert.HasCount(5, examples);
        CollectionAssert.AreEqual(
            new[] { 0, 1, 0, 0, 0 },
            examples.Select(line => new Terminal(line.Replace(" --report sizing.html", "")).ExitCode).ToArray());
    }

    private static IEnumerable<string> GoodWithout(string option) =>
        Good.Split('|').Select(pair => pair.Split(' ')).Where(pair => pair[0] != option).SelectMany(pair => pair);

    private static void AssertRefused(Terminal terminal, string says)
    {
        Assert.AreEqual(2, terminal.ExitCode);
        Assert.AreEqual("", terminal.Shown.Trim());
        StringAssert.Contains(terminal.Error, says, StringComparison.Ordinal);
        Assert.HasCount(2, terminal.Error.Split('\n'), terminal.Error);
        StringAssert.EndsWith(terminal.Error, ".\n", StringComparison.Ordinal);
    }
}
