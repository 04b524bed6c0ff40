using Spectre.Console;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>Shows how far something has come that takes a while; to a terminal only.</summary>
internal static class Wait
{
    /// <summary>Does it.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="work">The work; it tells the part that is done, 0 to 1.</param>
    public static void For(string name, Action<Action<double>> work)
    {
        if (Console.IsOutputRedirected)
        {
            work(_ => { });
            return;
        }

        AnsiConsole.Progress().AutoClear(true).Start(context =>
        {
            ProgressTask task = context.AddTask(name, maxValue: 1);
            work(part => task.Value = part);
        });
    }
}
