using System.Text;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.SystemTests;

/// <summary>What is wrong with a day file is said in one sentence, with file and line.</summary>
[TestClass]
public sealed class DayFileErrorTests
{
    private const string Kinds = "induction, universal, soft-start, phase-chopped, half-wave, rectified, lamp, charger, "
        + "compressor, transformer, inverter, corrected";

    private const string Saw = "{ \"name\": \"saw\", \"kind\": \"induction\", \"amperes\": 8 }";

    [TestMethod]
    [DataRow("", "the file is empty; a day has at least 'seconds' and 'tools'")]
    [DataRow("{ \"seconds\": 9, \"tools\": [", "this is not valid JSON: ", true)]
    [DataRow("[]", "a day must be an object in braces, not a list")]
    [DataRow("{ \"seconds\": 9 }", "a day needs 'tools'; its members are name, seconds, ", true)]
    [DataRow("{ \"seconds\": 9, \"tools\": [] }", "'tools' is empty; a shop has at least one tool")]
    [DataRow("{ \"seconds\": 9, \"tools\": [ 5 ] }", "a tool must be an object in braces, not a number")]
    [DataRow("{ \"seconds\": 0.5, \"tools\": [ <saw> ] }", "a day must be at least 1 second long, not 0.5")]
    [DataRow(
        "{ \"seconds\": \"1:3\", \"tools\": [ <saw> ] }",
        "'seconds' must be a number of seconds, or a text such as \"1:30\", ",
        true)]
    [DataRow(
        "{ \"seconds\": 9, \"tools\": [ <saw>, <saw> ] }",
        "there is already a tool named 'saw'; give each tool a name of its own")]
    public void A_bad_file_is_explained_in_a_sentence(string json, string sentence, bool isBeginning = false) =>
        Check(json.Replace("<saw>", Saw), sentence, isBeginning);

    [TestMethod]
    [DataRow("\"circuit\": {}", "a day has no member 'circuit'; its members are ", true)]
    [DataRow("\"seconds\": 8", "'seconds' is given twice in the same braces; leave one of them")]
    [DataRow("\"seed\": 1.5", "'seed' must be a whole number, not 1.5")]
    [DataRow("\"name\": \"a\\tb\"", "'name' must be one line of 1 to 200 characters, not 'a·b'")]
    [DataRow("\"name\": \"\\ud800\"", "this text has a broken \\u escape")]
    [DataRow("\"settings\": [ 5 ]", "a line of 'settings' must be a text, not a number")]
    [DataRow("\"knows\": [ 5 ]", "a tool of 'knows' must be an object in braces, not a number")]
    [DataRow("\"knows\": [ {} ]", "a tool of 'knows' needs 'tool'; its members are tool, runOn, noVacuum")]
    [DataRow("\"knows\": [ { \"tool\": \"plane\" } ]", "there is no tool 'plane'; the tools are saw")]
    [DataRow("\"knows\": [ { \"tool\": \"saw\", \"runOn\": 181 } ]", "'runOn' must be from 0 to 180, not 181")]
    [DataRow(
        "\"knows\": [ { \"tool\": \"saw\" }, { \"tool\": \"saw\" } ]", "the switch knows each tool once, and 12 at the most")]
    [DataRow(
        "\"knows\": [ { \"tool\": \"saw\", \"runOn\": 8, \"noVacuum\": true } ]",
        "'runOn' and 'noVacuum' are both given; leave one of them")]
    [DataRow("\"mains\": null", "'mains' must be an object in braces, not null")]
    [DataRow(
        "\"mains\": { \"volts\": 230 }",
        "'mains' needs 'hertz'; its members are volts, hertz, ohms, wanderHertz, wanderSeconds, flattening")]
    [DataRow("\"circuits\": []", "'circuits' is empty; a shop has at least one circuit")]
    [DataRow("\"circuits\": {}", "'circuits' must be a list in brackets, not an object in braces")]
    [DataRow(
        "\"circuits\": [ { \"name\": \"a\" }, { \"name\": \"a\" } ]",
        "there is already a circuit named 'a'; give each circuit a name of its own")]
    [DataRow(
        "\"circuits\": [ { \"name\": \"a\" }, { \"name\": \"b\" } ], \"vacuum\": { \"circuit\": \"c\" }",
        "there is no circuit 'c'; the circuits are a, b")]
    [DataRow("\"sensor\": { \"turns\": 2.5 }", "'turns' must be a whole number, not 2.5")]
    [DataRow("\"sensor\": { \"crosstalk\": 5 }", "'crosstalk' must be from -1 to 1, not 5")]
    [DataRow("\"sensor\": { \"gain\": null }", "'gain' must be a number, not null")]
    [DataRow(
        "\"sensor\": { \"noise\": 0.1, \"noiseFrom\": "
            + "{ \"file\": \"none.csv\", \"rate\": 1000, \"hertz\": 60, \"amperes\": 0.1 } }",
        "'noise' and 'noiseFrom' are both given; leave one of them")]
    [DataRow(
        "\"sensor\": { \"noiseFrom\": { \"file\": \"none.csv\", \"rate\": 1000, \"hertz\": 60, \"amperes\": 0.1 } }",
        "the recording cannot be used: There is no file none.csv")]
    [DataRow("\"converter\": { \"tenBit\": true }", "'converter' has no member 'tenBit'; its members are dropOuts, stepErrors")]
    [DataRow("\"readings\": { \"pace\": \"arm\" }", "'pace' must be one of ideal, esp32, not 'arm'")]
    [DataRow(
        "\"readings\": { \"pace\": \"esp32\", \"rate\": 1000 }",
        "at the pace of the 'esp32' the board reads as fast as it can; leave 'rate' and 'jitter' out")]
    public void A_bad_member_is_explained_in_a_sentence(string member, string sentence, bool isBeginning = false) =>
        Check($"{{ \"seconds\": 9, \"tools\": [ {Saw} ], {member} }}", sentence, isBeginning);

