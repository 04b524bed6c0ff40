using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Plays a row of beeps once. The row is a text in which each character stands for a tenth of a second: '#' sounds, '.' is
/// silent.
/// </summary>
public sealed class Sounder
{
    /// <summary>One short beep: a step has begun.</summary>
    public const string Begin = "#.";

    /// <summary>Two beeps: now start the tool.</summary>
    public const string StartTool = "##..##.";

    /// <summary>Three beeps: now stop the tool.</summary>
    public const string StopTool = "##..##..##.";

    /// <summary>A long beep: done.</summary>
    public const string Done = "##########.";

    /// <summary>Five short beeps: a guide has failed, or a fault has come up.</summary>
    public const string Trouble = "#.#.#.#.#.";

    private const long PlaceMicroseconds = Time.Second / 10;

    private readonly SafeBoard _board;
    private string _pattern;
    private long _since;
    private bool _isOn;

    /// <summary>Initializes a new instance of the <see cref="Sounder"/> class.</summary>
    /// <param name="board">The board.</param>
    public Sounder(SafeBoard board)
    {
        _board = board;
    }

    /// <summary>Gets a value indicating whether something is being played.</summary>
    public bool IsPlaying
    {
        get { return _pattern != null; }
    }

    /// <summary>Begins to play, in place of what is being played.</summary>
    /// <param name="pattern">The row of beeps.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Play(string pattern, long now)
    {
        _pattern = pattern;
        _since = now;
    }

    /// <summary>
    /// Switches the sounder on or off as the row says for this moment. To be called many times a second.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        if (_pattern == null)
        {
            return;
        }

        long place = (now - _since) / PlaceMicroseconds;
        bool isOver = now < _since || place >= _pattern.Length;
        bool on = !isOver && _pattern[(int)place] == '#';
        if (isOver)
        {
            _pattern = null;
        }

        if (on != _isOn)
        {
            _isOn = on;
            _board.SetSounder(on);
        }
    }
}
