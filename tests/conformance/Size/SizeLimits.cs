namespace NanoDustSwitch.ConformanceTests.Size;

/// <summary>What there is room for, and how much of it the switch may take.</summary>
internal static class SizeLimits
{
    /// <summary>
    /// Room for applications on a board with 4 MB of flash: nanoframework/nf-interpreter,
    /// targets/ESP32/_IDF/esp32/partitions_nanoclr_4mb.csv, "deploy".
    /// </summary>
    public const int DeploymentArea = 0x1C0000;

    /// <summary>The same on a board with 2 MB: partitions_nanoclr_2mb.csv. It is too small.</summary>
    public const int SmallDeploymentArea = 0x10000;

    /// <summary>A quarter: three versions like this one could still be added before anybody has to think about it.</summary>
    public const int Deployed = DeploymentArea / 4;

    /// <summary>
    /// The device's libraries that are deployed with the switch, beside mscorlib: nine, of 1,620 bytes (Runtime.Native) to 16,684
    /// (FileSystem). Measured: made from their public sources at the versions of packages.config, by the public metadata
    /// processor.
    /// </summary>
    public const int OtherLibraries = 59880;

    /// <summary>
    /// The heap of a board without extra memory: what is free less 100 KB, and no more than the largest piece
    /// (nanoframework/nf-interpreter, targets/ESP32/_nanoCLR/Memory.cpp). With IDF 5.1.3 on an ESP32 232,884 bytes were free,
    /// 114,688 in one piece (its pull request 2940).
    /// </summary>
    public const int Heap = 114688;

    /// <summary>
    /// What is in the heap after the boot and is not counted here: the libraries' tables and objects. Measured on nanoFramework's
    /// own interpreter on a PC, with 32 bits: 54,840 bytes in all after a collection, when 45,316 were counted here.
    /// </summary>
    public const int NotCounted = 54840 - 45316;

    /// <summary>
    /// Five eighths of the heap. The rest is for stack frames (5.2 KB at the most, measured likewise), texts while somebody
    /// types, and the garbage between two collections.
    /// </summary>
    public const int HeapInUse = Heap / 8 * 5;

    /// <summary>
    /// Offsets into an assembly's code and texts have 16 bits in the device's format: nanoframework/nf-interpreter,
    /// src/CLR/Include/nanoCLR_Types.h.
    /// </summary>
    public const int CodeOfAnAssembly = 0xFFFF;

    /// <summary>
    /// As <see cref="CodeOfAnAssembly"/>; the highest offsets belong to the runtime's own texts, for which 4 KB are left.
    /// </summary>
    public const int TextsOfAnAssembly = 0xF000;

    /// <summary>What is too large, one line each.</summary>
    public static IEnumerable<string> Findings(IReadOnlyList<AssemblySize> product, int deployed, int heapInUse)
    {
        if (deployed > Deployed)
        {
            yield return $"deployed: {deployed:#,0} bytes, more than {Deployed:#,0}";
        }

        if (heapInUse > HeapInUse)
        {
            yield return $"heap: {heapInUse:#,0} bytes, more than {HeapInUse:#,0}";
        }

        foreach (var one in product)
        {
            if (one.Il > CodeOfAnAssembly)
            {
                yield return $"{one.Name}: {one.Il:#,0} bytes of code, more than {CodeOfAnAssembly:#,0}";
            }

            if (one.Names + (one.Texts / 2) > TextsOfAnAssembly)
            {
                yield return $"{one.Name}: {one.Names + (one.Texts / 2):#,0} bytes of names and texts, "
                    + $"more than {TextsOfAnAssembly:#,0}";
            }
        }
    }
}
