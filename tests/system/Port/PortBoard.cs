using System.Text;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;
using NanoDustSwitch.Simulator.Live.Serve;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>
/// A board of the virtual shop behind a pseudo-terminal, in real time, whose cable can be pulled and put in
/// again.
/// </summary>
internal sealed class PortBoard : IDisposable
{
    private readonly LiveShop _live = new(FlashImage.Blank());
    private readonly string _folder = Directory.CreateTempSubdirectory("port").FullName;
    private readonly Lock _lock = new();
    private readonly Thread _thread;
    private PseudoTerminal? _terminal;
    private volatile bool _isOver;

    /// <summary>Initializes a new instance of the <see cref="PortBoard"/> class: it is up, and its cable is in.</summary>
    /// <param name="upSeconds">For how long it has been up.</param>
    public PortBoard(int upSeconds = 3)
    {
        _live.Words.Run($"/wait {upSeconds}");
        _live.Rig.Board.Serial.TakeSent();
        Plug();
        _thread = new Thread(Run) { IsBackground = true };
        _thread.Start();
    }

    /// <summary>Gets the name of the port; it stays the same when the cable is put in again.</summary>
    public string Name => Path.Combine(_folder, "port");

    /// <summary>Gets or sets what is made of the board's text on its way.</summary>
    public Func<string, string> OnTheWay { get; set; } = text => text;

    /// <summary>Gets a value indicating whether the board is at its prompt.</summary>
    public bool IsAtPrompt => With(live => live.Rig.Switch.Console.IsAtPrompt);

    /// <summary>Looks at the board, or works the shop, between two of its steps.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="look">What is done.</param>
    /// <returns>What came of it.</returns>
    public T With<T>(Func<LiveShop, T> look)
    {
        lock (_lock)
        {
            return look(_live);
        }
    }

    /// <summary>Types at the board as somebody did who had the port before.</summary>
    /// <param name="text">What is typed.</param>
    public void Type(string text)
    {
        long typed = With(live =>
        {
            live.Rig.Board.Serial.Type(text);
            return live.Rig.Board.ShopTime;
        });
        Until(live => live.Rig.Board.ShopTime >= typed + 300_000);
    }

    /// <summary>Waits until something is so, however long the machine takes for it.</summary>
    /// <param name="what">Asked between two steps of the board.</param>
    public void Until(Func<LiveShop, bool> what) =>
        Assert.IsTrue(SpinWait.SpinUntil(() => With(what), BuiltProgram.Patience), "It never comes.");

    /// <summary>Pulls the cable.</summary>
    public void Unplug()
    {
        lock (_lock)
        {
            File.Delete(Name);
            _terminal?.Dispose();
            _terminal = null;
        }
    }

    /// <summary>Puts the cable in.</summary>
    public void Plug()
    {
        lock (_lock)
        {
            _terminal = PseudoTerminal.Open();
            File.CreateSymbolicLink(Name, _terminal.Name);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _isOver = true;
        _thread.Join();
        Unplug();
        Directory.Delete(_folder);
    }

    private void Run()
    {
        RealTime time = new(_live.Rig);
        byte[] typed = new byte[256];
        while (!_isOver)
        {
            lock (_lock)
            {
                _live.Type(typed.AsSpan(0, _terminal?.Read(typed) ?? 0));
                time.CatchUp();
                _terminal?.Write(
                    Encoding.Latin1.GetBytes(OnTheWay(Encoding.Latin1.GetString(_live.Rig.Board.Serial.TakeSent()))));
            }

            Thread.Sleep(RealTime.PauseMilliseconds);
        }
    }
}
