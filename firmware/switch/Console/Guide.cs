using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Something that goes on for a while at the console and asks the person for this and that. A typed line ends it.</summary>
public abstract class Guide
{
    /// <summary>Longest wait for an answer, in microseconds.</summary>
    protected const long AnswerMicroseconds = 2 * Time.Minute;

    private long _askedAt;
    private int _slowAnswers;

    /// <summary>Initializes a new instance of the <see cref="Guide"/> class.</summary>
    /// <param name="console">The console.</param>
    /// <param name="core">The core.</param>
    protected Guide(SerialConsole console, DetectionCore core)
    {
        Console = console;
        Core = core;
    }

    /// <summary>Gets what the swing did; it is shown every bucket.</summary>
    public SwingMeter Meter { get; } = new SwingMeter();

    /// <summary>Gets what the slow lane said meanwhile.</summary>
    public SlowMeter Slow { get; } = new SlowMeter();

    /// <summary>Gets a value indicating whether the guide waits for the button, so that a press does not end it.</summary>
    public virtual bool UsesButton
    {
        get { return false; }
    }

    /// <summary>Gets the console.</summary>
    protected SerialConsole Console { get; }

    /// <summary>Gets the core.</summary>
    protected DetectionCore Core { get; }

    /// <summary>Looks at a bucket with a valid window.</summary>
    /// <param name="core">The core that has taken it.</param>
    public void Look(DetectionCore core)
    {
        Meter.Accept(core.Swing);
        int answers = core.SlowAnswers;
        if (answers != _slowAnswers)
        {
            _slowAnswers = answers;
            Slow.Accept(core.SlowSwing);
        }
    }

    /// <summary>Goes on; called every now and then while the console has room.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        if (!Console.IsAsking)
        {
            Continue(now);
        }
        else if (now - _askedAt > AnswerMicroseconds)
        {
            Console.TakeBackQuestion();
            Abort("No answer in two minutes");
        }
    }

    /// <summary>Takes an answer.</summary>
    /// <param name="isYes">Whether it was yes.</param>
    public abstract void Answer(bool isYes);

    /// <summary>Ends it before its time, with nothing changed.</summary>
    /// <param name="reason">Why, as the beginning of a sentence.</param>
    public abstract void Abort(string reason);

    /// <summary>Goes on with the step.</summary>
    /// <param name="now">Time in microseconds.</param>
    protected abstract void Continue(long now);

    /// <summary>Asks a question.</summary>
    /// <param name="word">The word that hands the answer back.</param>
    /// <param name="question">The question.</param>
    protected void Ask(Word word, string question)
    {
        _askedAt = Console.Now;
        Console.Ask(word, question);
    }
}
