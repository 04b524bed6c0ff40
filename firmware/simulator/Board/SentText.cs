using System.Text;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>What the board sent, as text for files and programs rather than for a terminal.</summary>
internal static class SentText
{
    /// <summary>Gives the text.</summary>
    /// <param name="sent">Bytes from the serial line.</param>
    /// <returns>Text, with line feeds alone as line ends.</returns>
    public static string Of(byte[] sent) => Encoding.Latin1.GetString(sent).Replace("\r", "");
}
