using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>
/// A day of a random shop that the board itself records, from a random moment on: its tools, a person at the button, a sensor
/// that comes out, a noisy spell, at ideal or at the board's pace.
/// </summary>
internal sealed class RecordedDay
{
    private readonly List<Decision> _board = [];
    private readonly List<Decision> _replayed = [];

    /// <summary>Runs and replays a day.</summary>
    /// <param name="seed">Its seed.</param>
    /// <param name="minutes">How much of its ten minutes.</param>
    public RecordedDay(int seed, double minutes)
    {
        Random random = new(seed);
        RandomShop shop = new(seed);
        shop.DrawUse([.. shop.Day.Tools.Select(tool => tool.Name)]);
        Day day = shop.Day;
        day.Shop.HasVacuumSensor = random.Next(3) == 0;
        long end = (long)(minutes * 60e6);
        day.Steps = [.. day.Steps.Concat(Troubles(random, end)).OrderBy(step => step.At)];
        (_, Person person, Rig rig) = ShopRig.Build(day, seed);
        rig.RunUntil(2_000_000);
        rig.Ask(shop.Gain);
        rig.Ask("stop-below 0.02");
        rig.Ask($"start-at {random.Next(250, 900)} mA");
        rig.Ask($"stop-below {random.Next(100, 240)} mA");
        rig.Ask($"run-on {random.Next(0, 12)}");
        rig.Ask(day.Shop.HasVacuumSensor ? "vacuum-turns 1" : "confirm 2");
        rig.RunUntil(2_000_000 + random.Next(20_000_000));
        string sent = rig.Record(() =>
        {
            while (rig.Board.ShopTime < end)
            {
                rig.Board.IsButtonDown = person.IsPressing(rig.Board.ShopTime);
                rig.Step();
                _board.Add(Decision.Of(rig.Switch.BucketEnd, rig.Switch.Core));
            }
        });
        Recording = BoardRecording.Parse(sent.Split('\n'), $"day {seed}");
        Recording.Replay((at, core) => _replayed.Add(Decision.Of(at, core)));
        Name = shop.ToString();
    }

    /// <summary>Gets the shop in words.</summary>
    public string Name { get; }

    /// <summary>Gets the recording.</summary>
    public BoardRecording Recording { get; }

    /// <summary>Gets the number of buckets that were replayed.</summary>
    public int Buckets => _replayed.Count;

    /// <summary>Gets the number of buckets of the day.</summary>
    public int BoardBuckets => _board.Count;

    /// <summary>Gets the number of the vacuum's starts in the replay.</summary>
    public int Starts => _replayed.Zip(_replayed.Skip(1)).Count(pair => !pair.First.IsClosed && pair.Second.IsClosed);

    /// <summary>Gets the number of buckets in which a fault was on.</summary>
    public int Faulty => _replayed.Count(decision => decision.Faults != 0);

    /// <summary>Finds the first bucket that was decided otherwise.</summary>
    /// <returns>What was and what should have been; empty where there is none.</returns>
    public string FirstDifference()
    {
        int first = _board.FindIndex(decision => decision.End == _replayed[0].End);
        for (int i = 0; i < _replayed.Count && first + i < _board.Count; i++)
        {
            if (first < 0 || _board[first + i] != _replayed[i])
            {
                return $"{Name}{Environment.NewLine}bucket {i}: board {(first < 0 ? null : _board[first + i])}, replay "
                    + $"{_replayed[i]}";
            }
        }

        return "";
    }

    private static IEnumerable<DayStep> Troubles(Random random, long end)
    {
        (DayAct, DayAct)[] pairs =
        [
            (DayAct.SensorOut, DayAct.SensorIn),
            (DayAct.ConverterFreezes, DayAct.ConverterMends),
            (DayAct.ConverterFails, DayAct.ConverterMends),
        ];
        foreach ((DayAct act, DayAct other) in pairs)
        {
            long at = random.NextInt64(end);
            yield return new DayStep(at, act);
            yield return new DayStep(at + random.Next(100_000, 4_000_000), other);
        }

        for (int i = 0; i < 3; i++)
        {
            yield return new DayStep(random.NextInt64(end), DayAct.Press, Value: random.Next(3) == 0 ? 2.5 : 0.2);
        }

        yield return new DayStep(random.NextInt64(end), DayAct.Arc, Seconds: 0.2);
    }
}
