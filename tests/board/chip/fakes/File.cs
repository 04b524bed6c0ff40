using NanoDustSwitch.BoardTests;

namespace NanoDustSwitch.Esp32;

internal static class File
{
    /// <summary>Says no also when the flash fails, as the device's does.</summary>
    public static bool Exists(string path)
    {
        Chip chip = Chip.Current;
        try
        {
            chip.Call($"File.Exists {path}", 500);
        }
        catch (InvalidOperationException)
        {
            return false;
        }

        return chip.Files.ContainsKey(path);
    }
}
