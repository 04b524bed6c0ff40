using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using NanoDustSwitch.ConformanceTests.Projects;
using NanoDustSwitch.ConformanceTests.Texts;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.ConformanceTests.Image;

/// <summary>
/// The image is made from two copies of the sources, in different folders, with stand-ins for nanoFramework's packages. That
/// proves which file goes where, and not that a board takes the result.
/// </summary>
[TestClass]
public class ImageTests
{
    private const string ImageFile = $"artifacts/image/nanoDustSwitch-{ProductVersion.Text}-esp32.bin";
    private static string s_folder = "";
    private static string s_packages = "";
    private static string s_first = "";
    private static string s_second = "";
    private static string s_said = "";

    [ClassInitialize]
    public static void MakeTwo(TestContext context)
    {
        s_folder = Directory.CreateTempSubdirectory("dust-image-").FullName;
        s_packages = Path.Combine(s_folder, "packages");
        StandInPackages.Write(s_packages);
        s_first = Copy("first");
        s_said = Build.MakeImage(s_first, s_packages, out var exitCode);
        Assert.AreEqual(0, exitCode, s_said);

        // Elsewhere, and as somebody builds it who thinks of debugging.
        s_second = Copy(Path.Combine("some where", "deeper", "second"));
        var said = Build.MakeImage(s_second, s_packages, out exitCode, "-c", "Debug");
        Assert.AreEqual(0, exitCode, said);
    }

    [ClassCleanup]
    public static void Delete() => Directory.Delete(s_folder, recursive: true);

    [TestMethod]
    public void TwoCopiesGiveTheSameBytes() =>
        Assert.AreEqual(StandInImage(s_first), StandInImage(s_second));

    [TestMethod]
    public void TheLibrariesComeFirstAndTheProgramLast()
    {
        var image = Convert.FromHexString(StandInImage(s_first).Replace("-", "", StringComparison.Ordinal));
        var libraries = StandInPackages.Libraries.SelectMany(package => Filled(StandInPackages.ImageOf(package))).ToArray();
        CollectionAssert.AreEqual(libraries, image[..libraries.Length]);

        // What the stand-in for the metadata processor writes: the assembly, its hash, what it was told to look at.
        var hints = string.Join(
            ',',
            StandInPackages.Libraries.SelectMany(package => package.Libraries).Select(library => library.FileName)
                .Concat(DeviceAssemblies.Product).Order(StringComparer.Ordinal));
        var own = Encoding.ASCII.GetString(image[libraries.Length..]).Replace("\0", "", StringComparison.Ordinal);
        Assert.MatchesRegex(
            "^" + string.Concat(DeviceAssemblies.Product.Select(name => $"{name} [0-9A-F]{{64}} {hints}")) + "$", own);
    }

    [TestMethod]
    public void OfStandInsNothingIsMadeThatCouldBeFlashed()
    {
        Assert.IsFalse(File.Exists(Path.Combine(s_first, ImageFile)));
        Assert.DoesNotContain("nanoff", s_said, StringComparison.Ordinal);
        Assert.Contains("Made from stand-ins for nanoFramework's packages: no image", s_said, StringComparison.Ordinal);
    }

    [TestMethod]
    public void APackageThatIsMissingIsNamed()
    {
        var some = Path.Combine(s_folder, "some");
        StandInPackages.Write(some);
        Directory.Delete(Path.Combine(some, "nanoframework.system.text"), recursive: true);
        var said = Build.MakeImage(s_first, some, out var exitCode, "--no-restore");
        Assert.AreEqual(1, exitCode);
        Assert.Contains(
            $"error : The package nanoframework.system.text/1.3.42 is not in {some}.", said, StringComparison.Ordinal);
    }

    [TestMethod]
    public void ARestoreFetchesJustTheseVersions()
    {
        var items = Build.Run(Repository.Root, out _, "msbuild", Build.Project, "-getItem:PackageDownload");
        var fetched = JsonNode.Parse(items)!["Items"]!["PackageDownload"]!.AsArray()
            .Select(item => $"{item!["Identity"]} {item["Version"]}").Order(StringComparer.Ordinal).ToArray();
        var needed = StandInPackages.Libraries
            .Select(package => $"{package.Id.ToLowerInvariant()} [{package.Version}]")
            .Append("nanoframework.tools.metadataprocessor.msbuildtask [3.0.100]").Order(StringComparer.Ordinal).ToArray();
        CollectionAssert.AreEqual(needed, fetched);
    }

