using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Tells short presses from long ones, and leaves out the bounce of the contact.</summary>
public sealed class Button
{
    /// <summary>Shortest press that counts, in microseconds.</summary>
    public const long ShortestMicroseconds = 30 * Time.Millisecond;

    /// <summary>A press of this length or more is a long one, in microseconds.</summary>
    public const long LongestShortMicroseconds = 1500 * Time.Millisecond;

    /// <summary>
    /// Time in microseconds for which the button must have been up after the power came before it counts: one that is down then
    /// is stuck, or leaned on, and must not release a hold.
    /// </summary>
    public const long FirstUpMicroseconds = Time.Second;

    // A collection takes 150 ms. After a longer time between two looks the press may be another one.
    private const long LongestGapMicroseconds = 200 * Time.Millisecond;

    private bool _isReady;
    private long _readySince = -1;
    private bool _wasDown;
    private bool _isPress;
    private bool _hasActed;
    private bool _isUnsure;
    private long _lastLook;
    private long _downSince;
    private long _steadySince = -1;
    private long _upSince;

    /// <summary>Looks at the button.</summary>
    /// <param name="isDown">Whether it is pressed.</param>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>The press that this look has completed, or none.</returns>
    public ButtonPress Update(bool isDown, long now)
    {
        if (!_isReady)
        {
            WaitUntilUp(isDown, now);
            _lastLook = now;
            return ButtonPress.None;
        }

        if (!isDown && !_wasDown)
        {
            _lastLook = now;
            return ButtonPress.None;
        }

        bool isGap = now - _lastLook > LongestGapMicroseconds;
        _lastLook = now;
        if (isGap)
        {
            _isUnsure = true;
            _downSince = now;
            _steadySince = -1;
        }

        if (isDown)
        {
            if (!_wasDown)
            {
                _wasDown = true;
                _isPress = false;
                _hasActed = false;
                _isUnsure = isGap;
                _downSince = now;
            }

            if (_steadySince < 0)
            {
                _steadySince = now;
            }

            // Seen down all the while: single wrong looks with the button up between them are no press.
            _isPress = _isPress || now - _steadySince >= ShortestMicroseconds;
            _upSince = now;

            // A long press acts while the button is still held, so that the person knows when it has been long enough.
            if (_isPress && !_hasActed && now - _downSince >= LongestShortMicroseconds)
            {
                _hasActed = true;
                return ButtonPress.LongPress;
            }

            return ButtonPress.None;
        }

        _steadySince = -1;
        return !End(now) ? ButtonPress.None : _isUnsure ? ButtonPress.UnsurePress : ButtonPress.ShortPress;
    }

    /// <summary>
    /// To be called instead of <see cref="Update"/> when the button cannot be read. A press that was under way ends after the
    /// bounce time.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>An unsure press when one has just ended in this way, or none.</returns>
    public ButtonPress Lose(long now)
    {
        _readySince = -1;
        _steadySince = -1;
        _lastLook = now;
        return End(now) ? ButtonPress.UnsurePress : ButtonPress.None;
    }

    // A contact that opens for less than the bounce time is only bouncing, and the press goes on.
    private bool End(long now)
    {
        if (!_wasDown || now - _upSince < ShortestMicroseconds)
        {
            return false;
        }

        _wasDown = false;
        return _isPress && !_hasActed;
    }

    private void WaitUntilUp(bool isDown, long now)
    {
        if (isDown)
        {
            _readySince = -1;
        }
        else if (_readySince < 0)
        {
            _readySince = now;
        }

        _isReady = _readySince >= 0 && now - _readySince >= FirstUpMicroseconds;
    }
}
