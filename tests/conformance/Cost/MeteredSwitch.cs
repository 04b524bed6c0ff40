namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>A switch whose steps are metered, at a board that takes readings at one rate.</summary>
internal sealed class MeteredSwitch
{
    private readonly DeviceCode _code;
    private readonly int _readingMicroseconds;
    private readonly Action _step;

    public MeteredSwitch(DeviceCode code, int readingsASecond)
    {
        _code = code;
        _readingMicroseconds = 1_000_000 / readingsASecond;
        _step = code.Bench<Action>("SwitchRun", "Step");
        Meter.Begin(code.Methods);
        code.Bench<Action<int[], int>>("SwitchRun", "Boot")(Wave(0), _readingMicroseconds);

        // It greets and writes to flash that it came up.
        Run(2000);
        TakeSent();
    }

    public DeviceCode Code => _code;

    public bool IsVacuumOn => _code.Bench<Func<bool>>("SwitchRun", "IsVacuumOn")();

    public bool IsFaulted => _code.Bench<Func<bool>>("SwitchRun", "IsFaulted")();

    /// <summary>A tool draws a current from now on.</summary>
    public void Tool(double amperes) => Line(Wave(amperes));

    /// <summary>The line stands at one reading from now on.</summary>
    public void Stand(int reading) => Line([reading]);

    public void Type(string text) => _code.Bench<Action<string>>("SwitchRun", "Type")(text);

    public string TakeSent() => _code.Bench<Func<string>>("SwitchRun", "TakeSent")();

    /// <summary>Does steps.</summary>
    /// <returns>What each of them cost.</returns>
    public IReadOnlyList<StepCost> Run(int steps) => [.. Enumerable.Range(0, steps).Select(_ => Step())];

    /// <summary>Does a step.</summary>
    /// <returns>What it cost.</returns>
    public StepCost Step()
    {
        var before = Read();
        _step();
        var after = Read();
        return new StepCost(
            after.All - before.All,
            after.Fill - before.Fill,
            after.Core - before.Core,
            after.Heartbeat - before.Heartbeat,
            after.Served - before.Served);
    }

    private static StepCost Read() =>
        new(
            Meter.Total,
            Meter.Method("BucketFiller.Fill").Whole.Instructions,
            Meter.Method("DetectionCore.Accept").Whole.Instructions,
            Meter.Method("Heartbeat.Update").Whole.Instructions,
            Meter.Method("Switch.ServeTheRest").Whole + Meter.Method("Switch.ShowBucket").Whole);

    private int[] Wave(double amperes) => ToolWave.Tool(amperes, _readingMicroseconds, 1);

    private void Line(int[] wave) => _code.Bench<Action<int[]>>("SwitchRun", "Line")(wave);
}