    [TestMethod]
    public void ItIsCompiledLikeTheBoardsProject()
    {
        var image = ProjectXml.Read($"{Build.Project}/Image.csproj");
        Findings.AssertNone(ProjectXml.Read("firmware/esp32/Esp32.csproj").Descendants("PropertyGroup").Elements()
            .Where(property => property.Name.LocalName != "DefaultItemExcludes")
            .Where(property => ProjectXml.Property(image, property.Name.LocalName) != property.Value)
            .Select(property => $"{property.Name} is not '{property.Value}' in {Build.Project}"));
    }

    // The real format's mark, and after it nothing that a board could run.
    [TestMethod]
    public void OfRealAssembliesAnImageIsMadeWithItsHashAndTheFlashersLine()
    {
        byte[] part = [.. "NFMRK1\0\0"u8, .. new byte[12], 0x0B, 0x0F, 0xB8, 0xE5, 1, 2, 3];
        var said = Join(part, out var exitCode);
        Assert.AreEqual(0, exitCode, said);
        var path = Path.Combine(s_folder, "joined", "x.bin");
        CollectionAssert.AreEqual(Filled(part).Concat(Filled(part)).ToArray(), File.ReadAllBytes(path));
        Assert.AreEqual(
            $"{Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path)))}  x.bin\n", File.ReadAllText(path + ".sha256"));
        Assert.Contains(
            $"nanoff --nanodevice --deploy --serialport PORT --image \"{path}\"", said, StringComparison.Ordinal);

        // In the words of the flasher's list, but for the version.
        Assert.Contains("part, checksum 0xE5B80F0B", said, StringComparison.Ordinal);
        Assert.Contains("part, checksum 0xE5B80F0B\n", File.ReadAllText(path + ".fits.txt"), StringComparison.Ordinal);
    }

    [TestMethod]
    public void AnAssemblyThatIsMissingIsNamed()
    {
        var said = Join(null, out var exitCode);
        Assert.AreEqual(1, exitCode);
        Assert.Contains("part.pe is missing.", said, StringComparison.Ordinal);
    }

    // Joins an assembly with itself, by the very task of the image's build.
    private static string Join(byte[]? part, out int exitCode)
    {
        var folder = Directory.CreateDirectory(Path.Combine(s_folder, part is null ? "missing" : "joined")).FullName;
        if (part is not null)
        {
            File.WriteAllBytes(Path.Combine(folder, "part.pe"), part);
        }

        var file = Path.Combine(folder, "join.proj");
        File.WriteAllText(file, $"""
            <Project>
              <Import Project="{Repository.PathOf($"{Build.Project}/Image.targets")}" />
              <Target Name="Join">
                <JoinImage Parts="part.pe;part.pe" ImageFile="{folder}/x.bin" />
              </Target>
            </Project>
            """);
        return Build.Run(folder, out exitCode, "msbuild", file, "-t:Join", "-nodeReuse:false", "-tl:off");
    }

    // With zeros, to a multiple of four bytes: so the project system of nanoFramework joins them, by its public sources.
    private static byte[] Filled(byte[] image) => [.. image, .. new byte[(4 - (image.Length % 4)) % 4]];

    private static string StandInImage(string copy) =>
        File.ReadAllText(Path.Combine(copy, ImageFile + ".stand-in.txt"));

    private static string Copy(string name)
    {
        string[] needed = ["Directory.", "global.json", "detection-core/", "firmware/switch/", "firmware/esp32/"];
        var root = Path.Combine(s_folder, name);
        foreach (var (path, text) in TextFiles.All)
        {
            if (needed.Any(start => path.StartsWith(start, StringComparison.Ordinal)))
            {
                var to = Path.Combine(root, path);
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                File.WriteAllText(to, text);
            }
        }

        return root;
    }
}
