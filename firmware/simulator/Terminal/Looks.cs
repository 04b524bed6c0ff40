using Spectre.Console;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>What stands out in the picture, and how. Words say the same as colours.</summary>
internal static class Looks
{
    /// <summary>Gets the look of what is as usual.</summary>
    public static Style Usual { get; } = Style.Plain;

    /// <summary>Gets the look of labels and of what rests: dim rather than grey, which some terminals show on grey.</summary>
    public static Style Quiet { get; } = new(decoration: Decoration.Dim);

    /// <summary>Gets the look of what runs.</summary>
    public static Style Running { get; } = new(Color.Green);

    /// <summary>Gets the look of what passes.</summary>
    public static Style Passing { get; } = new(Color.Yellow);

    /// <summary>Gets the look of what is wrong.</summary>
    public static Style Wrong { get; } = new(Color.Red);

    /// <summary>Gets the look of the shop's own lines.</summary>
    public static Style Shop { get; } = new(Color.Teal);

    /// <summary>Gets the look of the place where the next key will show.</summary>
    public static Style Caret { get; } = new(decoration: Decoration.Invert);

    /// <summary>Makes a heading.</summary>
    /// <param name="text">What it says.</param>
    /// <returns>The heading.</returns>
    public static Rule Heading(string text) => new Rule(Markup.Escape(text)).LeftJustified().RuleStyle(Quiet);
}
