using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace NanoDustSwitch.ConformanceTests.Size;

/// <summary>What an assembly is made of, in bytes.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Il">The code.</param>
/// <param name="Tables">The metadata tables.</param>
/// <param name="Names">The names of types and members.</param>
/// <param name="Texts">The texts that the code names, two bytes a character.</param>
/// <param name="Blobs">Signatures and constants.</param>
/// <param name="File">The whole file.</param>
/// <param name="Image">What is put on a board, as estimated.</param>
/// <param name="Runtime">What the runtime keeps of it in the heap.</param>
internal sealed record AssemblySize(
    string Name, int Il, int Tables, int Names, int Texts, int Blobs, int File, int Image, int Runtime)
{
    // The records of the device's format, as nanoframework/nf-interpreter (src/CLR/Include/nanoCLR_Types.h) has them.
    private const int ImageHead = 124;
    private const int CatchRecord = 12;

    private static readonly Dictionary<TableIndex, int> s_imageRecords = new()
    {
        [TableIndex.AssemblyRef] = 12,
        [TableIndex.TypeRef] = 8,
        [TableIndex.MemberRef] = 8,
        [TableIndex.TypeDef] = 24,
        [TableIndex.Field] = 8,
        [TableIndex.MethodDef] = 16,
        [TableIndex.CustomAttribute] = 8,
        [TableIndex.TypeSpec] = 4,
    };

    // What the runtime adds to each record, in RAM, and to the whole: nanoCLR_Runtime.h, the structures named CrossReference, and
    // CLR_RT_Assembly. A method has a byte for the debugger besides.
    private const int RuntimeHead = 140;

    private static readonly Dictionary<TableIndex, int> s_runtimeRecords = new()
    {
        [TableIndex.AssemblyRef] = 4,
        [TableIndex.TypeRef] = 4,
        [TableIndex.MemberRef] = 4,
        [TableIndex.TypeDef] = 8,
        [TableIndex.Field] = 2,
        [TableIndex.MethodDef] = 3,
    };

    public static AssemblySize Of(string path)
    {
        using var file = new PEReader(System.IO.File.OpenRead(path));
        var metadata = file.GetMetadataReader();
        var bodies = metadata.MethodDefinitions.Select(handle => metadata.GetMethodDefinition(handle).RelativeVirtualAddress)
            .Where(address => address != 0).Select(file.GetMethodBody).ToArray();
        var il = bodies.Sum(body => body.GetILReader().Length);
        var names = metadata.GetHeapSize(HeapIndex.String);
        var texts = metadata.GetHeapSize(HeapIndex.UserString);
        var blobs = metadata.GetHeapSize(HeapIndex.Blob);

        // On the device a text has a byte a character (ASCII) and an end; a call names its method with two bytes and not four,
        // which is left out here, so the estimate is on the large side.
        var image = ImageHead + Records(metadata, s_imageRecords) + il + names + (texts / 2) + blobs
            + (bodies.Sum(body => body.ExceptionRegions.Length) * CatchRecord);
        return new AssemblySize(
            metadata.GetString(metadata.GetAssemblyDefinition().Name),
            il,
            Enum.GetValues<TableIndex>().Where(table => (int)table < MetadataTokens.TableCount)
                .Sum(table => metadata.GetTableRowCount(table) * metadata.GetTableRowSize(table)),
            names,
            texts,
            blobs,
            (int)new FileInfo(path).Length,
            image,
            RuntimeHead + Records(metadata, s_runtimeRecords));
    }

    private static int Records(MetadataReader metadata, Dictionary<TableIndex, int> records) =>
        records.Sum(record => metadata.GetTableRowCount(record.Key) * record.Value);
}
