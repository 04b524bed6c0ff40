using System.Diagnostics;
using System.Runtime.ExceptionServices;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>A session at a terminal with the picture on it, in real time.</summary>
internal sealed class PictureSession : IDisposable
{
    // All but the scrolled-off lines, which are the person's and which a library's own clearing would take away as well.
    private const string ClearScreen = "\u001b[2J\u001b[H";

    // .NET lets the arrow keys send other codes and does not take that back.
    private const string UsualArrowKeys = "\u001b[?1l\u001b>";

    private static readonly TimeSpan s_frame = TimeSpan.FromMilliseconds(100);

    private readonly LiveShop _live;
    private readonly IAnsiConsole _console;
    private readonly RealTime _time;
    private readonly Keyboard _keyboard;
    private readonly ShopPicture _picture;
    private readonly ConsoleScreen _screen = new();
    private readonly EndSignals _signals = new(isStopKeyOff: true);
    private LiveDisplayContext? _display;
    private long _lastFrame;
    private bool _wasLampOn;
    private (int Width, int Height) _size;

    private PictureSession(LiveShop live, IAnsiConsole console)
    {
        _live = live;
        _console = console;
        _time = new RealTime(live.Rig);
        _keyboard = new Keyboard(live);
        _picture = new ShopPicture(live, _screen, Glyphs.For(console.Profile.Capabilities.Unicode));
        live.Words.Hold = Hold;
        live.Words.LetPass = LetPass;
    }

    private bool IsOver => _live.Words.HasQuit || _signals.HaveCome;

    /// <summary>Tells whether a terminal can show the picture.</summary>
    /// <param name="console">The terminal.</param>
    /// <returns>True when it can.</returns>
    public static bool Fits(IAnsiConsole console) =>
        console.Profile.Capabilities is { Ansi: true, AlternateBuffer: true }
        && console.Profile.Width >= ShopPicture.LeastWidth && console.Profile.Height >= ShopPicture.LeastHeight;

    /// <summary>Runs until /quit, Ctrl-C or Ctrl-D.</summary>
    /// <param name="live">The shop.</param>
    /// <param name="console">The terminal.</param>
    public static void Run(LiveShop live, IAnsiConsole console)
    {
        ExceptionDispatchInfo? failure = null;

        // Looked at before anything is shown: from the first look on, keys come one by one and are not echoed.
        _ = Console.KeyAvailable;
        console.AlternateScreen(() => console.Live(new Text("")).Overflow(VerticalOverflow.Crop).Start(display =>
        {
            try
            {
                using PictureSession session = new(live, console) { _display = display };
                session.Run();
            }
#pragma warning disable CA1031 // Whatever it is: it is thrown again once the terminal is as it was.
            catch (Exception exception)
#pragma warning restore CA1031
            {
                failure = ExceptionDispatchInfo.Capture(exception);
            }
        }));
        Console.Write(UsualArrowKeys);
        failure?.Throw();
    }

    /// <inheritdoc/>
    public void Dispose() => _signals.Dispose();

    private void Run()
    {
        while (!IsOver)
        {
            Turn();
            while (!IsOver && Console.KeyAvailable)
            {
                if (_keyboard.Take(Console.ReadKey(intercept: true)) is { } line)
                {
                    Answer(line);
                }
            }
        }
    }

    private void Answer(string line)
    {
        // What was typed before may not be answered yet.
        _live.RunUntilAnswered();
        _screen.Write(_live.Rig.Board.Serial.TakeSent());
        _screen.AddShop(line);
        foreach (string one in _live.Words.Run(line))
        {
            _screen.AddShop($"  shop: {one}");
        }
    }

    private void Turn()
    {
        _time.CatchUp();
        _wasLampOn |= _time.WasLampOn;
        Show();
        Thread.Sleep(RealTime.PauseMilliseconds);
    }

    private void Show()
    {
        _screen.Write(_live.Rig.Board.Serial.TakeSent());
        if (Stopwatch.GetElapsedTime(_lastFrame) < s_frame)
        {
            return;
        }

        _lastFrame = Stopwatch.GetTimestamp();
        (int Width, int Height) size = (_console.Profile.Width, _console.Profile.Height);
        if (size != _size)
        {
            // What is left of the old picture lies elsewhere now.
            _size = size;
            Console.Write(ClearScreen);
        }

        _display!.UpdateTarget(_picture.Draw(size.Width, size.Height, _wasLampOn, _keyboard.ShopLine));
        _wasLampOn = false;
    }

    private void Hold(long microseconds)
    {
        long end = _live.Rig.Board.ShopTime + microseconds;
        while (_live.Rig.Board.ShopTime < end && !IsOver)
        {
            Turn();
        }
    }

    // As fast as this PC can, in parts that leave time for the picture and for Ctrl-C.
    private void LetPass(long microseconds)
    {
        const long Part = 50_000;
        long end = _live.Rig.Board.ShopTime + microseconds;
        while (_live.Rig.Board.ShopTime < end && !IsOver)
        {
            _live.Rig.RunUntil(Math.Min(end, _live.Rig.Board.ShopTime + Part));
            _wasLampOn |= _live.Rig.Board.IsLampOn;
            Show();
        }

        _time.Restart();
    }
}
