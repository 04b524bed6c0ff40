namespace NanoDustSwitch.ConformanceTests;

[TestClass]
public class NoGenericsTests
{
    [TestMethod]
    public void TheDeviceBuildsHaveNoGenerics()
    {
        foreach (var fileName in DeviceAssemblies.Product)
        {
            using var assembly = DeviceAssemblies.Read(fileName);
            var findings = NoGenericsRule.Findings(assembly);
            Assert.IsEmpty(findings, string.Join(Environment.NewLine, findings));
        }
    }

    // Each row is one way in which a generic gets into a device build, and the line that must name it.
    [TestMethod]
    [DataRow("GenericBox`1: is a generic type")]
    [DataRow("GenericsSample.Same: is a generic method")]
    [DataRow("GenericsSample.CallsGenericMethod: uses the generic method T NanoDustSwitch.BadSamples.GenericsSample::Same<System.Int32>(T)")]
    [DataRow("GenericsSample.MakesGenericType: uses the generic type NanoDustSwitch.BadSamples.GenericBox`1<System.Int32>")]
    [DataRow("GenericsSample.TakesAction: uses the generic type System.Action`1<System.Int32>")]
    [DataRow("GenericsSample.MakesLambda: uses the generic type System.Func`2<System.Int32,System.Int32>")]
    [DataRow("GenericsSample.HoldsInArray: uses the generic type NanoDustSwitch.BadSamples.GenericBox`1<System.String>")]
    [DataRow("GenericsSample.NamesOpenType: uses the generic type System.Func`1")]
    public void AGenericIsFound(string expected)
    {
        var findings = BadSampleFindings();
        Assert.IsTrue(
            findings.Any(finding => finding.Contains(expected, StringComparison.Ordinal)),
            $"Not found: {expected}{Environment.NewLine}among:{Environment.NewLine}{string.Join(Environment.NewLine, findings)}");
    }

    [TestMethod]
    public void OrdinaryCodeIsLeftAlone()
    {
        var findings = BadSampleFindings();
        Assert.IsFalse(
            findings.Any(finding => finding.Contains("OrdinarySample", StringComparison.Ordinal)),
            string.Join(Environment.NewLine, findings));
    }

    private static IReadOnlyList<string> BadSampleFindings()
    {
        using var assembly = DeviceAssemblies.Read(DeviceAssemblies.BadSamples);
        return NoGenericsRule.Findings(assembly);
    }
}
