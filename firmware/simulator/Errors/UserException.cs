namespace NanoDustSwitch.Simulator.Errors;

/// <summary>A day, a recording or a file that cannot be used; the message is one sentence for the person.</summary>
/// <param name="message">One sentence: what is wrong and what is allowed.</param>
/// <param name="inner">What was thrown, if anything.</param>
internal class UserException(string message, Exception? inner = null) : Exception(message, inner);
