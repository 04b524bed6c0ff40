namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>
/// packages.config names what the device's build is compiled against, whatever that draws in, and no more; the references of
/// the .nfproj are the assemblies of those packages, at the places where a restore puts them.
/// </summary>
internal static class PackagesRule
{
    public static IEnumerable<string> Findings(ProjectTwin twin)
    {
        var entries = twin.Packages.Descendants("package").Select(ProjectXml.Written).ToList();
        var needed = Needed(twin, out var unknown);
        var expected = needed.ConvertAll(Entry);
        var references = ProjectXml.Items(twin.Nfproj, "Reference").Select(ProjectXml.Written).ToList();
        var expectedReferences = needed.SelectMany(package =>
            package.Libraries.Select(library => Reference(twin, package, library))).ToList();
        return
        [
            .. unknown.Select(name => $"{twin.Name}: no known package brings {name}, which the .csproj is compiled against"),
            .. expected.Except(entries).Select(entry => $"{twin.Name}: packages.config lacks     {entry}"),
            .. entries.Except(expected).Select(entry => $"{twin.Name}: packages.config has extra {entry}"),
            .. expectedReferences.Except(references).Select(reference => $"{twin.Name}.nfproj lacks     {reference}"),
            .. references.Except(expectedReferences).Select(reference => $"{twin.Name}.nfproj has extra {reference}"),
            .. CentralVersions(twin),
        ];
    }

    // From what the .csproj's build really refers to.
    private static List<DevicePackage> Needed(ProjectTwin twin, out List<string> unknown)
    {
        var needed = new List<DevicePackage>();
        unknown = [];
        foreach (var reference in twin.CompiledAgainst)
        {
            if (reference.Name.StartsWith("NanoDustSwitch.", StringComparison.Ordinal))
            {
                continue;
            }

            var package = DevicePackages.Bringing(reference.FullName);
            if (package is null)
            {
                unknown.Add(reference.FullName);
            }
            else
            {
                AddWithNeeds(package, needed);
            }
        }

        return needed;
    }

    private static void AddWithNeeds(DevicePackage package, List<DevicePackage> to)
    {
        if (to.Contains(package))
        {
            return;
        }

        to.Add(package);
        foreach (var id in package.Needs)
        {
            AddWithNeeds(DevicePackages.Find(id)!, to);
        }
    }

    // The .csproj take some of these packages from NuGet; their versions stand in one place for all of them.
    private static IEnumerable<string> CentralVersions(ProjectTwin twin)
    {
        foreach (var item in ProjectXml.Items(twin.CentralPackages, "PackageVersion"))
        {
            var version = (string?)item.Attribute("Version");
            var package = DevicePackages.Find(item.Attribute("Include")!.Value);
            if (package is not null && package.Version != version)
            {
                yield return $"{package.Id} is {version} in Directory.Packages.props and {package.Version} for the .nfproj";
            }
        }
    }

    private static string Entry(DevicePackage package)
    {
        var development = package.IsForDevelopment ? " developmentDependency=\"true\"" : "";
        return $"""<package id="{package.Id}" version="{package.Version}" targetFramework="netnano1.0"{development} />""";
    }

    private static string Reference(ProjectTwin twin, DevicePackage package, DeviceLibrary library)
    {
        var up = Path.GetRelativePath($"/{twin.Room}/{ProjectTwin.DeviceFolder}", "/").Replace('/', '\\');
        var hint = $@"{up}\packages\{package.Id}.{package.Version}\lib\{library.FileName}";
        return $"""<Reference Include="{library.FullName}"><HintPath>{hint}</HintPath><Private>True</Private></Reference>""";
    }
}
