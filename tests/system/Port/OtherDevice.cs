using System.Text;
using NanoDustSwitch.Simulator.Live.Serve;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>Something else at a serial port.</summary>
internal sealed class OtherDevice : IDisposable
{
    private readonly PseudoTerminal _terminal = PseudoTerminal.Open();
    private readonly Thread _thread;
    private readonly Func<string, string> _answer;
    private volatile bool _isOver;

    /// <summary>Initializes a new instance of the <see cref="OtherDevice"/> class.</summary>
    /// <param name="answer">What it says to what has come, which may be nothing.</param>
    public OtherDevice(Func<string, string> answer)
    {
        _answer = answer;
        _thread = new Thread(Run) { IsBackground = true };
        _thread.Start();
    }

    /// <summary>Gets the name of its port.</summary>
    public string Name => _terminal.Name;

    /// <inheritdoc/>
    public void Dispose()
    {
        _isOver = true;
        _thread.Join();
        _terminal.Dispose();
    }

    private void Run()
    {
        byte[] typed = new byte[256];
        while (!_isOver)
        {
            string come = Encoding.Latin1.GetString(typed, 0, _terminal.Read(typed));
            _terminal.Write(Encoding.Latin1.GetBytes(_answer(come)));
            Thread.Sleep(5);
        }
    }
}
