using nanoFramework.Hardware.Esp32;

namespace NanoDustSwitch.BoardTests;

/// <summary>A pin of the chip. After a reset it floats, and a resistor to ground holds it low.</summary>
internal sealed class ChipPin(Chip chip, int number)
{
    private bool _isHigh;

    public int Number => number;

    public bool IsOpen { get; set; }

    public bool IsOutput { get; set; }

    public DeviceFunction Function { get; set; }

    public bool Level => IsOutput && _isHigh;

    /// <summary>Number of changes of an output since the reset.</summary>
    public int Changes { get; private set; }

    public long LastChange { get; private set; }

    public void Drive(bool high)
    {
        if (high != _isHigh)
        {
            _isHigh = high;
            Changes++;
            LastChange = chip.Elapsed;
        }
    }

    public void Reset()
    {
        IsOpen = false;
        IsOutput = false;
        Function = DeviceFunction.None;
        _isHigh = false;
        Changes = 0;
    }
}
