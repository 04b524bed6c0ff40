using System.Reflection;
using NanoDustSwitch.ConformanceTests.Cost;

namespace NanoDustSwitch.ConformanceTests.Size;

/// <summary>What the switch takes of a board: flash for its code, and RAM for its objects once it is up.</summary>
internal sealed class SizeReport
{
    private const string Library = "mscorlib";

    public SizeReport(DeviceCode code)
    {
        Product = [.. DeviceAssemblies.Product.Select(fileName => AssemblySize.Of(DeviceAssemblies.PathOf(fileName)))];
        MsCorLib = AssemblySize.Of(DeviceAssemblies.PathOf(Library + ".dll"));
        MsCorLibImage = (int)new FileInfo(DeviceAssemblies.PathOf(Library + ".pe")).Length;
        Heap = Walk(code);
    }

    public IReadOnlyList<AssemblySize> Product { get; }

    /// <summary>Gets the device's own library, the one whose size in both formats is known.</summary>
    public AssemblySize MsCorLib { get; }

    /// <summary>Gets the size of what is put on a board of it.</summary>
    public int MsCorLibImage { get; }

    public DeviceHeap Heap { get; }

    public int Deployed => Product.Sum(one => one.Image) + MsCorLibImage + SizeLimits.OtherLibraries;

    public int HeapInUse => Heap.Total + Product.Sum(one => one.Runtime) + MsCorLib.Runtime + SizeLimits.NotCounted;

    public override string ToString() => string.Join(Environment.NewLine, Images(), Ram());

    private string Images()
    {
        var table = new TextTable(
            $"Flash, in bytes; the .pe is estimated: 94,874 for our three when they had 72,984, which was seen once",
            "",
            "code",
            "tables",
            "names",
            "texts",
            "blobs",
            ".dll",
            ".pe");
        foreach (var one in Product)
        {
            table.Add(one.Name, one.Il, one.Tables, one.Names, one.Texts, one.Blobs, one.File, one.Image);
        }

        table.Add(
            "mscorlib, estimated",
            MsCorLib.Il,
            MsCorLib.Tables,
            MsCorLib.Names,
            MsCorLib.Texts,
            MsCorLib.Blobs,
            MsCorLib.File,
            MsCorLib.Image);
        table.Add("mscorlib, as it is", 0, 0, 0, 0, 0, MsCorLib.File, MsCorLibImage);
        var sums = new TextTable("Deployed", "", "bytes");
        sums.Add("the switch", Product.Sum(one => one.Image));
        sums.Add("mscorlib", MsCorLibImage);
        sums.Add("nine other libraries, measured once", SizeLimits.OtherLibraries);
        sums.Add("in all", Deployed);
        sums.Add("allowed", SizeLimits.Deployed);
        sums.Add("room on a board with 4 MB", SizeLimits.DeploymentArea);
        sums.Add("room on a board with 2 MB: too small", SizeLimits.SmallDeploymentArea);
        return table.ToString() + sums;
    }

    private string Ram()
    {
        var table = new TextTable("RAM once the board is up, in bytes of the managed heap", "", "bytes");
        foreach (var (what, bytes) in Heap.Bytes.OrderByDescending(pair => pair.Value).Take(12))
        {
            table.Add(what, bytes);
        }

        table.Add("all of our objects", Heap.Total);
        table.Add("the runtime's tables for our assemblies", Product.Sum(one => one.Runtime));
        table.Add("and for mscorlib", MsCorLib.Runtime);
        table.Add("the other libraries, as measured once", SizeLimits.NotCounted);
        table.Add("in all", HeapInUse);
        table.Add("allowed", SizeLimits.HeapInUse);
        table.Add("a board's heap without extra memory", SizeLimits.Heap);
        return table + "  Not counted: stack frames." + Environment.NewLine;
    }

    // The board's own code over libraries that do nothing, and the switch on it.
    private static DeviceHeap Walk(DeviceCode code)
    {
        Assembly[] ours = [.. code.Assemblies.Where(one => DeviceAssemblies.Product.Contains(one.GetName().Name + ".dll"))];
        var board = Make(ours, "NanoDustSwitch.Esp32.Esp32Board");
        var heap = new DeviceHeap(type => ours.Contains(type.Assembly));
        heap.Add(Make(ours, "NanoDustSwitch.Firmware.Switch", board));
        heap.Add(board);
        heap.AddStatics(ours.SelectMany(one => one.GetTypes()));
        return heap;
    }

    private static object Make(Assembly[] ours, string type, params object[] arguments) =>
        Activator.CreateInstance(ours.Select(one => one.GetType(type)).OfType<Type>().Single(), arguments)!;
}
