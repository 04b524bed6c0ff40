using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>A port that was open has gone, or the board behind it has fallen silent.</summary>
internal sealed class PortLostException : UserException
{
    /// <summary>Initializes a new instance of the <see cref="PortLostException"/> class.</summary>
    public PortLostException()
    {
    }

    /// <summary>Initializes a new instance of the <see cref="PortLostException"/> class.</summary>
    /// <param name="message">One sentence.</param>
    public PortLostException(string message)
        : base(message)
    {
    }

    /// <summary>Initializes a new instance of the <see cref="PortLostException"/> class.</summary>
    /// <param name="message">One sentence.</param>
    /// <param name="inner">What was thrown.</param>
    public PortLostException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
