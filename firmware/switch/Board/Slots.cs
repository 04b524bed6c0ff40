namespace NanoDustSwitch.Firmware;

/// <summary>Which slots of the flash belong to whom. Each owner has two slots and writes them in turn.</summary>
public static class Slots
{
    /// <summary>Size of a slot in bytes.</summary>
    public const int Size = 1024;

    /// <summary>Number of slots.</summary>
    public const int Count = 10;

    /// <summary>First slot of the settings.</summary>
    public const int Settings = 0;

    /// <summary>First slot of the boot record.</summary>
    public const int Boot = 2;

    /// <summary>First slot of the event log.</summary>
    public const int Log = 4;

    /// <summary>First slot of the run hours.</summary>
    public const int Hours = 6;

    /// <summary>First slot of what is known of the tools.</summary>
    public const int Tools = 8;
}
