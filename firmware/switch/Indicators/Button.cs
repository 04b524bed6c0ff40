using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Tells short presses from long ones, and both from bounce.</summary>
public sealed class Button
{
    /// <summary>Shortest press that counts, in microseconds.</summary>
    public const long ShortestMicroseconds = 30 * Time.Millisecond;

    /// <summary>Press from which on it counts as long, in microseconds.</summary>
    public const long LongestShortMicroseconds = 1500 * Time.Millisecond;

    private bool _wasDown;
    private bool _hasActed;
    private long _downSince;
    private long _upSince;

    /// <summary>Looks at the button.</summary>
    /// <param name="isDown">Whether it is pressed.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>What a person has just done with it.</returns>
    public ButtonPress Update(bool isDown, long now)
    {
        if (isDown)
        {
            if (!_wasDown)
            {
                _wasDown = true;
                _hasActed = false;
                _downSince = now;
            }

            _upSince = now;

            // A long press acts while it is still held, so that a person feels when it has been long enough.
            if (!_hasActed && now - _downSince >= LongestShortMicroseconds)
            {
                _hasActed = true;
                return ButtonPress.LongPress;
            }

            return ButtonPress.None;
        }

        // Open for less than the bounce time is still the same press.
        if (_wasDown && now - _upSince >= ShortestMicroseconds)
        {
            _wasDown = false;
            if (!_hasActed && _upSince - _downSince >= ShortestMicroseconds)
            {
                return ButtonPress.ShortPress;
            }
        }

        return ButtonPress.None;
    }

    /// <summary>The button cannot be read. After the bounce time a press that was under way is over, long or short nobody knows.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when a press has just ended so.</returns>
    public bool Lose(long now)
    {
        if (!_wasDown || now - _upSince < ShortestMicroseconds)
        {
            return false;
        }

        _wasDown = false;
        return !_hasActed && _upSince - _downSince >= ShortestMicroseconds;
    }
}
