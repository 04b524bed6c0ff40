using System.Runtime.InteropServices;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>Counts what instrumented code executes; that code calls it, on one thread.</summary>
public static class Meter
{
    private const int Deepest = 100;

    private static readonly Frame[] s_frames = new Frame[Deepest];
    private static MethodCost[] s_methods = [];
    private static ILookup<string, MethodCost> s_byName = Enumerable.Empty<MethodCost>().ToLookup(method => method.Name);
    private static int s_depth;
    private static Counts s_total;

    /// <summary>Gets all that was executed since the last <see cref="Begin"/>.</summary>
    public static Counts Total => s_total;

    /// <summary>Gets the cost of each method since then.</summary>
    public static IReadOnlyList<MethodCost> Methods => s_methods;

    /// <summary>Gives the cost of a method since then.</summary>
    /// <param name="name">Its type and name; there must be one of that name and no more.</param>
    /// <returns>Its cost.</returns>
    public static MethodCost Method(string name) => s_byName[name].Single();

    /// <summary>Begins to count anew.</summary>
    /// <param name="methods">The methods by their number.</param>
    public static void Begin(IReadOnlyList<string> methods)
    {
        s_methods = [.. methods.Select(name => new MethodCost(name))];
        s_byName = s_methods.ToLookup(method => method.Name, StringComparer.Ordinal);
        s_depth = 0;
        s_total = default;
    }

    /// <summary>A method begins.</summary>
    /// <param name="method">Its number.</param>
    /// <returns>What it hands to <see cref="Unwind"/>.</returns>
    public static int Enter(int method)
    {
        s_frames[s_depth] = new Frame(s_methods[method], s_total);
        s_frames[s_depth].Method.Open();
        return ++s_depth;
    }

    /// <summary>The method that began last ends.</summary>
    public static void Leave()
    {
        var frame = s_frames[--s_depth];
        frame.Method.Close(s_total - frame.Begin);
    }

    /// <summary>Something was thrown, and a method catches it: those that it called have ended.</summary>
    /// <param name="depth">What <see cref="Enter"/> gave to the method that catches.</param>
    public static void Unwind(int depth)
    {
        while (s_depth > depth)
        {
            Leave();
        }
    }

    /// <summary>Some instructions in a row are executed; only the last of them can do more than an instruction does.</summary>
    /// <param name="instructions">Their number.</param>
    /// <param name="deeds">What the last does, a <see cref="Deeds"/>.</param>
    public static void Block(int instructions, int deeds)
    {
        s_total = s_total.With(instructions, (Deeds)deeds);
        s_frames[s_depth - 1].Method.Own += instructions;
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Frame(MethodCost Method, Counts Begin);
}
