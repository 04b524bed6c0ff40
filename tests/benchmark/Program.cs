using System.CommandLine;
using NanoDustSwitch.Benchmarks;
using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Benchmarks.Studies;
using NanoDustSwitch.Benchmarks.Tools;
using NanoDustSwitch.Simulator.Errors;

Option<bool> quick = new("--quick") { Description = "In less than a minute, with errors of several percent." };
Option<string> charts = new("--charts") { Description = "Folder for the charts.", DefaultValueFactory = _ => "out" };
Command speed = new("speed", "The speed of virtual time.");
speed.SetAction(_ => SpeedCommand.Run());
Option<bool> fewer = new("--quick") { Description = "With fewer tools, in half a minute." };
Command starts = new("starts", "Whether the vacuum waits for the end of the tools' start surges, and for how long.") { fewer };
starts.SetAction(parsed => StartsCommand.Run(parsed.GetValue(fewer)));
Command standing = new("standing", "What stands on the line beside tools: wild readings, lamps, a generator.") { quick };
standing.SetAction(parsed => StudyTable.Print(StandingStudy.Run(new Bench(parsed.GetValue(quick), [], (_, _) => { }))));
Option<int> cases = new("--cases") { Description = "Coupled vacuums.", DefaultValueFactory = _ => 400 };
Option<int> ordinary = new("--ordinary") { Description = "Ordinary starts.", DefaultValueFactory = _ => 3000 };
Option<int> seed = new("--seed") { Description = "Seed of the first.", DefaultValueFactory = _ => 1 };
Command own = new("own", "Whether the vacuum's own current on the tool's line is found, and how soon.") { cases, ordinary, seed };
own.SetAction(parsed =>
    StudyTable.Print(OwnCurrentStudy.Run(parsed.GetValue(cases), parsed.GetValue(ordinary), parsed.GetValue(seed))));
Command tools = new("tools", "Whether tools are known again, and loads that need no vacuum are told from tools.") { quick, seed };
tools.SetAction(parsed => ToolsCommand.Run(parsed.GetValue(quick), parsed.GetValue(seed)));
RootCommand root = new(
    "How small a current is found, how soon, and for how much work. "
    + "Exit code 0: all figures are as they must be; 1: one is not; 2: the input cannot be used.")
{
    quick,
    charts,
    speed,
    starts,
    standing,
    own,
    tools,
};
root.SetAction(parsed => DetectionCommand.Run(parsed.GetValue(quick), parsed.GetRequiredValue(charts)));

ParseResult parsed = root.Parse(args);
if (parsed.Errors.Count > 0)
{
    Console.Error.WriteLine(parsed.Errors[0].Message + " '--help' shows what there is.");
    return ExitCode.Usage;
}

try
{
    return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (UserException exception)
{
    Console.Error.WriteLine(exception.Message);
    return ExitCode.Usage;
}
