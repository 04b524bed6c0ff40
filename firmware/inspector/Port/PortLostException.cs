using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>A port that was open has gone, or the board behind it has fallen silent.</summary>
/// <param name="message">One sentence.</param>
/// <param name="inner">What was thrown, if anything.</param>
internal sealed class PortLostException(string message, Exception? inner = null) : UserException(message, inner);
