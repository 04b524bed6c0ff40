using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace NanoDustSwitch.Sizing.Commands;

/// <summary>Help with examples below it.</summary>
/// <param name="usual">The library's help.</param>
internal sealed class HelpExamples(HelpAction usual) : SynchronousCommandLineAction
{
    private static readonly (string What, string Line)[] s_examples =
    [
        ("No mains wiring: a 10 A vacuum on a switching unit, a 12 A saw on a line splitter, two circuits",
            "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A "
            + "--sensor transformer-100A --ready-made"),
        ("A 10 A vacuum and a 12 A saw on one 15 A circuit: does not fit, and says what would",
            "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --cord 8m/14AWG --sensor transformer-100A"),
        ("The same with two circuits, and a page to keep",
            "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 20A/US20 --cord 2m/12AWG "
            + "--cord head:1m/14AWG --cord tool:25ft/14AWG --sensor transformer-100A --report sizing.html"),
        ("A 2 hp saw at 240 V (two hot wires), a vacuum at 120 V",
            "--vacuum 9A --tool 2hp --supply 240V/60Hz --breaker 20A --vacuum-circuit 15A/120V "
            + "--cord 2m/14AWG --sensor transformer-100A"),
        ("Britain, watts on the nameplates",
            "--vacuum 1000W --tool 1200W/universal --supply 230V/50Hz --breaker B32 --plug UK13 "
            + "--cord 2m/1.5mm2 --sensor transformer-100A"),
    ];

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <summary>Puts it in place of the usual help.</summary>
    /// <param name="root">The root command.</param>
    public static void AddTo(RootCommand root)
    {
        HelpOption option = root.Options.OfType<HelpOption>().Single();
        option.Action = new HelpExamples((HelpAction)option.Action!);
    }

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int code = usual.Invoke(parseResult);
        TextWriter output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples, each after dotnet run --project hardware/sizing --");
        foreach ((string what, string line) in s_examples)
        {
            output.WriteLine();
            output.WriteLine($"  {what}:");
            output.WriteLine($"  {line}");
        }

        return code;
    }
}
