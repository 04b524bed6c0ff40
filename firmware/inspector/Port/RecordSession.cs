using System.Diagnostics;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>Writes what a board sends after <c>record</c> into a file, while the switch goes on working.</summary>
internal static class RecordSession
{
    private static readonly TimeSpan s_wait = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan s_silence = TimeSpan.FromSeconds(3);

    /// <summary>Records.</summary>
    /// <param name="port">The port.</param>
    /// <param name="path">The file.</param>
    /// <param name="length">How long, from the first bucket on.</param>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    public static void Run(string port, string path, TimeSpan length, Action<double> progress)
    {
        using EndSignals signals = new();
        using BoardConsole console = BoardConsole.Connect(port);
        if (console.IsVacuumStuck)
        {
            Console.Error.WriteLine(WhyText.VacuumRuns);
        }

        console.Begin("record");
        string header = console.ReadLine(s_silence) ?? "";
        if (!header.StartsWith($"record {Recorder.Version} ", StringComparison.Ordinal))
        {
            throw new UserException(
                $"The board at {port} does not record as this program reads it; use the program that came with its firmware.");
        }

        // Only now: a board that is not there must not cost an older recording.
        using (StreamWriter file = new(NamedFile.Create(path)))
        {
            file.NewLine = "\n";
            file.WriteLine(header);
            Copy(console, file, path, length, signals, progress);
        }
    }

    private static void Copy(
        BoardConsole console, StreamWriter file, string path, TimeSpan length, EndSignals signals, Action<double> progress)
    {
        long begin = 0;
        long last = Stopwatch.GetTimestamp();
        try
        {
            while (!signals.HaveCome && (begin == 0 || Stopwatch.GetElapsedTime(begin) < length))
            {
                if (console.ReadLine(s_wait) is { } line)
                {
                    file.WriteLine(line);
                    progress(begin == 0 ? 0 : Stopwatch.GetElapsedTime(begin) / length);
                    last = Stopwatch.GetTimestamp();
                    begin = begin == 0 && line.StartsWith("buckets ", StringComparison.Ordinal) ? last : begin;
                    if (line == Recorder.Overrun)
                    {
                        throw new UserException(
                            $"The line to {console.Name} was too slow for the recording; {path} holds what came until then.");
                    }
                }
                else if (Stopwatch.GetElapsedTime(last) > s_silence)
                {
                    throw new PortLostException($"The board at {console.Name} has fallen silent.");
                }
            }

            foreach (string line in console.End())
            {
                file.WriteLine(line);
            }
        }
        catch (PortLostException exception)
        {
            throw new UserException($"{exception.Message} {path} holds what came until then.", exception);
        }
    }

    /// <summary>Says what is in a recording.</summary>
    /// <param name="path">The file.</param>
    public static void Report(string path)
    {
        BoardRecording recording = BoardRecording.Parse(File.ReadLines(path), path);
        long first = 0;
        long end = 0;
        int running = 0;
        int buckets = recording.Replay((time, core) =>
        {
            first = first == 0 ? time : first;
            end = time;
            running += core.IsToolRunning ? 1 : 0;
        });
        double seconds = (end - first) / 1e6;
        Console.WriteLine(
            $"{path}: {buckets:#,0} buckets in {seconds:0.0} s, {recording.Bursts.Count} bursts of readings; "
            + $"a tool ran for {(buckets == 0 ? 0 : running * seconds / buckets):0.0} s of it.");
    }
}
