using System.Diagnostics;
using NanoDustSwitch.Simulator.Terminal;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>A session at a terminal with the picture on it, in real time.</summary>
internal sealed class PictureSession : IDisposable
{
    private static readonly TimeSpan s_frame = TimeSpan.FromMilliseconds(100);

    private readonly LiveShop _live;
    private readonly FullScreen _full;
    private readonly RealTime _time;
    private readonly Keyboard _keyboard;
    private readonly ShopPicture _picture;
    private readonly ConsoleScreen _screen = new();
    private readonly EndSignals _signals = new(isStopKeyOff: true);
    private long _lastFrame;
    private bool _wasLampOn;

    private PictureSession(LiveShop live, FullScreen full, Glyphs glyphs)
    {
        _live = live;
        _full = full;
        _time = new RealTime(live.Rig);
        _keyboard = new Keyboard(live);
        _picture = new ShopPicture(live, _screen, glyphs);
        live.Words.Hold = Hold;
        live.Words.LetPass = LetPass;
    }

    private bool IsOver => _live.Words.HasQuit || _signals.HaveCome;

    /// <summary>Runs until /quit, Ctrl-C or Ctrl-D.</summary>
    /// <param name="live">The shop.</param>
    /// <param name="console">The terminal.</param>
    public static void Run(LiveShop live, IAnsiConsole console) => FullScreen.Run(console, full =>
    {
        using PictureSession session = new(live, full, Glyphs.For(console.Profile.Capabilities.Unicode));
        session.Run();
    });

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
        _full.Show((width, height) => _picture.Draw(width, height, _wasLampOn, _keyboard.ShopLine));
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

        _time.Reset();
    }
}
