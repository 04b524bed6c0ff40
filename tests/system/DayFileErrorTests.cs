using System.Text;
using NanoDustSwitch.Simulator.Commands;
using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.SystemTests;

/// <summary>What is wrong with a day file is said in one sentence, with file and line.</summary>
[TestClass]
public sealed class DayFileErrorTests
{
    private const string Saw = "{ \"name\": \"saw\", \"kind\": \"induction\", \"amperes\": 8 }";

    [TestMethod]
    [DataRow("", "the file is empty; a day has at least 'seconds' and 'tools'")]
    [DataRow("{ \"seconds\": 9, \"tools\": [", "this is not valid JSON: ", true)]
    [DataRow("{ \"seconds\": 9, \"tools\": [] }", "'tools' is empty; a shop has at least one tool")]
    [DataRow("{ \"seconds\": 0.5 }", "a day must be at least 1 second long, not 0.5")]
    [DataRow("{ \"seconds\": 9, \"circuit\": {} }", "a day has no member 'circuit'; its members are ", true)]
    [DataRow("{ \"seconds\": 9, \"circuits\": [] }", "'circuits' is empty; a shop has at least one circuit")]
    [DataRow(
        "{ \"seconds\": 9, \"circuits\": [ { \"name\": \"a\" }, { \"name\": \"a\" } ] }",
        "there is already a circuit named 'a'; give each circuit a name of its own")]
    [DataRow(
        "{ \"seconds\": 9, \"circuits\": [ { \"name\": \"a\" }, { \"name\": \"b\" } ], \"vacuum\": { \"circuit\": \"c\" } }",
        "there is no circuit 'c'; the circuits are a, b")]
    [DataRow("{ \"seconds\": 9, \"sensor\": { \"turns\": 2.5 } }", "'turns' must be a whole number, not 2.5")]
    [DataRow("{ \"seconds\": 9, \"sensor\": { \"crosstalk\": 5 } }", "'crosstalk' must be from -1 to 1, not 5")]
    [DataRow(
        "{ \"seconds\": 9, \"sensor\": { \"noise\": 0.1, \"noiseFrom\": {} } }",
        "'noise' and 'noiseFrom' are both given; leave one of them")]
    [DataRow(
        "{ \"seconds\": 9, \"sensor\": { \"noiseFrom\": { \"file\": \"none.csv\", \"rate\": 1000, \"hertz\": 60, "
            + "\"amperes\": 0.1 } } }",
        "the recording cannot be used: There is no file none.csv")]
    [DataRow(
        "{ \"seconds\": 9, \"converter\": { \"tenBit\": true } }",
        "'converter' has no member 'tenBit'; its members are dropOuts, stepErrors")]
    [DataRow("{ \"seconds\": 9, \"readings\": { \"pace\": \"arm\" } }", "'pace' must be one of ideal, esp32, not 'arm'")]
    [DataRow(
        "{ \"seconds\": 9, \"readings\": { \"pace\": \"esp32\", \"rate\": 1000 } }",
        "at the pace of the 'esp32' the board reads as fast as it can; leave 'rate' and 'jitter' out")]
    [DataRow(
        "{ \"seconds\": 9, \"tools\": [ { \"name\": \"saw\", \"kind\": \"induction\", \"amperes\": 8, \"conduction\": 0.5 } ] }",
        "'conduction' means nothing to a tool of kind 'induction'; it is for phase-chopped")]
    [DataRow(
        "{ \"seconds\": 9, \"tools\": [ { \"name\": \"saw\", \"kind\": \"soft-start\", \"amperes\": 8, \"inrush\": 5 } ] }",
        "'inrush' means nothing to a tool of kind 'soft-start'; it is for induction, universal, phase-chopped, half-wave, "
            + "rectified, lamp, charger")]
    [DataRow(
        "{ \"seconds\": 9, \"tools\": [ { \"name\": \"saw\", \"kind\": \"induction\", \"amperes\": 8, \"toolLine\": 1 } ] }",
        "'toolLine' must be true or false, not a number")]
    [DataRow(
        "{ \"seconds\": 9, \"tools\": [ { \"name\": \"saw\", \"kind\": \"induction\", \"amperes\": 8, \"circuit\": \"x\" } ] }",
        "there is no circuit 'x'; the circuits are bench")]
    public void A_bad_file_is_explained_in_a_sentence(string json, string sentence, bool isBeginning = false) =>
        Check(json, sentence, isBeginning);

    [TestMethod]
    [DataRow("{ \"at\": 1, \"do\": \"explode\" }", "'do' must be one of start, stop, load, ", true)]
    [DataRow("{ \"at\": 1, \"do\": \"start\", \"tool\": \"axe\" }", "there is no tool 'axe'; the tools are saw")]
    [DataRow(
        "{ \"at\": 10, \"do\": \"sensor-out\" }",
        "this step is at 10 s, but the day ends at 9 s; put it earlier or make 'seconds' greater")]
    [DataRow("{ \"at\": 1, \"do\": \"power-cut\" }", "a 'power-cut' step needs 'seconds'; its members are at, do, seconds")]
    [DataRow("{ \"at\": 1, \"do\": \"mains\", \"factor\": 3 }", "'factor' must be from 0 to 2, not 3")]
    [DataRow(
        "{ \"at\": 1, \"do\": \"arc\", \"seconds\": 1, \"amperes\": 5 }",
        "a 'arc' step has no member 'amperes'; its members are at, do, seconds")]
    [DataRow(
        "{ \"at\": 1, \"do\": \"relay-welds\", \"seconds\": 1 }",
        "a 'relay-welds' step has no member 'seconds'; its members are at, do")]
    [DataRow("{ \"at\": 1, \"do\": \"breaker-resets\", \"circuit\": \"x\" }", "there is no circuit 'x'; the circuits are bench")]
    [DataRow("{ \"at\": 1, \"do\": \"noise\", \"amperes\": -1 }", "'amperes' must be from 0 to 100, not -1")]
    public void A_bad_step_is_explained_in_a_sentence(string step, string sentence, bool isBeginning = false) =>
        Check($"{{ \"seconds\": 9, \"tools\": [ {Saw} ], \"steps\": [ {step} ] }}", sentence, isBeginning);

    [TestMethod]
    public void The_line_is_that_of_the_member()
    {
        UserException exception = Assert.ThrowsExactly<UserException>(
            () => Parse("{\n  \"seconds\": 9,\n  \"mains\": { \"volts\": 120,\n    \"hertz\": 70 }\n}"));
        Assert.AreEqual("bad.json, line 4: 'hertz' must be from 45 to 65, not 70.", exception.Message);
    }

    private static void Check(string json, string sentence, bool isBeginning)
    {
        UserException exception = Assert.ThrowsExactly<UserException>(() => Parse(json));
        string expected = "bad.json, line 1: " + sentence;
        if (isBeginning)
        {
            StringAssert.StartsWith(exception.Message, expected);
        }
        else
        {
            Assert.AreEqual(expected + ".", exception.Message);
        }
    }

    private static Day Parse(string json) => DayFile.Parse(Encoding.UTF8.GetBytes(json), "bad.json");
}
