using System.CommandLine;
using NanoDustSwitch.Benchmarks;
using NanoDustSwitch.Benchmarks.Report;
using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Benchmarks.Studies;
using NanoDustSwitch.Benchmarks.Tools;
using NanoDustSwitch.Simulator.Errors;

Option<bool> quick = new("--quick") { Description = "In a minute or two, with errors of several percent." };
Option<string> charts = new("--charts") { Description = "Folder for the charts.", DefaultValueFactory = _ => "out" };
Command speed = new("speed", "The speed of virtual time.");
speed.SetAction(_ => SpeedCommand.Run());
Option<int> seed = new("--seed") { Description = "Seed of all chance, 1 to 100,000.", DefaultValueFactory = _ => 1 };
Command starts = new(
    "starts",
    "Whether the vacuum waits for the end of the tools' start surges, and for how long; then all that 'standing' and 'own' try.")
{
    quick, seed, charts,
};
starts.SetAction(parsed => StartsCommand.Run(parsed.GetValue(quick), Seed(parsed), Folder(parsed)));
Command standing = new("standing", "What stands on the line beside tools: wild readings, lamps, a generator.") { quick, seed };
standing.SetAction(parsed => Study(parsed, StandingStudy.Run));
Command own = new("own", "Whether the vacuum's own current on the tool's line is found, and how soon.") { quick, seed };
own.SetAction(parsed => Study(parsed, OwnCurrentStudy.Run));
Command tools = new("tools", "Whether tools are known again, and loads that need no vacuum are told from tools.") { quick, seed };
tools.SetAction(parsed => ToolsCommand.Run(parsed.GetValue(quick), Seed(parsed)));
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
root.SetAction(parsed => DetectionCommand.Run(parsed.GetValue(quick), Folder(parsed)));

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

// Made before the minutes of work, not after them.
string Folder(ParseResult parsed)
{
    string folder = parsed.GetRequiredValue(charts);
    try
    {
        Directory.CreateDirectory(folder);
        return folder;
    }
    catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
    {
        throw new UserException(
            $"'{folder}' cannot be a folder for the charts: name one that can be made and written.", exception);
    }
}

int Seed(ParseResult parsed) => parsed.GetValue(seed) is var one and >= 1 and <= 100_000
    ? one
    : throw new UserException($"--seed {parsed.GetValue(seed)} is not allowed: 1 to 100000.");

int Study(ParseResult parsed, Func<Bench, List<StudyRow>> run) => StudyTable.Print(
    BenchProgress.Show(tell => run(new Bench(parsed.GetValue(quick), [], tell, Seed(parsed)))));