    [TestMethod]
    [DataRow(
        "induction",
        "\"conduction\": 0.5",
        "'conduction' means nothing to a tool of kind 'induction'; it is for phase-chopped")]
    [DataRow(
        "soft-start",
        "\"inrush\": 5",
        "'inrush' means nothing to a tool of kind 'soft-start'; it is for "
            + "induction, universal, phase-chopped, half-wave, rectified, lamp, charger, compressor, transformer, inverter, "
            + "corrected")]
    [DataRow("induction", "\"inrush\": 2", "'inrush' of such a motor must be 2.5 or more, not 2")]
    [DataRow("universal", "\"inrush\": 1", "'inrush' of such a motor must be 1.5 or more, not 1")]
    [DataRow("universal", "\"stageAmperes\": 4", "'stageAmperes' must be below half of 'amperes'")]
    [DataRow(
        "universal",
        "\"runsSeconds\": 4",
        "'runsSeconds' means nothing to a tool of kind 'universal'; it is for compressor")]
    [DataRow("induction", "\"toolLine\": 1", "'toolLine' must be true or false, not a number")]
    [DataRow("induction", "\"circuit\": \"x\"", "there is no circuit 'x'; the circuits are bench")]
    [DataRow("rectified", "\"pulseMilliseconds\": 8.5", "'pulseMilliseconds' must be from 0.1 to 8.33, not 8.5")]
    [DataRow("drill", "\"inrush\": 5", "'kind' must be one of " + Kinds + ", not 'drill'")]
    public void A_bad_tool_is_explained_in_a_sentence(string kind, string member, string sentence)
    {
        string tool = $"{{ \"name\": \"saw\", \"kind\": \"{kind}\", \"amperes\": 8, {member} }}";
        Check($"{{ \"seconds\": 9, \"tools\": [ {tool} ] }}", sentence, isBeginning: false);
    }

    [TestMethod]
    [DataRow("{ \"at\": 1 }", "a step needs 'do'; its members are at, do, tool, ", true)]
    [DataRow("{ \"do\": \"press\", \"seconds\": 1 }", "a 'press' step needs 'at'; its members are at, do, seconds")]
    [DataRow("{ \"at\": 1, \"do\": \"arc-ends\" }", "'do' must be one of start, stop, load, ", true)]
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
    [DataRow("{ \"at\": 1, \"do\": \"load\", \"tool\": \"saw\", \"load\": 0 }", "'load' must be from 0.01 to 10, not 0")]
    [DataRow("{ \"at\": 1, \"do\": \"noise\", \"amperes\": -1 }", "'amperes' must be from 0 to 100, not -1")]
    public void A_bad_step_is_explained_in_a_sentence(string step, string sentence, bool isBeginning = false) =>
        Check($"{{ \"seconds\": 9, \"tools\": [ {Saw} ], \"steps\": [ {step} ] }}", sentence, isBeginning);

    [TestMethod]
    [DataRow("\"mains\": { \"volts\": 120,\n\"hertz\": 70 }", "line 3: 'hertz' must be from 45 to 65, not 70")]
    [DataRow(
        "\"mains\": {\n\"volts\": 120\n}",
        "line 2: 'mains' needs 'hertz'; its members are volts, hertz, ohms, wanderHertz, wanderSeconds, flattening")]
    [DataRow("\"vacuum\": {\n\n\"circuit\": \"x\" }", "line 4: there is no circuit 'x'; the circuits are bench")]
    [DataRow(
        "\"steps\": [ { \"at\": 5, \"do\": \"sensor-out\" },\n{ \"at\": 4, \"do\": \"sensor-in\" } ]",
        "line 3: this step is at 4 s, before the one above it at 5 s; put the steps in order of time")]
    [DataRow(
        "\"steps\": [ { \"at\": 5,\n\"do\": \"start\",\n\"tool\": \"axe\" } ]",
        "line 4: there is no tool 'axe'; the tools are saw")]
    public void The_line_is_that_of_the_member(string member, string expected)
    {
        string json = $"{{ \"seconds\": 9, \"tools\": [ {Saw} ],\n{member} }}";
        UserException exception = Assert.ThrowsExactly<UserException>(() => Parse(json));
        Assert.AreEqual($"bad.json, {expected}.", exception.Message);
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
