using System.Text;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The firmware's own words as texts of this program.</summary>
internal static class BoardText
{
    /// <summary>Gives what is written.</summary>
    /// <param name="write">Writes it.</param>
    /// <returns>The text.</returns>
    public static string Of(Action<TextOutput> write)
    {
        TextOutput output = new();
        write(output);
        byte[] bytes = new byte[TextOutput.Size];
        return Encoding.ASCII.GetString(bytes, 0, output.Take(bytes, bytes.Length));
    }
}
