using System.Xml.Linq;
using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Projects;

[TestClass]
public class TwinTests
{
    private const string Core = "detection-core/DetectionCore";
    private const string Switch = "firmware/switch/Switch";
    private const string UnitTests = "tests/unit/UnitTests";

    public static IEnumerable<object[]> All => ProjectTwin.All.Select(path => new object[] { path });

    [TestMethod]
    [DynamicData(nameof(All))]
    public void TheNfprojAgreesWithTheCsproj(string path)
    {
        var findings = Findings(new ProjectTwin(path));
        Assert.IsEmpty(findings, Environment.NewLine + string.Join(Environment.NewLine, findings));
    }

    [TestMethod]
    [DynamicData(nameof(All))]
    public void WhatABuildLeavesBelowDeviceIsNotCompiledIntoTheTwin(string path)
    {
        var twin = new ProjectTwin(path);
        twin.Sources.Add("device/obj/Release/Made.cs");
        Assert.IsEmpty(FilesRule.Findings(twin));

        twin.SharedByCsproj.Descendants("DefaultItemExcludes").Remove();
        AssertFound(@"device\obj\Release\Made.cs", FilesRule.Findings(twin));
    }

    [TestMethod]
    public void TheUnitTestsCompileWithoutTheDesktopsFolderAndTheDeclarations()
    {
        var files = FilesRule.CompiledByCsproj(new ProjectTwin(UnitTests)).ToList();
        Assert.Contains("bench/FakeBoard.cs", files);
        Assert.DoesNotContain(file => file.StartsWith("desktop/", StringComparison.Ordinal), files);
        Assert.DoesNotContain(file => file.StartsWith("declarations/", StringComparison.Ordinal), files);
    }

    [TestMethod]
    public void AFileThatTheNfprojLacksIsFoundWithItsLine()
    {
        var twin = new ProjectTwin(Core);
        twin.Sources.Add("Swing/New.cs");
        AssertFound(
            @"lacks     <Compile Include=""..\Swing\New.cs""><Link>Swing\New.cs</Link></Compile>", FilesRule.Findings(twin));
    }

    [TestMethod]
    public void AFileThatIsNoMoreIsFound()
    {
        var twin = new ProjectTwin(Core);
        twin.Sources.Remove("Swing/SwingWindow.cs");
        AssertFound(@"extra <Compile Include=""..\Swing\SwingWindow.cs""", FilesRule.Findings(twin));
    }

    [TestMethod]
    public void AFileThatTheCsprojLeavesOutIsFound()
    {
        var twin = new ProjectTwin(Core);
        twin.Csproj.Root!.Add(new XElement("ItemGroup", new XElement("Compile", new XAttribute("Remove", @"Swing\**"))));
        AssertFound("extra", FilesRule.Findings(twin));
    }

    [TestMethod]
    public void APatternInPlaceOfAFileIsFound()
    {
        var twin = new ProjectTwin(Core);
        Nfproj(twin, "Compile").SetAttributeValue("Include", @"..\**\*.cs");
        AssertFound("extra", FilesRule.Findings(twin));
    }

    [TestMethod]
    public void AFileUnderAnotherNameInTheTreeIsFound()
    {
        var twin = new ProjectTwin(Core);
        Nfproj(twin, "Link").Value = "Else.cs";
        AssertFound("Else.cs", FilesRule.Findings(twin));
    }

    [TestMethod]
    public void AFileThatStandsTwiceIsFound()
    {
        var twin = new ProjectTwin(Core);
        var first = Nfproj(twin, "Compile");
        first.AddAfterSelf(first);
        AssertFound("repeats", FilesRule.Findings(twin));
    }

    [TestMethod]
    [DataRow("AssemblyName")]
    [DataRow("RootNamespace")]
    [DataRow("OutputType")]
    [DataRow("LangVersion")]
    [DataRow("Optimize")]
    public void AnotherSettingIsFound(string name)
    {
        var twin = new ProjectTwin(Core);
        Nfproj(twin, name).Value = "else";
        AssertFound(name, SettingsRule.Findings(twin));
    }

    [TestMethod]
    [DataRow("Nullable")]
    [DataRow("AllowUnsafeBlocks")]
    [DataRow("CheckForOverflowUnderflow")]
    [DataRow("DefineConstants")]
    [DataRow("NoWarn")]
    public void ASettingOfOneAloneIsFound(string name)
    {
        var twin = new ProjectTwin(Core);
        twin.Csproj.Root!.Add(new XElement("PropertyGroup", new XElement(name, "else")));
        AssertFound(name, SettingsRule.Findings(twin));
    }

    [TestMethod]
    public void ASettingThatTheCsprojLeavesToTheWholeRepositoryIsFound()
    {
        var twin = new ProjectTwin(Core);
        twin.Csproj.Descendants("Nullable").Remove();
        AssertFound("Nullable is 'enable' in the .csproj and 'disable'", SettingsRule.Findings(twin));
    }

    [TestMethod]
    public void AReferenceToAnotherProjectIsFound()
    {
        var twin = new ProjectTwin(Switch);
        var reference = Nfproj(twin, "ProjectReference");
        reference.Remove();
        AssertFound(
            @"lacks     <ProjectReference Include=""..\..\..\detection-core\device\DetectionCore.nfproj"" />",
            ProjectReferencesRule.Findings(twin));

        twin = new ProjectTwin(Switch);
        twin.Csproj.Descendants("ProjectReference").Remove();
        AssertFound("extra", ProjectReferencesRule.Findings(twin));
    }

