using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.SystemTests;

/// <summary>What firmware/console.md shows of the console is what a person would see.</summary>
[TestClass]
public sealed class PageExampleTests
{
    private const string Prompt = "> ";

    [TestMethod]
    public void The_console_answers_as_its_page_shows()
    {
        string block = Repository.ReadText("firmware/console.md").Split("```\n")[1];
        string typed = string.Concat(block.Split('\n').Where(line => line.StartsWith(Prompt, StringComparison.Ordinal))
            .Select(line => line[Prompt.Length..] + "\n"));
        using StringReader input = new(typed);
        using StringWriter output = new() { NewLine = "\n" };
        PipedSession.Run(new LiveShop(FlashImage.Blank()), input, output);
        Assert.Contains(block, output.ToString(), StringComparison.Ordinal);
    }
}
