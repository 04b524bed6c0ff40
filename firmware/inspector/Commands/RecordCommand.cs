using System.CommandLine;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>A recording of a board at work.</summary>
internal static class RecordCommand
{
    private const double Least = 1;
    private const double Greatest = 24 * 3600;

    /// <summary>Makes the verb.</summary>
    /// <returns>The command.</returns>
    public static Command Create()
    {
        Argument<string> file = new("FILE") { Description = "Where it goes; an older recording is written over." };
        Option<string> port = PortOption.Create();
        Option<double> seconds = new("--seconds") { Description = "How long, 1 s to a day.", DefaultValueFactory = _ => 20 };
        Command command = new(
            "record",
            "Record a board at work: settings, state, every bucket, and the readings themselves now and then; 'replay' decides "
            + "again from it. Ctrl-C ends it early. firmware/recording.md describes the file.")
        {
            file, port, seconds,
        };
        command.SetAction(parsed =>
        {
            double length = parsed.GetValue(seconds);
            if (!(length >= Least && length <= Greatest))
            {
                throw new UserException($"--seconds {length} is not allowed: {Least} to {Greatest:#,0}.");
            }

            string path = parsed.GetRequiredValue(file);
            Wait.For(
                "record",
                progress => RecordSession.Run(parsed.GetRequiredValue(port), path, TimeSpan.FromSeconds(length), progress));
            RecordSession.Report(path);
            return ExitCode.Good;
        });
        return command;
    }
}
