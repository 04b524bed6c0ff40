using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Tells short presses from long ones, and leaves out the bounce of the contact.</summary>
public sealed class Button
{
    /// <summary>Shortest press that counts, in microseconds.</summary>
    public const long ShortestMicroseconds = 30 * Time.Millisecond;

    /// <summary>A press of this length or more is a long one, in microseconds.</summary>
    public const long LongestShortMicroseconds = 1500 * Time.Millisecond;

    private bool _wasDown;
    private bool _hasActed;
    private long _downSince;
    private long _upSince;

    /// <summary>Looks at the button.</summary>
    /// <param name="isDown">Whether it is pressed.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>The press that this look has completed, or none.</returns>
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

            // A long press acts while the button is still held, so that the person knows when it has been long enough.
            if (!_hasActed && now - _downSince >= LongestShortMicroseconds)
            {
                _hasActed = true;
                return ButtonPress.LongPress;
            }

            return ButtonPress.None;
        }

        // A contact that opens for less than the bounce time is only bouncing, and the press goes on.
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

    /// <summary>
    /// To be called instead of <see cref="Update"/> when the button cannot be read. A press that was under way ends after the
    /// bounce time, and nobody knows whether it was a short or a long one.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>True when a press has just ended in this way.</returns>
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
