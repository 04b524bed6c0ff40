using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Where a healthy sensor rests on a board's converter.</summary>
public static class Converters
{
    // Sensors are biased to the middle of the ESP32 converter's useful span of 150 to 2450 mV, or just below it. A half-wave
    // tool of 12 A on a Hall sensor shifts the mean by less than 0.4 V; 0.85 to 1.75 V leaves room for that.
    private const int LeastRestMillivolts = 850;
    private const int GreatestRestMillivolts = 1750;

    /// <summary>Describes the converter of a board.</summary>
    /// <param name="board">The board.</param>
    /// <returns>Its scale and rest band.</returns>
    public static ConverterScale Of(IBoard board)
    {
        return new ConverterScale(board.FullScale, board.MicrovoltsACount, LeastRestMillivolts, GreatestRestMillivolts);
    }
}
