using Spectre.Console;

namespace NanoDustSwitch.Benchmarks;

/// <summary>Shows on the terminal how far the studies are.</summary>
internal static class BenchProgress
{
    /// <summary>Runs something and shows how far it is.</summary>
    /// <typeparam name="T">What it gives.</typeparam>
    /// <param name="run">The work; it is handed whom to tell a study's name and how much of it is done, 0 to 1.</param>
    /// <returns>What it gave.</returns>
    public static T Show<T>(Func<Action<string, double>, T> run)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return console.Progress().AutoClear(true).HideCompleted(true).Start(context =>
        {
            ProgressTask? task = null;
            return run((name, part) =>
            {
                if (part == 0)
                {
                    task = context.AddTask(Markup.Escape(name), maxValue: 1);
                }

                task!.Value = part;
            });
        });
    }
}
