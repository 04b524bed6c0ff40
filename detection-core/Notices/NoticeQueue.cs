namespace NanoDustSwitch.Detection;

/// <summary>A ring of notices that wait to be read. All of them are made at the boot, so adding one allocates nothing.</summary>
public sealed class NoticeQueue
{
    private const int Length = 16;

    private readonly Notice[] _notices = new Notice[Length];
    private int _first;

    /// <summary>Number of notices that wait.</summary>
    public int Count;

    /// <summary>Number of notices that were lost because the queue was full.</summary>
    public int Lost;

    /// <summary>Initializes a new instance of the <see cref="NoticeQueue"/> class.</summary>
    public NoticeQueue()
    {
        for (int i = 0; i < Length; i++)
        {
            _notices[i] = new Notice();
        }
    }

    /// <summary>Adds a notice. When the queue is full, the new one is lost.</summary>
    /// <param name="kind">What happened. It says what the three numbers mean.</param>
    /// <param name="first">First number.</param>
    /// <param name="second">Second number.</param>
    /// <param name="figure">Third number.</param>
    /// <param name="time">Time in microseconds.</param>
    public void Add(NoticeKind kind, int first, int second, int figure, long time)
    {
        if (Count == Length)
        {
            Lost++;
            return;
        }

        Notice notice = _notices[(_first + Count) % Length];
        notice.Kind = kind;
        notice.First = first;
        notice.Second = second;
        notice.Figure = figure;
        notice.Time = time;
        Count++;
    }

    /// <summary>Takes the oldest notice.</summary>
    /// <returns>The notice, which the next <see cref="Add"/> may overwrite; null when none waits.</returns>
    public Notice Take()
    {
        if (Count == 0)
        {
            return null;
        }

        Notice notice = _notices[_first];
        _first = (_first + 1) % Length;
        Count--;
        return notice;
    }
}
