using System.CommandLine;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>What a shop at the keyboard is made of: the board's flash and the shop around it.</summary>
internal sealed class LiveOptions
{
    private readonly Option<string?> _settings = new("--settings")
    {
        Description = "File that stands for the board's flash; without it everything is forgotten.",
    };

    private readonly Option<string?> _shop = new("--shop")
    {
        Description = "A day's JSON file: its shop and tools, without its plan; the demo day's without it.",
    };

    /// <summary>Adds the options to a verb.</summary>
    /// <param name="command">The verb.</param>
    public void AddTo(Command command)
    {
        command.Options.Add(_settings);
        command.Options.Add(_shop);
    }

    /// <summary>Makes the shop.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <returns>The shop.</returns>
    public LiveShop Shop(ParseResult parsed) => new(
        parsed.GetValue(_settings) is { } flash ? FlashImage.Open(flash) : FlashImage.Blank(),
        parsed.GetValue(_shop) is { } day ? DayFile.Read(day) : null);
}
