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
        var twin = new ProjectTwin(path);
        Findings.AssertNone(
        [
            .. FilesRule.Findings(twin),
            .. SettingsRule.Findings(twin),
            .. ProjectReferencesRule.Findings(twin),
            .. PackagesRule.Findings(twin),
        ]);
    }

    [TestMethod]
    [DynamicData(nameof(All))]
    public void WhatABuildLeavesBelowDeviceIsNotCompiledIntoTheTwin(string path)
    {
        var twin = new ProjectTwin(path);
        twin.Sources.Add("device/obj/Release/Made.cs");
        Assert.IsEmpty(FilesRule.Findings(twin));

        twin.SharedByCsproj.Descendants("DefaultItemExcludes").Remove();
        Findings.AssertFound(@"device\obj\Release\Made.cs", FilesRule.Findings(twin));
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
    public void AFileThatTheNfprojLacksIsFoundWithItsLine() => AssertFound(
        @"lacks     <Compile Include=""..\Swing\New.cs""><Link>Swing\New.cs</Link></Compile>",
        FilesRule.Findings,
        twin => twin.Sources.Add("Swing/New.cs"));

    [TestMethod]
    public void AFileThatIsNoMoreIsFound() => AssertFound(
        @"extra <Compile Include=""..\Swing\SwingWindow.cs""",
        FilesRule.Findings,
        twin => twin.Sources.Remove("Swing/SwingWindow.cs"));

    [TestMethod]
    public void AFileThatTheCsprojLeavesOutIsFound() => AssertFound(
        "extra",
        FilesRule.Findings,
        twin => AddToCsproj(twin, "ItemGroup", new XElement("Compile", new XAttribute("Remove", @"Swing\**"))));

    [TestMethod]
    public void APatternInPlaceOfAFileIsFound() => AssertFound(
        "extra", FilesRule.Findings, twin => Nfproj(twin, "Compile").SetAttributeValue("Include", @"..\**\*.cs"));

    [TestMethod]
    public void AFileUnderAnotherNameInTheTreeIsFound() =>
        AssertFound("Else.cs", FilesRule.Findings, twin => Nfproj(twin, "Link").Value = "Else.cs");

    [TestMethod]
    public void AFileThatStandsTwiceIsFound() => AssertFound(
        "repeats", FilesRule.Findings, twin => Nfproj(twin, "Compile").AddAfterSelf(Nfproj(twin, "Compile")));

    [TestMethod]
    [DataRow("AssemblyName")]
    [DataRow("RootNamespace")]
    [DataRow("OutputType")]
    [DataRow("LangVersion")]
    [DataRow("Optimize")]
    public void AnotherSettingIsFound(string name) =>
        AssertFound(name, SettingsRule.Findings, twin => Nfproj(twin, name).Value = "else");

    [TestMethod]
    [DataRow("Nullable")]
    [DataRow("AllowUnsafeBlocks")]
    [DataRow("CheckForOverflowUnderflow")]
    [DataRow("DefineConstants")]
    [DataRow("NoWarn")]
    public void ASettingOfOneAloneIsFound(string name) =>
        AssertFound(name, SettingsRule.Findings, twin => AddToCsproj(twin, "PropertyGroup", new XElement(name, "else")));

    [TestMethod]
    public void ASettingThatTheCsprojLeavesToTheWholeRepositoryIsFound() => AssertFound(
        "Nullable is 'enable' in the .csproj and 'disable'",
        SettingsRule.Findings,
        twin => twin.Csproj.Descendants("Nullable").Remove());

    [TestMethod]
    public void AReferenceToAnotherProjectIsFound()
    {
        AssertFound(
            @"lacks     <ProjectReference Include=""..\..\..\detection-core\device\DetectionCore.nfproj"" />",
            ProjectReferencesRule.Findings,
            twin => Nfproj(twin, "ProjectReference").Remove(),
            Switch);
        AssertFound(
            "extra", ProjectReferencesRule.Findings, twin => twin.Csproj.Descendants("ProjectReference").Remove(), Switch);
    }

    [TestMethod]
    public void APackageThatIsMissingOrLeftOverIsFound()
    {
        AssertFound(
            @"lacks     <package id=""nanoFramework.CoreLibrary"" version=",
            PackagesRule.Findings,
            twin => twin.Packages.Descendants("package").First().Remove(),
            UnitTests);
        AssertFound(
            "packages.config has extra",
            PackagesRule.Findings,
            twin => twin.Packages.Root!.Add(new XElement("package", new XAttribute("id", "nanoFramework.System.Text"))));
    }

    [TestMethod]
    [DataRow("packages.config lacks     <package id=\"nanoFramework.System.IO.Ports\" version=\"1.1.139\"")]
    [DataRow("packages.config lacks     <package id=\"nanoFramework.System.Text\" version=\"1.3.42\"")]
    [DataRow(@"<HintPath>..\..\packages\nanoFramework.System.Text.1.3.42\lib\nanoFramework.System.Text.dll</HintPath>")]
    public void WhatAPackageDrawsInIsToBeNamed(string words) => AssertFound(
        words,
        PackagesRule.Findings,
        twin => CompileAgainst(twin, "System.IO.Ports, Version=1.1.139.0, Culture=neutral, PublicKeyToken=c07d481e9758c731"));

    [TestMethod]
    [DataRow("mscorlib, Version=1.17.10.0, Culture=neutral, PublicKeyToken=c07d481e9758c731")]
    [DataRow("mscorlib, Version=1.17.11.0, Culture=neutral, PublicKeyToken=b77a5c561934e089")]
    [DataRow("System.Collections, Version=1.17.11.0, Culture=neutral, PublicKeyToken=c07d481e9758c731")]
    public void ALibraryThatNoPackageBringsIsFound(string reference) => AssertFound(
        $"no known package brings {reference}", PackagesRule.Findings, twin => CompileAgainst(twin, reference));

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
        Findings.AssertFound("DetectionCore.nfproj lacks     <Reference Include=\"mscorlib, Version=1.17.11.0,", findings);
        Findings.AssertFound($"DetectionCore.nfproj has extra <Reference Include=\"{name.Value}\"", findings);
    }

    [TestMethod]
    [DataRow("1.17.11", "1.17.10")]
    [DataRow(@"..\..\packages", @"..\packages")]
    [DataRow("mscorlib.dll", "System.dll")]
    public void AHintToAnotherPlaceIsFound(string now, string then) => AssertFound(
        @"lacks     <Reference Include=",
        PackagesRule.Findings,
        twin => Nfproj(twin, "HintPath").Value = Nfproj(twin, "HintPath").Value.Replace(now, then, StringComparison.Ordinal));

    [TestMethod]
    [DataRow("version", "1.17.10")]
    [DataRow("id", "nanoFramework.CoreLibrary.NoReflection")]
    [DataRow("targetFramework", "net10.0")]
    public void APackageOfAnotherVersionIsFound(string attribute, string then) => AssertFound(
        "packages.config has extra",
        PackagesRule.Findings,
        twin => twin.Packages.Descendants("package").First().SetAttributeValue(attribute, then));

    [TestMethod]
    public void AnotherVersionForTheCsprojIsFound() => AssertFound(
        "nanoFramework.CoreLibrary is 1.17.12 in Directory.Packages.props and 1.17.11",
        PackagesRule.Findings,
        twin => twin.CentralPackages.Descendants("PackageVersion")
            .First(item => item.Attribute("Include")!.Value == "nanoFramework.CoreLibrary")
            .SetAttributeValue("Version", "1.17.12"));

    [TestMethod]
    public void AConditionThatIsNotUnderstoodIsNotPassedOver()
    {
        var twin = new ProjectTwin(Core);
        Nfproj(twin, "Compile").SetAttributeValue("Condition", "'$(Configuration)' == 'Debug'");
        Assert.ThrowsExactly<NotSupportedException>(() => FilesRule.Findings(twin).ToList());
    }

    private static void AddToCsproj(ProjectTwin twin, string group, XElement element) =>
        twin.Csproj.Root!.Add(new XElement(group, element));

    private static void CompileAgainst(ProjectTwin twin, string reference) =>
        twin.CompiledAgainst.Add(AssemblyNameReference.Parse(reference));

    /// <summary>The first element of a name in the .nfproj.</summary>
    private static XElement Nfproj(ProjectTwin twin, string name) =>
        twin.Nfproj.Descendants().First(element => element.Name.LocalName == name);

    /// <summary>Spoils a twin, and looks for what the rule says of it.</summary>
    private static void AssertFound(
        string words, Func<ProjectTwin, IEnumerable<string>> rule, Action<ProjectTwin> spoil, string path = Core)
    {
        var twin = new ProjectTwin(path);
        spoil(twin);
        Findings.AssertFound(words, rule(twin));
    }
}
