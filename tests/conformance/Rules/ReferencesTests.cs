using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

[TestClass]
public class ReferencesTests
{
    private static readonly byte[] s_token = [0xc0, 0x7d, 0x48, 0x1e, 0x97, 0x58, 0xc7, 0x31];

    [TestMethod]
    [DataRow("mscorlib", "4.0.0.0")]
    [DataRow("netstandard", "2.0.0.0")]
    [DataRow("System.Runtime", "10.0.0.0")]
    [DataRow("System.Device.Gpio", "1.1.61.0")]
    [DataRow("System.Math", "1.5.116.0")]
    public void AnotherReferenceIsFound(string name, string version) =>
        AssertFound(name, version, s_token, $"references {name}, Version={version}");

    [TestMethod]
    public void AnotherKeyIsFound() =>
        AssertFound("System.IO.Ports", "1.1.139.0", [], "references System.IO.Ports, Version=1.1.139.0");

    [TestMethod]
    public void AMissingLibraryIsFound()
    {
        using var assembly = DeviceAssemblies.Read(DeviceAssemblies.Product[0]);
        assembly.MainModule.AssemblyReferences.Clear();
        var finding = new ReferencesRule().Findings(assembly).Single();
        Assert.Contains("does not reference mscorlib", finding, StringComparison.Ordinal);
    }

    private static void AssertFound(string name, string version, byte[] token, string expected)
    {
        using var assembly = DeviceAssemblies.Read(DeviceAssemblies.Product[0]);
        assembly.MainModule.AssemblyReferences.Add(
            new AssemblyNameReference(name, Version.Parse(version)) { PublicKeyToken = token });
        var finding = new ReferencesRule().Findings(assembly).Single();
        Assert.Contains(expected, finding, StringComparison.Ordinal);
    }
}
