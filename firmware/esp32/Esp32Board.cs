using System;
using System.Device.Adc;
using System.Device.Gpio;
using System.Threading;
using NanoDustSwitch.Firmware;
using nanoFramework.Hardware.Esp32;
using nanoFramework.Runtime.Native;

namespace NanoDustSwitch.Esp32;

/// <summary>The ESP32 board. What fails to open when it comes up is noted, and the board goes on without.</summary>
public sealed class Esp32Board : IBoard
{
    private const int Top = 4095;

    // One for life and never disposed: that would let go of every pin.
    private readonly GpioController _pins = new GpioController();
    private readonly SlotFiles _slots = new SlotFiles();
    private readonly OutputLine _relay;
    private readonly OutputLine _lamp;
    private readonly OutputLine _sounder;
    private readonly SerialLine _serial;
    private AdcController _converter;
    private AdcChannel _tool;
    private AdcChannel _vacuum;
    private AdcChannel _button;
    private BoardParts _failed;

    /// <summary>Initializes a new instance of the <see cref="Esp32Board"/> class. First of all the relay's line rests.</summary>
    public Esp32Board()
    {
        _relay = OpenOutput(PinPlan.Relay, BoardParts.RelayLine);
        _lamp = OpenOutput(PinPlan.Lamp, BoardParts.Lamp);
        _sounder = OpenOutput(PinPlan.Sounder, BoardParts.Sounder);
        OpenConverter();
        _serial = OpenSerial();
    }

    /// <inheritdoc/>
    public long Now
    {
        get { return (long)HighResTimer.GetCurrent(); }
    }

    /// <inheritdoc/>
    public int FullScale
    {
        get { return Top; }
    }

    /// <inheritdoc/>
    public int MicrovoltsACount
    {
        get { return 806; }
    }

    /// <inheritdoc/>
    public BoardParts FailedParts
    {
        get { return _failed; }
    }

    /// <inheritdoc/>
    public bool IsButtonDown
    {
        // The button pulls its line to ground. The library knows no way to read a pin that makes no object; the converter makes none.
        get { return _button != null && _button.ReadValue() < Top / 2; }
    }

    /// <inheritdoc/>
    public int ReadBurst(int[] readings, int from, long until)
    {
        // What every reading costs is here and in the library: fields and the array's length are not asked for each time.
        AdcChannel tool = _tool;
        if (tool == null)
        {
            tool = OpenToolLine();
        }

        int most = readings.Length;
        int count = from;
        while (count < most && (long)HighResTimer.GetCurrent() < until)
        {
            readings[count++] = tool.ReadValue();
        }

        return count;
    }

    /// <inheritdoc/>
    public int ReadVacuumLine()
    {
        return _vacuum == null ? -1 : _vacuum.ReadValue();
    }

    /// <inheritdoc/>
    public void SetRelayLine(bool high)
    {
        if (_relay != null)
        {
            _relay.Set(high);
        }
        else if (high)
        {
            throw new InvalidOperationException("no relay line");
        }
    }

    /// <inheritdoc/>
    public void SetLamp(bool on)
    {
        if (_lamp != null)
        {
            _lamp.Set(on);
        }
    }

    /// <inheritdoc/>
    public void SetSounder(bool on)
    {
        if (_sounder != null)
        {
            _sounder.Set(on);
        }
    }

    /// <inheritdoc/>
    public int ReadSerial(byte[] buffer)
    {
        return _serial == null ? 0 : _serial.Read(buffer);
    }

    /// <inheritdoc/>
    public void WriteSerial(byte[] buffer, int offset, int count)
    {
        if (_serial != null)
        {
            _serial.Write(buffer, offset, count);
        }
    }

    /// <inheritdoc/>
    public int ReadSlot(int slot, byte[] buffer)
    {
        try
        {
            return _slots.Read(slot, buffer);
        }
        catch (Exception)
        {
            _failed |= BoardParts.Flash;
            throw;
        }
    }

    /// <inheritdoc/>
    public void WriteSlot(int slot, byte[] buffer, int count)
    {
        try
        {
            _slots.Write(slot, buffer, count);
        }
        catch (Exception)
        {
            // There is nothing to open when the board comes up, but the boot record is written at once.
            _failed |= BoardParts.Flash;
            throw;
        }
    }

    /// <inheritdoc/>
    public void Restart()
    {
        Power.RebootDevice(RebootOption.NormalReboot);

        // It is only asked for by that, and happens a little later.
        Thread.Sleep(Timeout.Infinite);
    }

    private OutputLine OpenOutput(int pin, BoardParts part)
    {
        try
        {
            return new OutputLine(_pins, pin);
        }
        catch (Exception)
        {
            _failed |= part;
            return null;
        }
    }

    private void OpenConverter()
    {
        try
        {
            OpenToolLine();
        }
        catch (Exception)
        {
            _failed |= BoardParts.ToolLine;
        }

        _vacuum = OpenChannel(PinPlan.VacuumChannel, BoardParts.VacuumLine);
        _button = OpenChannel(PinPlan.ButtonChannel, BoardParts.Button);
    }

    private AdcChannel OpenChannel(int channel, BoardParts part)
    {
        try
        {
            return _converter.OpenChannel(channel);
        }
        catch (Exception)
        {
            _failed |= part;
            return null;
        }
    }

    // A burst comes here again if it failed: each try counts as a read that failed, until the converter is back.
    private AdcChannel OpenToolLine()
    {
        if (_converter == null)
        {
            _converter = new AdcController();
        }

        _tool = _converter.OpenChannel(PinPlan.ToolChannel);
        return _tool;
    }

    private SerialLine OpenSerial()
    {
        try
        {
            return new SerialLine();
        }
        catch (Exception)
        {
            _failed |= BoardParts.Serial;
            return null;
        }
    }
}
