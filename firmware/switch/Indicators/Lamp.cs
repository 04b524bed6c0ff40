using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Blinks the lamp in a pattern of 3 s, which is a text of thirty characters for a tenth of a second each: '#' is on, '.' is off.
/// </summary>
public sealed class Lamp
{
    private const int Places = 30;
    private const long PlaceMicroseconds = Time.Second / 10;

    private readonly SafeBoard _board;
    private readonly string[] _patterns = new string[9];
    private bool _isOn;
    private bool _isKnown;

    /// <summary>Initializes a new instance of the <see cref="Lamp"/> class.</summary>
    /// <param name="board">The board.</param>
    public Lamp(SafeBoard board)
    {
        _board = board;
        _patterns[(int)LampPattern.Awake] = "#.............................";
        _patterns[(int)LampPattern.On] = "##############################";
        _patterns[(int)LampPattern.Held] = "#####.....#####.....#####.....";
        _patterns[(int)LampPattern.Fault] = "#.#.#.....#.#.#.....#.#.#.....";
        _patterns[(int)LampPattern.OnWithNotice] = "#############################.";
        _patterns[(int)LampPattern.AwakeWithNotice] = "#.#...........................";
        _patterns[(int)LampPattern.VacuumStuck] = "######..#.######..#.######..#.";
        _patterns[(int)LampPattern.Ignored] = "#.........#.........#.........";
        _patterns[(int)LampPattern.Guide] = "#.#.#.#.#.#.#.#.#.#.#.#.#.#.#.";
    }

    /// <summary>Sets the lamp to what the pattern says for this moment.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Show(LampPattern pattern, long now)
    {
        bool on = _patterns[(int)pattern][(int)(now / PlaceMicroseconds % Places)] == '#';
        if (on != _isOn || !_isKnown)
        {
            _isOn = on;
            _isKnown = true;
            _board.SetLamp(on);
        }
    }
}
