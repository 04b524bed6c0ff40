using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

[TestClass]
public class ReferencesTests
{
    private static readonly byte[] s_token = [0xc0, 0x7d, 0x48, 0x1e, 0x97, 0x58, 0xc7, 0x31];

    [TestMethod]
    [DataRow("mscorlib", "4.0.0.0", true)]
    [DataRow("netstandard", "2.0.0.0", true)]
    [DataRow("System.Runtime", "10.0.0.0", true)]
    [DataRow("System.Device.Gpio", "1.1.61.0", true)]
    [DataRow("System.Math", "1.5.116.0", true)]
    [DataRow("System.IO.Ports", "1.1.139.0", false, DisplayName = "another key")]
    public void AnotherReferenceIsFound(string name, string version, bool hasKey) => AssertFound(
        $"references {name}, Version={version}",
        references => references.Add(
            new AssemblyNameReference(name, Version.Parse(version)) { PublicKeyToken = hasKey ? s_token : [] }));

    [TestMethod]
    public void AMissingLibraryIsFound() => AssertFound("does not reference mscorlib", references => references.Clear());

    private static void AssertFound(string expected, Action<ICollection<AssemblyNameReference>> doctor)
    {
        using var assembly = DeviceAssemblies.Read(DeviceAssemblies.Product[0]);
        doctor(assembly.MainModule.AssemblyReferences);
        var finding = new ReferencesRule().Findings(assembly).Single();
        Assert.Contains(expected, finding, StringComparison.Ordinal);
    }
}
