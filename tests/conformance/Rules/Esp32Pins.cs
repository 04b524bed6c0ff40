namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>What the pins of a classic ESP32 can do, and what speaks against some of them.</summary>
internal static class Esp32Pins
{
    // Espressif, ESP-IDF Programming Guide for the ESP32, v5.5, "GPIO & RTC GPIO", table of the pins and notes below it.
    public static IReadOnlySet<int> All { get; } = Set([.. Range(0, 19), .. Range(21, 23), .. Range(25, 27), .. Range(32, 39)]);

    public static IReadOnlySet<int> Strapping { get; } = Set([0, 2, 5, 12, 15]);

    public static IReadOnlySet<int> Flash { get; } = Set([.. Range(6, 11)]);

    /// <summary>Gets those that belong to the extra memory on many modules.</summary>
    public static IReadOnlySet<int> ExtraMemory { get; } = Set([16, 17]);

    /// <summary>Gets those of the serial port that flashes the chip and belongs to the debugger.</summary>
    public static IReadOnlySet<int> FirstSerial { get; } = Set([1, 3]);

    /// <summary>Gets those that are inputs only and have no pulls.</summary>
    public static IReadOnlySet<int> InputOnly { get; } = Set([.. Range(34, 39)]);

    /// <summary>Gets the channel of the first converter, by pin. The second converter belongs to the radio.</summary>
    public static IReadOnlyDictionary<int, int> FirstConverter { get; } = new Dictionary<int, int>
    {
        [36] = 0, [37] = 1, [38] = 2, [39] = 3, [32] = 4, [33] = 5, [34] = 6, [35] = 7,
    };

    /// <summary>Gets those that pulse or are driven while the chip boots. Common practice, no source.</summary>
    public static IReadOnlySet<int> Pulsing { get; } = Set([0, 1, 2, 3, 5, 12, 14, 15]);

    /// <summary>
    /// Gets those whose input is pulled low for a moment when the converter powers up: ESP32 Series SoC Errata (from memory).
    /// </summary>
    public static IReadOnlySet<int> Glitching { get; } = Set([36, 39]);

    private static HashSet<int> Set(int[] pins) => [.. pins];

    private static IEnumerable<int> Range(int first, int last) => Enumerable.Range(first, last - first + 1);
}
