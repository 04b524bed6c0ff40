// What a device build may well have, so that the rules are seen to leave it alone.
using System;
using System.Device.Gpio;
using System.IO;
using System.IO.Ports;
using nanoFramework.Hardware.Esp32;

namespace NanoDustSwitch.BadSamples;

public enum OrdinaryKind
{
    One,
    Two,
}

public interface IOrdinary
{
    int Answer { get; }

    string Describe(int index, out int number);
}

public abstract class OrdinaryBase : IOrdinary
{
    public const long Limit = 60L * 1000000;

    public abstract int Answer { get; }

    public OrdinaryKind Kind { get; init; }

    public virtual string Describe(int index, out int number)
    {
        number = index;
        return "base";
    }
}

public sealed class OrdinarySample : OrdinaryBase
{
    private static readonly byte[] s_steps = Build();

    private readonly int[] _numbers = new int[4];
    private readonly byte[][] _rows = new byte[2][];
    private readonly GpioController _pins = new GpioController();
    private readonly SerialPort _port = new SerialPort("COM2");

    public event EventHandler Changed;

    public override int Answer
    {
        get { return s_steps.Length + _rows.Length; }
    }

    public override string Describe(int index, out int number)
    {
        number = _numbers[index & 3];
        try
        {
            Changed?.Invoke(this, null);
        }
        catch (ArgumentException exception)
        {
            return exception.Message;
        }

        return $"{number} of {_numbers.Length}";
    }

    public string Name(OrdinaryKind kind, string word)
    {
        switch (kind)
        {
            case OrdinaryKind.One:
                return word == "one" || word == "1" ? word : "one";
            default:
                return ((int)kind).ToString();
        }
    }

    public int Divide(int number, int by)
    {
        unchecked
        {
            return (int)(((long)number << 20) / by) + (byte)number;
        }
    }

    public int Receive(byte[] buffer)
    {
        int there = _port.BytesToRead;
        return there == 0 ? 0 : _port.Read(buffer, 0, there);
    }

    public void Open()
    {
        Configuration.SetPinFunction(22, DeviceFunction.COM2_TX);
        Configuration.SetPinFunction(23, DeviceFunction.COM2_RX);
        _pins.OpenPin(25).Write(true);
        using (Stream file = new Stream())
        {
            file.Flush();
        }
    }

    public void Refuse(int number)
    {
        if (number < 0)
        {
            throw new ArgumentOutOfRangeException("number");
        }
    }

    private static byte[] Build()
    {
        byte[] steps = new byte[3];
        steps[0] = 1;
        steps[1] = 3;
        steps[2] = 5;
        return steps;
    }
}
