using System.CommandLine;
using NanoDustSwitch.Sizing.Commands;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.SizingTests;

/// <summary>An order read from a command line, and judged.</summary>
internal sealed class Judged
{
    /// <summary>Reads and judges.</summary>
    /// <param name="line">The options.</param>
    public Judged(string line)
    {
        Order = OrderOf(line);
        Judgement = new Judgement(Order, Trials);
    }

    /// <summary>Gets the trials.</summary>
    public TrialBook Trials { get; } = new();

    /// <summary>Gets the order.</summary>
    public Order Order { get; }

    /// <summary>Gets the judgement.</summary>
    public Judgement Judgement { get; }

    /// <summary>Reads an order.</summary>
    /// <param name="line">The options.</param>
    /// <returns>The order.</returns>
    public static Order OrderOf(string line)
    {
        RootCommand root = new();
        SizingOptions options = new();
        options.AddTo(root);
        return options.Order(root.Parse(Terminal.Words(line)));
    }

    /// <summary>Finds a finding.</summary>
    /// <param name="section">Beginning of its section's title.</param>
    /// <param name="what">Beginning of what was looked at.</param>
    /// <returns>The finding.</returns>
    public Finding Finding(string section, string what)
    {
        Section? found = Judgement.Sections.FirstOrDefault(each => each.Title.StartsWith(section, StringComparison.Ordinal));
        Finding? finding = found?.Findings.FirstOrDefault(each => each.What.StartsWith(what, StringComparison.Ordinal));
        Assert.IsNotNull(
            finding,
            $"no '{what}' in '{section}'; there are {string.Join(" | ", found?.Findings.Select(each => each.What) ?? [])}");
        return finding;
    }
}
