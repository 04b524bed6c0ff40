using System;
using System.Device.Gpio;
using System.IO;
using System.IO.Ports;
using System.Threading;

namespace NanoDustSwitch.BadSamples;

public class NotToUseSample
{
    private readonly SerialPort _port = new SerialPort("COM2");
    private readonly GpioController _pins = new GpioController();

    public void WritesALine()
    {
        _port.WriteLine("hello");
    }

    public string WaitsForALine()
    {
        return _port.ReadLine();
    }

    public string TakesAllAsText()
    {
        return _port.ReadExisting();
    }

    public object Appends()
    {
        return File.AppendText("I:\\log");
    }

    public void Listens()
    {
        _pins.OpenPin(25).ValueChanged += Heard;
    }

    public void StopsListening()
    {
        _pins.OpenPin(25).ValueChanged -= Heard;
    }

    public void ListensToAll()
    {
        _pins.RegisterCallbackForPinValueChangedEvent(25, 3, Heard);
    }

    public DateTime AsksTheCalendar()
    {
        return DateTime.UtcNow;
    }

    public void StartsAThread()
    {
        new Thread(WritesALine).Start();
    }

    public object StartsATimer()
    {
        return new Timer(Rings, null, 0, 10);
    }

    private static void Rings(object state)
    {
    }

    private static void Heard(object sender, object e)
    {
    }
}
