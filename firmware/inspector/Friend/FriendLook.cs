using System.Globalization;
using System.Text.RegularExpressions;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Board;

namespace NanoDustSwitch.Inspector.Friend;

/// <summary>What stands out in a file of <see cref="FriendFile"/>.</summary>
internal sealed partial class FriendLook
{
    private const double LeastReadings = 1000;
    private const double LongestGap = 10;
    private const double LeastOverNoise = 2;
    private const int MostEvents = 8;

    private readonly Dictionary<string, List<string>> _parts;

    /// <summary>Initializes a new instance of the <see cref="FriendLook"/> class: looks.</summary>
    /// <param name="path">The file.</param>
    public FriendLook(string path)
    {
        _parts = FriendFile.Read(path);
        LookAtStatus();
        LookAtSettings(path);
        LookAtEvents();
        LookAtRecording(path);
        if (Part(FriendFile.Sheet).Count == 0)
        {
            Findings.Add("There is no test sheet in it: type 'test' at the box, keep what it prints, then add it with --sheet.");
        }

        Findings.AddRange(
            Part(FriendFile.Sheet).Where(line => Wrong().IsMatch(line)).Select(line => $"Test sheet: {Squeezed(line)}."));
    }

    /// <summary>Gets what stands out, a sentence each.</summary>
    public List<string> Findings { get; } = [];

    /// <summary>Gets the replay of the recording with its own settings; null where there is none.</summary>
    public ReplayRun? Replay { get; private set; }

    /// <summary>Gets what helps to see the box: what it is, why it does what it does, its sheet.</summary>
    public IEnumerable<string> Background =>
        [.. Part("about"), .. Part("why"), .. Part("status"), .. Part("tools"), .. Part(FriendFile.Sheet)];

    private List<string> Part(string name) => _parts.GetValueOrDefault(name) ?? [];

    private void LookAtStatus()
    {
        string about = string.Join(' ', Part("about"));
        if (!about.Contains($" {ProductVersion.Text},", StringComparison.Ordinal))
        {
            Findings.Add($"The firmware is another version than this program's {ProductVersion.Text}: {about}");
        }

        foreach (string line in Part("status").Select(Squeezed))
        {
            if (line.StartsWith("fault ", StringComparison.Ordinal))
            {
                Findings.Add($"A fault stands: {line["fault ".Length..]}. firmware/faults.md says what to do.");
            }
            else if (Readings().Match(line) is { Success: true } readings
                && (Number(readings, "rate") < LeastReadings || Number(readings, "gap") > LongestGap))
            {
                Findings.Add($"The board reads slowly or with gaps: {line}.");
            }
            else if (line.StartsWith("troubles ", StringComparison.Ordinal) && line.Any(c => c is >= '1' and <= '9'))
            {
                Findings.Add($"Parts of the board have failed at times: {line}.");
            }
        }
    }

    private void LookAtSettings(string path)
    {
        SettingValues defaults = new();
        foreach (string line in Part("settings"))
        {
            string[] sides = line.Split("  (saved: ");
            SettingsDraft draft = new(defaults);
            HashSet<int> seen = [];
            if (SettingsTable.Find(line.Split(' ')[0]) >= 0)
            {
                SettingsFile.TakeLine(path, sides[0].Trim(), draft, seen);
            }

            foreach (SettingId id in seen.Select(number => (SettingId)number).Where(id => draft[id] != defaults[id]))
            {
                Findings.Add($"{FirmwareText.Line(id, draft[id])}; the factory's is {FirmwareText.Of(id, defaults[id])}.");
            }

            if (sides.Length > 1)
            {
                Findings.Add($"In use and not saved: {Squeezed(line)}.");
            }
        }
    }

    private void LookAtEvents()
    {
        string[] events = [.. Part("events").Where(IsTrouble).Select(Squeezed)];
        Findings.AddRange(events.TakeLast(MostEvents).Select(line => $"It has happened: {line}."));
        if (events.Length > MostEvents)
        {
            Findings.Add($"And {events.Length - MostEvents} events more of this kind.");
        }
    }

    private void LookAtRecording(string path)
    {
        if (Part(FriendFile.Recording).Count == 0)
        {
            Findings.Add("There is no recording in it.");
            return;
        }

        BoardRecording recording = BoardRecording.Parse(Part(FriendFile.Recording), path);
        Replay = new ReplayRun(recording, recording.Settings).Run(_ => { });
        Findings.Add($"The recording, {recording.Seconds:0} s: {Verdict.Of(Replay)}");
        if (Replay.StartOverQuiet < LeastOverNoise)
        {
            Findings.Add(
                $"The quiet line comes near start-at: only {Replay.StartOverQuiet:0.0} times below it. Move the sensor away from "
                + "other wires, or teach.");
        }
    }

    private static bool IsTrouble(string line) =>
        Trouble().IsMatch(line)
        || Enum.GetValues<Fault>().Any(fault => line.Contains($"  {FaultText.Name(fault)}: ", StringComparison.Ordinal));

    private static double Number(Match match, string group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static string Squeezed(string line) =>
        string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');

    [GeneratedRegex(@"^readings (?<rate>[\d.]+) a second, worst gap (?<gap>[\d.]+) ms", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Readings();

    [GeneratedRegex(
        "failed|paused|out of range|unexpected|cannot be read|came up: (?!power on|asked)",
        RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Trouble();

    [GeneratedRegex("did not|not tried|not pressed|ends here|told off|slow:", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Wrong();
}
