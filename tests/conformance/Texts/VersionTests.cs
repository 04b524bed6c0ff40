using System.Reflection;
using System.Text.RegularExpressions;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.ConformanceTests.Texts;

/// <summary>The version is stated in one source file, and everything that is built carries it.</summary>
[TestClass]
public class VersionTests
{
    private const string TheOnePlace = "detection-core/Properties/ProductVersion.cs";
    private const string Changelog = ".github/CHANGELOG.md";

    private static readonly Regex s_stated =
        new($@"(?<![\w.]){Regex.Escape(ProductVersion.Text)}(?!\d)", RegexOptions.None, TimeSpan.FromSeconds(1));

    // Versions of others, which may be the same by chance.
    private static readonly string[] s_packageLists =
        ["Directory.Packages.props", "packages.config", ".nfproj", "dotnet-tools.json"];

    [TestMethod]
    public void NoOtherFileStatesTheVersion()
    {
        var findings = TextFiles.All
            .Where(file => file.Key is not (TheOnePlace or Changelog)
                && !s_packageLists.Any(list => file.Key.EndsWith(list, StringComparison.Ordinal))
                && States(file.Value))
            .Select(file => $"{file.Key} states the version; only {TheOnePlace} does")
            .ToList();
        Assert.IsEmpty(findings, Environment.NewLine + string.Join(Environment.NewLine, findings));
        Assert.IsTrue(States(TextFiles.All[TheOnePlace]));
    }

    [TestMethod]
    [DataRow("\"VERSION\"", true)]
    [DataRow("AssemblyVersion(\"VERSION.0\")", true)]
    [DataRow("for VERSION.", true)]
    [DataRow("1VERSION", false)]
    [DataRow("VERSION5", false)]
    public void TheVersionIsToldFromOtherNumbers(string text, bool expected) =>
        Assert.AreEqual(expected, States(text.Replace("VERSION", ProductVersion.Text, StringComparison.Ordinal)));

    [TestMethod]
    public void TheChangelogHasTheVersion() =>
        Assert.Contains($"## {ProductVersion.Text} ", TextFiles.All[Changelog], StringComparison.Ordinal);

    [TestMethod]
    public void EveryAssemblyCarriesTheVersion()
    {
        var device = DeviceAssemblies.Product.Select(DeviceAssemblies.PathOf);
        var desktop = Directory.EnumerateFiles(AppContext.BaseDirectory, "NanoDustSwitch.*.dll")
            .Append(typeof(VersionTests).Assembly.Location)
            .ToList();
        Assert.IsGreaterThan(DeviceAssemblies.Product.Count, desktop.Count);
        foreach (var path in device.Concat(desktop))
        {
            Assert.AreEqual(ProductVersion.Text + ".0", AssemblyName.GetAssemblyName(path).Version?.ToString(), path);
        }
    }

    private static bool States(string text) => s_stated.IsMatch(text);
}
