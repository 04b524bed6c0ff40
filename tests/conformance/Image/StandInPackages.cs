using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Mono.Cecil;
using NanoDustSwitch.ConformanceTests.Projects;

namespace NanoDustSwitch.ConformanceTests.Image;

/// <summary>
/// Stand-ins for nanoFramework's packages, of the same shape: where the files lie and what they are called. Their libraries are
/// the declarations, their .pe files a line of text, and their metadata processor writes down what it was given.
/// </summary>
internal static class StandInPackages
{
    private const string Processor = "nanoFramework.Tools.MetadataProcessor.MsBuildTask";
    private const string ProcessorVersion = "3.0.100";

    // The parameters that the real one needs.
    private const string ProcessorSource = $$"""
        using System;
        using System.IO;
        using System.Linq;
        using System.Security.Cryptography;
        using Microsoft.Build.Framework;

        namespace {{Processor}};

        public class MetaDataProcessorTask : ITask
        {
            public IBuildEngine BuildEngine { get; set; }
            public ITaskHost HostObject { get; set; }
            [Required] public string Parse { get; set; }
            [Required] public string Compile { get; set; }
            [Required] public ITaskItem[] LoadHints { get; set; }

            public bool Execute()
            {
                var hints = LoadHints.Where(hint => File.Exists(hint.ItemSpec)).Select(hint => Path.GetFileName(hint.ItemSpec));
                var hash = Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(Parse)));
                var names = string.Join(',', hints.Order(StringComparer.Ordinal));
                File.WriteAllText(Compile, $"{Path.GetFileName(Parse)} {hash} {names}");
                return true;
            }
        }
        """;

    /// <summary>Gets the packages of a board's program, as its packages.config lists them.</summary>
    public static IReadOnlyList<DevicePackage> Libraries { get; } =
    [
        .. new ProjectTwin("firmware/esp32/Esp32").Packages.Descendants("package")
            .Select(package => DevicePackages.Find(package.Attribute("id")!.Value)!),
    ];

    /// <summary>The text that stands for a library in the device's format; not all are as long as a multiple of four.</summary>
    public static byte[] ImageOf(DevicePackage package) => Encoding.ASCII.GetBytes($"stand-in for {package.Id}");

    public static string FolderOf(string root, string id, string version) =>
        Path.Combine(root, id.ToLowerInvariant(), version, "lib");

    public static void Write(string root)
    {
        foreach (var package in Libraries)
        {
            var file = package.Libraries.Single().FileName;
            var path = Path.Combine(Directory.CreateDirectory(FolderOf(root, package.Id, package.Version)).FullName, file);
            if (File.Exists(DeviceAssemblies.PathOf(file)))
            {
                File.Copy(DeviceAssemblies.PathOf(file), path);
            }
            else
            {
                // Only drawn in by the others, and so without declarations.
                var name = Path.GetFileNameWithoutExtension(file);
                using var empty = AssemblyDefinition.CreateAssembly(new(name, new(1, 0)), name, ModuleKind.Dll);
                empty.Write(path);
            }

            File.WriteAllBytes(Path.ChangeExtension(path, ".pe"), ImageOf(package));
        }

        WriteProcessor(Path.Combine(FolderOf(root, Processor, ProcessorVersion), "net6.0"));
    }

    private static void WriteProcessor(string folder)
    {
        var libraries = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Append(Path.Combine(Build.SdkFolder, "Microsoft.Build.Framework.dll"))
            .DistinctBy(path => Path.GetFileName(path));
        var compilation = CSharpCompilation.Create(
            Processor,
            [CSharpSyntaxTree.ParseText(ProcessorSource)],
            libraries.Select(path => MetadataReference.CreateFromFile(path)),
            new(OutputKind.DynamicallyLinkedLibrary));
        var result = compilation.Emit(Path.Combine(Directory.CreateDirectory(folder).FullName, Processor + ".dll"));
        Assert.IsTrue(result.Success, string.Join(Environment.NewLine, result.Diagnostics));
    }
}
