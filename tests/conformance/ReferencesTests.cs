using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests;

[TestClass]
public class ReferencesTests
{
    [TestMethod]
    public void TheDeviceBuildsReferenceTheDeviceLibraryAndOurOwn()
    {
        foreach (var fileName in DeviceAssemblies.Product)
        {
            using var assembly = DeviceAssemblies.Read(fileName);
            var findings = ReferencesRule.Findings(assembly);
            Assert.IsEmpty(findings, string.Join(Environment.NewLine, findings));
        }
    }

    [TestMethod]
    [DataRow("mscorlib", "4.0.0.0")]
    [DataRow("netstandard", "2.0.0.0")]
    [DataRow("System.Runtime", "10.0.0.0")]
    public void AnotherReferenceIsFound(string name, string version)
    {
        using var assembly = DeviceAssemblies.Read(DeviceAssemblies.Product[0]);
        assembly.MainModule.AssemblyReferences.Add(new AssemblyNameReference(name, Version.Parse(version)));
        var findings = ReferencesRule.Findings(assembly);
        Assert.HasCount(1, findings);
        Assert.Contains($"references {name} {version}", findings[0], StringComparison.Ordinal);
    }

    [TestMethod]
    public void AMissingLibraryIsFound()
    {
        using var assembly = DeviceAssemblies.Read(DeviceAssemblies.Product[0]);
        assembly.MainModule.AssemblyReferences.Clear();
        var findings = ReferencesRule.Findings(assembly);
        Assert.HasCount(1, findings);
        Assert.Contains("does not reference mscorlib", findings[0], StringComparison.Ordinal);
    }
}
