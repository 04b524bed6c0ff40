namespace NanoDustSwitch.BoardTests;

/// <summary>Calls that fail, so many times.</summary>
internal sealed class Breakdown(string call, int times)
{
    private int _left = times;

    public bool Hits(string called) => _left > 0 && called.StartsWith(call, StringComparison.Ordinal) && _left-- > 0;
}
