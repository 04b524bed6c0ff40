namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>A method that the loop enters only now and then, and that may make objects therefore.</summary>
/// <param name="Method">Its type and name.</param>
/// <param name="Reason">When it is entered.</param>
internal sealed record LoopCut(string Method, string Reason);
