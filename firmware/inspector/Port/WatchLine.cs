using System.Globalization;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>A line of the board's <c>watch</c>.</summary>
/// <param name="Seconds">Time since the boot.</param>
/// <param name="Amperes">Rms current in A.</param>
/// <param name="Swing">What the decision is made on, in A.</param>
/// <param name="StartAt">The level at which the tool counts as started, in A.</param>
/// <param name="StopBelow">The level below which it counts as stopped, in A.</param>
/// <param name="IsToolRunning">Whether the tool runs.</param>
/// <param name="IsVacuumOn">Whether the relay is closed, or the vacuum runs although it was told to open.</param>
/// <param name="IsStuck">Whether the vacuum runs with its relay told to open.</param>
/// <param name="State">The state.</param>
/// <param name="Left">Seconds until the state ends by itself; 0 where it does not.</param>
/// <param name="Faults">The faults that stand.</param>
/// <param name="Figure">The figure of the first of them.</param>
/// <param name="Hours">Run hours of the vacuum.</param>
/// <param name="Starts">Its starts.</param>
/// <param name="Known">Number of the tool that it probably is; 0 where that is not known.</param>
internal sealed record WatchLine(
    double Seconds,
    double Amperes,
    double Swing,
    double StartAt,
    double StopBelow,
    bool IsToolRunning,
    bool IsVacuumOn,
    bool IsStuck,
    VacuumState State,
    double Left,
    IReadOnlyList<Fault> Faults,
    int Figure,
    double Hours,
    int Starts,
    int Known)
{
    private static readonly int s_columns = Watch.Header.Split(',').Length;

    /// <summary>Reads a line.</summary>
    /// <param name="text">The line.</param>
    /// <returns>What it says; null when it is not whole, or no such line.</returns>
    public static WatchLine? Parse(string text)
    {
        string[] cells = text.Split(',');
        if (cells.Length != s_columns)
        {
            return null;
        }

        bool isStuck = cells[7] == StateText.Stuck;
        int state = isStuck
            ? (int)VacuumState.Fault
            : Array.FindIndex(Enum.GetValues<VacuumState>(), one => StateText.Name(one) == cells[7]);
        double[] numbers = new double[s_columns];
        for (int i = 0; i < s_columns; i++)
        {
            if (i != 7 && !double.TryParse(cells[i], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]))
            {
                return null;
            }
        }

        return state < 0 || !numbers.All(number => Math.Abs(number) <= uint.MaxValue)
            ? null
            : new WatchLine(
                numbers[0],
                numbers[1],
                numbers[2],
                numbers[3],
                numbers[4],
                cells[5] == "1",
                cells[6] == "1" || isStuck,
                isStuck,
                Enum.GetValues<VacuumState>()[state],
                numbers[8],
                Standing((int)(long)numbers[9]),
                (int)(long)numbers[10],
                numbers[11],
                (int)(long)numbers[12],
                (int)(long)numbers[13]);
    }

    /// <summary>Gets the word for how the board stands.</summary>
    public string StateName => IsStuck ? StateText.Stuck : StateText.Name(State);

    /// <summary>
    /// Says in a sentence why the vacuum is on, or why it was told off: the line does not say whether it really is.
    /// </summary>
    /// <returns>The sentence.</returns>
    public string Why() => State switch
    {
        _ when IsStuck => WhyText.VacuumRuns,
        VacuumState.On or VacuumState.RunOn or VacuumState.ByHand when !IsVacuumOn =>
            "told off for a moment: the relay rests before it closes again",
        VacuumState.Idle => $"told off: {Swing:0.00} A, starts at {StartAt:0.00} A",
        VacuumState.Starting => $"told off: the tool is starting, {Swing:0.00} A; on within {Left:0.0} s",
        VacuumState.On => $"on: {Swing:0.00} A, stops below {StopBelow:0.00} A" + (Known > 0 ? $"; tool {Known}" : ""),
        VacuumState.RunOn => $"on: no tool runs, run-on for {Left:0.0} s more",
        VacuumState.ByHand => $"on by hand for {Math.Ceiling(Left / 60):0} min more, then auto",
        VacuumState.UntilStop => "told off until the tool stops",
        VacuumState.Held => "held, told off until 'vacuum auto' or a long press",
        _ => "told off: " + (Faults.Where(fault => FaultTable.Has(fault, FaultTraits.KeepsVacuumOff)).Select(FaultText.Name)
            .FirstOrDefault() ?? "a fault"),
    };

    /// <summary>Says what is wrong, and what to do about the first of it.</summary>
    /// <returns>A sentence.</returns>
    public string FaultSentence()
    {
        if (Faults.Count == 0)
        {
            return "none";
        }

        string others = Faults.Count > 1 ? $"; also: {string.Join(", ", Faults.Skip(1).Select(FaultText.Name))}" : "";
        string seen = FirmwareText.Of(output => FaultText.Seen(output, Faults[0], Figure));
        return $"{FaultText.Name(Faults[0])}: {seen}{others}. Do: {FaultText.ToDo(Faults[0])}";
    }

    private static List<Fault> Standing(int bits)
    {
        List<Fault> faults = [];
        for (int i = FaultBits.Next(bits, -1); i >= 0; i = FaultBits.Next(bits, i))
        {
            faults.Add((Fault)i);
        }

        return faults;
    }
}
