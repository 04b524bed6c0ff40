namespace NanoDustSwitch.Detection;

/// <summary>Notices that wait to be read; made once, nothing is allocated when something happens.</summary>
public sealed class NoticeQueue
{
    private const int Length = 16;

    private readonly Notice[] _notices = new Notice[Length];
    private int _first;

    /// <summary>Number of notices that wait.</summary>
    public int Count;

    /// <summary>Notices that were lost because nobody read the queue.</summary>
    public int Lost;

    /// <summary>Initializes a new instance of the <see cref="NoticeQueue"/> class.</summary>
    public NoticeQueue()
    {
        for (int i = 0; i < Length; i++)
        {
            _notices[i] = new Notice();
        }
    }

    /// <summary>Adds a notice; with a full queue the new one is counted as lost.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="first">First subject.</param>
    /// <param name="second">Second subject.</param>
    /// <param name="figure">Figure.</param>
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
    /// <returns>The notice, good until the next <see cref="Add"/>; null when none waits.</returns>
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
