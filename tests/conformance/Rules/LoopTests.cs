using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

[TestClass]
public class LoopTests
{
    // All that the loop enters only now and then. A cut keeps out what stands behind it, so the list is short and each has its
    // reason.
    private static readonly LoopCut[] s_cuts =
    [
        new("SerialConsole.TakeLine", "a line was typed"),
        new("Word.WriteRow", "an answer of many rows to a typed word is being written"),
        new("Guide.Update", "a guide was begun by a typed word"),
        new("SerialConsole.AbortGuideByButton", "a guide was begun by a typed word, and the button ends it"),
        new("SerialConsole.Warn", "the vacuum has turned out to run with its relay told to open, or has stopped"),
        new("Recorder.SendRow", "the first second of a recording: settings and state, before and between its first buckets"),
        new("Recorder.Stop", "a recording ends"),
        new("FlashKeeper.SaveSettings", "'save' was typed"),
        new("FlashKeeper.TellNotKept", "a word changed a tool, and the flash has failed"),
        new("SerialConsole.Interject", "settings were saved, or a hold was not; once each"),
        new("SafeBoard.WriteSlot", "a write to flash, with the relay open; it stalls the readings whatever it makes"),
        new("Restarter.Restart", "the board restarts"),
        new("DetectionCore.UseLongBuckets", "the board has turned out to be slow, once after a boot"),
        new("Esp32Board.OpenToolLine", "the converter has not opened, so the vacuum is held off"),
        new("OutputLine.Rest", "a line that is low already is told to rest: at the end of a run, or once after a boot"),
    ];

    [TestMethod]
    public void TheLoopMakesNoObjects()
    {
        using var resolver = new DeviceResolver();
        var (rule, step) = Product(resolver);
        Findings.AssertNone(rule.Findings(step, s_cuts));
    }

    [TestMethod]
    public void EveryCutKeepsSomethingOut()
    {
        using var resolver = new DeviceResolver();
        var (rule, step) = Product(resolver);
        Findings.AssertNone(rule.FindingsInCuts(step, s_cuts));
        Assert.HasCount(s_cuts.Length, s_cuts.DistinctBy(cut => cut.Method, StringComparer.Ordinal));
        Assert.IsTrue(s_cuts.All(cut => cut.Reason.Length > 0));
    }

    [TestMethod]
    [DataRow("MakesAnObject: makes a Object")]
    [DataRow("MakesAnArray: makes an array of Byte")]
    [DataRow("Boxes: makes an object of a Int32")]
    [DataRow("NamesAText: makes the text 'again and again'")]
    [DataRow("JoinsTexts: is given an object by String.Concat")]
    [DataRow("AsksForText: is given an object by Int32.ToString")]
    [DataRow("MakesADelegate: makes a Action")]
    [DataRow("CallsADelegate: calls a EventHandler, and what that comes to cannot be seen")]
    [DataRow("HasAStruct: has a LoopPlace, which is an object on the device")]
    [DataRow("Sleeps: sleeps")]
    [DataRow("TakesALine: makes a String")]
    public void ABreachIsFound(string expected) => Assert.Contains($"LoopSample.{expected}", SampleFindings());

    [TestMethod]
    [DataRow("LoopPart.Look: makes an array of Int32", DisplayName = "through an interface")]
    [DataRow("LoopPart.Turn: makes an array of Int32", DisplayName = "through a base class")]
    public void ABreachBehindACallIsFound(string expected) => Assert.Contains(expected, SampleFindings());

    [TestMethod]
    [DataRow("LoopSample.Harmless")]
    [DataRow("LoopSample.Refuses")]
    [DataRow("LoopSample..ctor")]
    public void TheRestIsLeftAlone(string place) =>
        Assert.IsFalse(SampleFindings().Any(finding => finding.StartsWith(place, StringComparison.Ordinal)));

    [TestMethod]
    public void WhatIsCutIsNotEntered() =>
        Assert.IsFalse(SampleFindings("LoopSample.Typed").Any(
            finding => finding.StartsWith("LoopSample.TakesALine", StringComparison.Ordinal)));

    [TestMethod]
    [DataRow("LoopSample.Gone", "LoopSample.Gone: there is no such method")]
    [DataRow("LoopSample..ctor", "LoopSample..ctor: the loop does not come by it")]
    [DataRow("LoopSample.Harmless", "LoopSample.Harmless: keeps nothing out")]
    public void AWrongCutIsFound(string method, string expected)
    {
        using var resolver = new DeviceResolver();
        var (rule, step) = Sample(resolver);
        CollectionAssert.AreEqual(
            new[] { expected }, rule.FindingsInCuts(step, [new("LoopSample.Typed", ""), new(method, "")]).ToArray());
    }

    private static string[] SampleFindings(params string[] cuts)
    {
        using var resolver = new DeviceResolver();
        var (rule, step) = Sample(resolver);
        return [.. rule.Findings(step, [.. cuts.Select(cut => new LoopCut(cut, ""))])];
    }

    private static (LoopRule Rule, MethodDefinition Step) Sample(DeviceResolver resolver) =>
        Loop(new CallGraph([resolver.Read(DeviceAssemblies.BadSamples)]), "LoopSample.Step");

    private static (LoopRule Rule, MethodDefinition Step) Product(DeviceResolver resolver) =>
        Loop(new CallGraph([.. DeviceAssemblies.Product.Select(resolver.Read)]), "Switch.Step");

    private static (LoopRule Rule, MethodDefinition Step) Loop(CallGraph graph, string step) =>
        (new LoopRule(graph), graph.Methods.Single(method => LoopRule.NameOf(method) == step));
}