    [TestMethod]
    public void APackageThatIsMissingOrLeftOverIsFound()
    {
        var twin = new ProjectTwin(UnitTests);
        twin.Packages.Descendants("package").First().Remove();
        AssertFound(@"lacks     <package id=""nanoFramework.CoreLibrary"" version=", PackagesRule.Findings(twin));

        twin = new ProjectTwin(Core);
        twin.Packages.Root!.Add(new XElement("package", new XAttribute("id", "nanoFramework.System.Text")));
        AssertFound("packages.config has extra", PackagesRule.Findings(twin));
    }

    [TestMethod]
    public void WhatAPackageDrawsInIsToBeNamed()
    {
        var twin = new ProjectTwin(Core);
        twin.CompiledAgainst.Add(
            AssemblyNameReference.Parse("System.IO.Ports, Version=1.1.139.0, Culture=neutral, PublicKeyToken=c07d481e9758c731"));
        var findings = PackagesRule.Findings(twin).ToList();
        AssertFound("packages.config lacks     <package id=\"nanoFramework.System.IO.Ports\" version=\"1.1.139\"", findings);
        AssertFound("packages.config lacks     <package id=\"nanoFramework.System.Text\" version=\"1.3.42\"", findings);
        AssertFound(
            @"<HintPath>..\..\packages\nanoFramework.System.Text.1.3.42\lib\nanoFramework.System.Text.dll</HintPath>", findings);
    }

    [TestMethod]
    [DataRow("mscorlib, Version=1.17.10.0, Culture=neutral, PublicKeyToken=c07d481e9758c731")]
    [DataRow("mscorlib, Version=1.17.11.0, Culture=neutral, PublicKeyToken=b77a5c561934e089")]
    [DataRow("System.Collections, Version=1.17.11.0, Culture=neutral, PublicKeyToken=c07d481e9758c731")]
    public void ALibraryThatNoPackageBringsIsFound(string reference)
    {
        var twin = new ProjectTwin(Core);
        twin.CompiledAgainst.Add(AssemblyNameReference.Parse(reference));
        AssertFound($"no known package brings {reference}", PackagesRule.Findings(twin));
    }

    [TestMethod]
    [DataRow("1.17.11.0", "1.17.10.0")]
    [DataRow("c07d481e9758c731", "b77a5c561934e089")]
    [DataRow("mscorlib,", "System.Runtime,")]
    public void AReferenceOfAnotherNameVersionOrKeyIsFound(string now, string then)
    {
        var twin = new ProjectTwin(Core);
        var name = Nfproj(twin, "Reference").Attribute("Include")!;
        name.Value = name.Value.Replace(now, then, StringComparison.Ordinal);
        var findings = PackagesRule.Findings(twin).ToList();
        AssertFound("DetectionCore.nfproj lacks     <Reference Include=\"mscorlib, Version=1.17.11.0,", findings);
        AssertFound($"DetectionCore.nfproj has extra <Reference Include=\"{name.Value}\"", findings);
    }

    [TestMethod]
    [DataRow("1.17.11", "1.17.10")]
    [DataRow(@"..\..\packages", @"..\packages")]
    [DataRow("mscorlib.dll", "System.dll")]
    public void AHintToAnotherPlaceIsFound(string now, string then)
    {
        var twin = new ProjectTwin(Core);
        var hint = Nfproj(twin, "HintPath");
        hint.Value = hint.Value.Replace(now, then, StringComparison.Ordinal);
        AssertFound(@"lacks     <Reference Include=", PackagesRule.Findings(twin));
    }

    [TestMethod]
    [DataRow("version", "1.17.10")]
    [DataRow("id", "nanoFramework.CoreLibrary.NoReflection")]
    [DataRow("targetFramework", "net10.0")]
    public void APackageOfAnotherVersionIsFound(string attribute, string then)
    {
        var twin = new ProjectTwin(Core);
        twin.Packages.Descendants("package").First().SetAttributeValue(attribute, then);
        AssertFound("packages.config has extra", PackagesRule.Findings(twin));
    }

    [TestMethod]
    public void AnotherVersionForTheCsprojIsFound()
    {
        var twin = new ProjectTwin(Core);
        var version = twin.CentralPackages.Descendants("PackageVersion")
            .First(item => item.Attribute("Include")!.Value == "nanoFramework.CoreLibrary");
        version.SetAttributeValue("Version", "1.17.12");
        AssertFound("nanoFramework.CoreLibrary is 1.17.12 in Directory.Packages.props and 1.17.11", PackagesRule.Findings(twin));
    }

    [TestMethod]
    public void AConditionThatIsNotUnderstoodIsNotPassedOver()
    {
        var twin = new ProjectTwin(Core);
        Nfproj(twin, "Compile").SetAttributeValue("Condition", "'$(Configuration)' == 'Debug'");
        Assert.ThrowsExactly<NotSupportedException>(() => FilesRule.Findings(twin).ToList());
    }

    private static List<string> Findings(ProjectTwin twin) =>
    [
        .. FilesRule.Findings(twin),
        .. SettingsRule.Findings(twin),
        .. ProjectReferencesRule.Findings(twin),
        .. PackagesRule.Findings(twin),
    ];

    /// <summary>The first element of a name in the .nfproj.</summary>
    private static XElement Nfproj(ProjectTwin twin, string name) =>
        twin.Nfproj.Descendants().First(element => element.Name.LocalName == name);

    private static void AssertFound(string words, IEnumerable<string> findings) =>
        Assert.Contains(finding => finding.Contains(words, StringComparison.Ordinal), findings);
}
