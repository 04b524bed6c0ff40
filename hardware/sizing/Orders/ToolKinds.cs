using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>The kinds of motor that can be named for a tool; their starts are the virtual shop's.</summary>
internal static class ToolKinds
{
    /// <summary>
    /// Least current of a tool that turns without working, as a part of its nameplate: common practice, no source.
    /// </summary>
    public const double IdlePart = 0.4;

    // The crest of a universal motor's current: a 230 V vacuum's recording (read), and the shop's model of it.
    private const double UniversalCrest = 1.55;

    private static readonly (string Name, ToolKind Kind, string What)[] s_kinds =
    [
        ("induction", ToolKind.Induction, "induction motor"),
        ("universal", ToolKind.Universal, "motor with brushes"),
        ("soft-start", ToolKind.SoftStart, "motor with brushes and soft start"),
    ];

    /// <summary>Gets the names.</summary>
    public static IEnumerable<string> Names => s_kinds.Select(kind => kind.Name);

    /// <summary>Finds a kind.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The kind; null where there is none of that name.</returns>
    public static ToolKind? Find(string name) =>
        s_kinds.Where(kind => kind.Name == name).Select(kind => (ToolKind?)kind.Kind).FirstOrDefault();

    /// <summary>Gives the name that is typed.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Its name.</returns>
    public static string NameOf(ToolKind kind) => s_kinds.First(row => row.Kind == kind).Name;

    /// <summary>Says what it is.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>A few words.</returns>
    public static string WhatOf(ToolKind kind) => s_kinds.First(row => row.Kind == kind).What;

    /// <summary>Peak of the running current over its rms.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The crest factor.</returns>
    public static double CrestOf(ToolKind kind) => kind == ToolKind.Induction ? Math.Sqrt(2) : UniversalCrest;
}
