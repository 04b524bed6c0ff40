using NanoDustSwitch.ConformanceTests.Cost;

namespace NanoDustSwitch.ConformanceTests.Size;

[TestClass]
public class SizeTests
{
    private static readonly Lazy<SizeReport> s_report = new(() => new SizeReport(new DeviceCode(isMetered: false)));

    public TestContext TestContext { get; set; } = null!;

    // Shown by: dotnet test tests/conformance --filter SizeTests --logger "console;verbosity=detailed"
    [TestMethod]
    public void TheReport() => TestContext.WriteLine(s_report.Value.ToString());

    [TestMethod]
    public void TheSwitchFitsTheBoard()
    {
        var report = s_report.Value;
        Findings.AssertNone(SizeLimits.Findings(report.Product, report.Deployed, report.HeapInUse));
    }

    [TestMethod]
    [DataRow(458752, 71680, 65535, 61440, null)]
    [DataRow(458753, 0, 0, 0, "deployed: 458,753 bytes, more than 458,752")]
    [DataRow(0, 71681, 0, 0, "heap: 71,681 bytes, more than 71,680")]
    [DataRow(0, 0, 65536, 0, "Large: 65,536 bytes of code, more than 65,535")]
    [DataRow(0, 0, 0, 61441, "Large: 61,441 bytes of names and texts, more than 61,440")]
    public void WhatDoesNotFitIsFound(int deployed, int heapInUse, int code, int names, string? expected)
    {
        var large = new AssemblySize("Large", code, 0, names, 0, 0, 0, 0, 0);
        string[] findings = expected is null ? [] : [expected];
        CollectionAssert.AreEqual(findings, SizeLimits.Findings([large], deployed, heapInUse).ToArray());
    }

    // The one assembly whose size is known in both formats.
    [TestMethod]
    public void TheEstimateIsOnTheLargeSide()
    {
        var report = s_report.Value;
        Assert.IsGreaterThan(report.MsCorLibImage, report.MsCorLib.Image);
        Assert.IsLessThan(2 * report.MsCorLibImage, report.MsCorLib.Image);
    }

    [TestMethod]
    public void TheWholeSwitchIsWalkedThrough()
    {
        string[] parts =
        [
            "Switch", "Esp32Board", "OutputLine", "SerialLine", "DetectionCore", "FaultState", "LogEntry", "TeachWord", "Setting",
        ];
        CollectionAssert.IsSubsetOf(parts, s_report.Value.Heap.Bytes.Keys.ToArray());
    }
}
