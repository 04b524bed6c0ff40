namespace NanoDustSwitch.Simulator.Errors;

/// <summary>A day, a recording or a file that cannot be used; the message is one sentence for the person.</summary>
internal class UserException : Exception
{
    /// <summary>Initializes a new instance of the <see cref="UserException"/> class.</summary>
    public UserException()
        : this("The input cannot be used.")
    {
    }

    /// <summary>Initializes a new instance of the <see cref="UserException"/> class.</summary>
    /// <param name="message">One sentence: what is wrong and what is allowed.</param>
    public UserException(string message)
        : base(message)
    {
    }

    /// <summary>Initializes a new instance of the <see cref="UserException"/> class.</summary>
    /// <param name="message">One sentence: what is wrong and what is allowed.</param>
    /// <param name="inner">What was thrown.</param>
    public UserException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
