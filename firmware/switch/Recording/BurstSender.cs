using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Adds single readings to a recording: every 5 s it takes those of up to 16 buckets and sends them in small pieces between the
/// buckets.
/// </summary>
public sealed class BurstSender
{
    // Two mains cycles every five seconds are enough to show the shape of the current, and leave the serial line to the buckets.
    private const long PeriodMicroseconds = 5 * Time.Second;

    // Readings in a piece. To send so many is about as much work as to send a bucket.
    private const int APiece = 8;

    private readonly ReadingTape _tape = new ReadingTape();
    private readonly BucketReader _reader;
    private readonly BucketEncoder _encoder;
    private long _next;
    private bool _isSending;
    private int _run;
    private int _leftOfRun;
    private int _reading;

    /// <summary>Initializes a new instance of the <see cref="BurstSender"/> class.</summary>
    /// <param name="reader">Where the readings come from.</param>
    /// <param name="encoder">Writes them.</param>
    public BurstSender(BucketReader reader, BucketEncoder encoder)
    {
        _reader = reader;
        _encoder = encoder;
    }

    /// <summary>Begins a new recording; the first burst is taken at once.</summary>
    public void Reset()
    {
        _next = 0;
        Stop();
    }

    /// <summary>Ends the burst that is under way.</summary>
    public void Stop()
    {
        _isSending = false;
        _reader.Tape = null;
    }

    /// <summary>Takes a burst or sends a piece of it. To be called after each bucket, if there is room for a piece.</summary>
    /// <param name="now">End of the bucket in microseconds.</param>
    public void Update(long now)
    {
        if (_isSending)
        {
            Send();
        }
        else if (_reader.Tape == null)
        {
            if (now >= _next)
            {
                _next = now + PeriodMicroseconds;
                _tape.Reset();
                _reader.Tape = _tape;
            }
        }
        else if (_tape.IsFull)
        {
            _reader.Tape = null;
            _isSending = true;
            _run = 0;
            _leftOfRun = 0;
            _reading = 0;
            _encoder.AddBurst(_tape.Runs, _tape.Begin);
        }
    }

    private void Send()
    {
        if (_leftOfRun > 0)
        {
            int count = _leftOfRun < APiece ? _leftOfRun : APiece;
            _encoder.AddReadings(_tape.Readings, _reading, count);
            _reading += count;
            _leftOfRun -= count;
        }
        else
        {
            _leftOfRun = _tape.Counts[_run];
            _encoder.AddRun(_leftOfRun, _tape.Begins[_run], _tape.Lengths[_run]);
            _run++;
        }

        _isSending = _leftOfRun > 0 || _run < _tape.Runs;
    }
}
