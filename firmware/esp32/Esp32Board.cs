using System;
using System.Device.Adc;
using System.Device.Gpio;
using System.Threading;
using NanoDustSwitch.Firmware;
using nanoFramework.Hardware.Esp32;
using nanoFramework.Runtime.Native;

namespace NanoDustSwitch.Esp32;

/// <summary>
/// The ESP32 as the firmware's board. A part that fails to open when the board comes up is noted, and the board goes on without
/// it.
/// </summary>
public sealed class Esp32Board : IBoard
{
    private const int GreatestCount = 4095;

    // The only controller as long as the board runs. It is never disposed: that would let go of every pin, the relay's among
    // them.
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

    /// <summary>
    /// Initializes a new instance of the <see cref="Esp32Board"/> class. The relay's line is opened first, so that it is low as
    /// early as possible.
    /// </summary>
    public Esp32Board()
    {
        _relay = OpenOutput(PinPlan.Relay, BoardParts.RelayLine);
        _lamp = OpenOutput(PinPlan.Lamp, BoardParts.Lamp);
        _sounder = OpenOutput(PinPlan.Sounder, BoardParts.Sounder);
        OpenConverter();
        _serial = OpenSerial();
        if (!_slots.IsMounted())
        {
            _failed |= BoardParts.Flash | BoardParts.FlashDrive;
        }
    }

    /// <inheritdoc/>
    public long Now
    {
        get { return (long)HighResTimer.GetCurrent(); }
    }

    /// <inheritdoc/>
    public int FullScale
    {
        get { return GreatestCount; }
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
    public int FreeHeap
    {
        get { return (int)nanoFramework.Runtime.Native.GC.Run(false); }
    }

    /// <inheritdoc/>
    public bool IsButtonDown
    {
        // The button pulls its line to ground. It is read through the converter, because every way of the library to read a pin
        // makes an object, and the loop must not make any.
        get { return _button != null && _button.ReadValue() < GreatestCount / 2; }
    }

    /// <inheritdoc/>
    public int ReadBurst(int[] readings, int from, int sure, long until)
    {
        // What these loops cost they cost for every reading, so the field and the array's length are looked up only once, and the
        // clock towards the end only, at every second reading.
        AdcChannel tool = _tool;
        if (tool == null)
        {
            tool = OpenToolLine();
        }

        int last = readings.Length - 1;
        int count = from;
        while (count < sure)
        {
            readings[count] = tool.ReadValue();
            readings[count + 1] = tool.ReadValue();
            count += 2;
        }

        while (count < last && (long)HighResTimer.GetCurrent() < until)
        {
            readings[count] = tool.ReadValue();
            readings[count + 1] = tool.ReadValue();
            count += 2;
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
            // Flash is not opened when the board comes up, but the boot record is written right then, and fails here.
            _failed |= BoardParts.Flash;
            throw;
        }
    }

    /// <inheritdoc/>
    public void Restart()
    {
        Power.RebootDevice(RebootOption.NormalReboot);

        // The call only asks for the restart, which comes a little later. Until then nothing more may run.
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

    // If this fails when the board comes up, every burst tries again, and each failure counts as a failed read until the
    // converter is back.
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
