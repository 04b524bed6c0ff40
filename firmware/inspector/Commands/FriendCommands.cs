using System.CommandLine;
using NanoDustSwitch.Inspector.Friend;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Report;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Pages;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>Help over a distance: one file with all that a board can tell of itself, and what stands out in it.</summary>
internal static class FriendCommands
{
    private static readonly TimeSpan s_recorded = TimeSpan.FromSeconds(20);

    /// <summary>Makes the verb that writes the file.</summary>
    /// <returns>The command.</returns>
    public static Command CreateCollect()
    {
        Argument<string> file = new("FILE") { Description = "Where it goes; an older one is written over." };
        Option<string> port = PortOption.Create();
        Option<string?> sheet = new("--sheet") { Description = "A file with what 'test' printed at the board's console." };
        Command command = new(
            "collect",
            "Write one file to send to somebody who helps: what the board says of itself, its settings and events, the sheet of "
            + "'test' and twenty seconds of recording. Run the tool in question meanwhile.")
        {
            file, port, sheet,
        };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            Wait.For(
                "collect",
                progress => FriendFile.Write(
                    parsed.GetRequiredValue(port), path, parsed.GetValue(sheet), s_recorded, progress));
            Console.WriteLine($"{path}: send this file; 'look {path}' shows what stands out in it.");
            return ExitCode.Good;
        });
        return command;
    }

    /// <summary>Makes the verb that looks at the file.</summary>
    /// <returns>The command.</returns>
    public static Command CreateLook()
    {
        Argument<string> file = new("FILE") { Description = "A file of 'collect'." };
        Option<string?> report = new("--report") { Description = "Write a page about it to this HTML file." };
        Command command = new("look", "Say in a page what stands out in a file of 'collect'.") { file, report };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            FriendLook look = new(path);
            Console.WriteLine($"What stands out in {path}:");
            look.Findings.ForEach(one => Console.WriteLine($"- {one}"));
            Console.WriteLine();
            foreach (string line in look.Background)
            {
                Console.WriteLine(line);
            }

            if (parsed.GetValue(report) is { } html)
            {
                HtmlPage page = new($"What stands out in {Path.GetFileName(path)}");
                page.AddList(look.Findings);
                page.AddLines(look.Background);
                if (look.Replay is { } run)
                {
                    ReportPage.AddReplay(page, [new SettingChoice("as recorded", run.Settings)], [run]);
                }

                NamedFile.Write(html, page.ToString(), "--report ");
                Console.WriteLine($"report: {html}");
            }

            return ExitCode.Good;
        });
        return command;
    }
}
