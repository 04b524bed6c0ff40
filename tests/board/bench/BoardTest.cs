using System.Text.RegularExpressions;

namespace NanoDustSwitch.BoardTests;

/// <summary>A test with a chip of its own, at which nothing was done that a board would not stand.</summary>
public abstract class BoardTest
{
    private protected const int Saw = 3000;

    private protected Chip Chip { get; } = new();

    [TestCleanup]
    public void NothingWasDoneThatABoardWouldNotStand()
    {
        Chip.Dispose();
        Assert.IsEmpty(Chip.Complaints, string.Join(Environment.NewLine, Chip.Complaints));
    }

    private protected void Run(int milliseconds) => Chip.Run(milliseconds);

    /// <summary>Power comes, and the switch has said its greeting.</summary>
    private protected void Boot() => Run(2000);

    private protected void Tool(int milliamperes, int milliseconds)
    {
        Chip.Tool.Milliamperes = milliamperes;
        Run(milliseconds);
    }

    /// <summary>Types a line and gives what came back, without the echo and the prompt.</summary>
    private protected string Answer(string line, int milliseconds = 1000)
    {
        Chip.Serial.TakeSent();
        Chip.Serial.Type(line + "\r");
        Run(milliseconds);
        string sent = Chip.Serial.TakeSent();
        return Regex.Replace(sent, $@"^{Regex.Escape(line)}\r\n|\r?\n?> $", "", RegexOptions.None, TimeSpan.FromSeconds(1));
    }

    private protected void AssertSays(string expected, string line) =>
        Assert.Contains(expected, Answer(line), StringComparison.Ordinal);
}
