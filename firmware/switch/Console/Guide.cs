using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// A dialogue of several steps at the console, such as teaching a tool: it measures, asks questions, and tells the person what
/// to do. A line that is typed while no question waits for its answer ends it.
/// </summary>
public abstract class Guide
{
    /// <summary>How long the guide waits for an answer before it ends, in microseconds.</summary>
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

    /// <summary>Gets the meter that follows the swing of every bucket.</summary>
    public SwingMeter Meter { get; } = new SwingMeter();

    /// <summary>Gets the meter that follows the answers of the slow lane.</summary>
    public SlowMeter Slow { get; } = new SlowMeter();

    /// <summary>
    /// Gets a value indicating whether the guide uses the button itself; else a press of the button ends the guide.
    /// </summary>
    public virtual bool UsesButton
    {
        get { return false; }
    }

    /// <summary>Gets the console.</summary>
    protected SerialConsole Console { get; }

    /// <summary>Gets the core.</summary>
    protected DetectionCore Core { get; }

    /// <summary>Measures. To be called after every bucket, as long as the swing can be believed.</summary>
    /// <param name="core">The core, which has taken the bucket.</param>
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

    /// <summary>
    /// Goes on with the guide, or ends it when a question has gone unanswered for too long. Called by the console while there
    /// is room for output.
    /// </summary>
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

    /// <summary>Takes the answer to the question that was asked.</summary>
    /// <param name="isYes">Whether it was yes; anything else counts as no.</param>
    public abstract void Answer(bool isYes);

    /// <summary>Ends the guide early and leaves all settings as they are.</summary>
    /// <param name="reason">Why it ends, as the beginning of a sentence.</param>
    public abstract void Abort(string reason);

    /// <summary>Goes on with the present step, while no question waits for its answer.</summary>
    /// <param name="now">Time in microseconds.</param>
    protected abstract void Continue(long now);

    /// <summary>Asks a question that is to be answered with yes or no.</summary>
    /// <param name="word">The word that gets the answer from the console and passes it on to the guide.</param>
    /// <param name="question">The question.</param>
    protected void Ask(Word word, string question)
    {
        _askedAt = Console.Now;
        Console.Ask(word, question);
    }
}
