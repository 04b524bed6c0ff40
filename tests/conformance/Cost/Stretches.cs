namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>The stretches of time that are metered, 2,000 buckets long or more.</summary>
internal static class Stretches
{
    private const int Buckets = 2000;
    private const double Saw = 6;
    private const double Second = 3;
    private const double Lamp = 0.3;
    private const double SurgeHeight = 25;
    private const double OverRange = 60;

    // Buckets in 20 ms.
    private const int Stretch = 8;

    public static StepCosts Quiet(DeviceCode code, int readingsASecond) =>
        Metered("no tool", new MeteredSwitch(code, readingsASecond), rig => rig.Run(Buckets));

    public static StepCosts Running(DeviceCode code, int readingsASecond) =>
        Metered("a saw runs", Started(code, readingsASecond), rig => rig.Run(Buckets));

    /// <summary>Three short cuts, each with the run-on after it.</summary>
    public static StepCosts Cuts(DeviceCode code, int readingsASecond) => Metered(
        "three cuts",
        new MeteredSwitch(code, readingsASecond),
        rig => [.. Cut(rig), .. Cut(rig), .. Cut(rig)]);

    /// <summary>A lamp shines on the line, and no tool runs.</summary>
    public static StepCosts Standing(DeviceCode code, int readingsASecond)
    {
        var rig = new MeteredSwitch(code, readingsASecond);
        rig.Tool(Lamp);
        rig.Run(5 * Buckets);
        return Metered("standing load", rig, rig => rig.Run(Buckets));
    }

    /// <summary>A second tool starts beside the saw.</summary>
    public static StepCosts TwoTools(DeviceCode code, int readingsASecond)
    {
        var rig = Started(code, readingsASecond);
        rig.Tool(Saw + Second);
        return Metered("two tools", rig, rig => rig.Run(Buckets));
    }

    /// <summary>A saw runs that is known as well as another tool, so that a second one is looked for.</summary>
    public static StepCosts KnownRunning(DeviceCode code, int readingsASecond)
    {
        var rig = WithKnownTools(code, readingsASecond);
        rig.Tool(Saw);
        rig.Run(2 * Buckets);
        return Metered("a known saw runs", rig, rig => rig.Run(Buckets));
    }

    /// <summary>The other known tool starts beside the saw, runs for twenty seconds and more, and stops.</summary>
    public static StepCosts KnownTwoTools(DeviceCode code, int readingsASecond)
    {
        var rig = WithKnownTools(code, readingsASecond);
        rig.Tool(Saw);
        rig.Run(2 * Buckets);
        return Metered("two known tools", rig, rig =>
        {
            rig.Tool(Saw + Second);
            var both = rig.Run(8 * Buckets);
            rig.Tool(Saw);
            return [.. both, .. rig.Run(Buckets / 4)];
        });
    }

    /// <summary>A start whose current falls by a twentieth every 20 ms, as long as the switch waits for its end.</summary>
    public static StepCosts Surge(DeviceCode code, int readingsASecond) =>
        Metered("waiting for a surge", new MeteredSwitch(code, readingsASecond), rig =>
        {
            var steps = new List<StepCost>();
            for (var amperes = SurgeHeight; amperes > Saw; amperes -= amperes / 20)
            {
                rig.Tool(amperes);
                steps.AddRange(rig.Run(Stretch));
            }

            Assert.IsFalse(rig.IsVacuumOn, "The switch did not wait.");
            return steps;
        });

    /// <summary>A current so large that readings stand at the rails.</summary>
    public static StepCosts Clipped(DeviceCode code, int readingsASecond)
    {
        var rig = Started(code, readingsASecond);
        rig.Tool(OverRange);
        return Metered("readings at the rails", rig, rig => rig.Run(Buckets));
    }

    /// <summary>The sensor comes off and is put back, and the fault ends.</summary>
    public static StepCosts SensorOff(DeviceCode code, int readingsASecond) =>
        Metered("the sensor off and on", new MeteredSwitch(code, readingsASecond), rig =>
        {
            rig.Stand(0);
            var off = rig.Run(Buckets);
            Assert.IsTrue(rig.IsFaulted, "No fault came up.");
            rig.Tool(0);
            return [.. off, .. rig.Run(3 * Buckets)];
        });

    /// <summary>A stream of lines flows while a saw runs.</summary>
    public static StepCosts Streaming(DeviceCode code, int readingsASecond, string word)
    {
        var rig = Started(code, readingsASecond);
        rig.Type(word + "\r");
        rig.Run(Buckets);
        rig.TakeSent();
        var costs = Metered($"a saw runs, and {word}", rig, rig => rig.Run(Buckets));
        Assert.Contains("\r\n", rig.TakeSent(), StringComparison.Ordinal, $"'{word}' writes nothing.");
        return costs;
    }

    private static StepCosts Metered(string name, MeteredSwitch rig, Func<MeteredSwitch, IReadOnlyList<StepCost>> run)
    {
        Meter.Begin(rig.Code.Methods);
        var steps = run(rig);
        return new StepCosts(name, steps, Meter.Methods);
    }

    private static MeteredSwitch Started(DeviceCode code, int readingsASecond)
    {
        var rig = new MeteredSwitch(code, readingsASecond);
        rig.Tool(Saw);
        rig.Run(Buckets);
        Assert.IsTrue(rig.IsVacuumOn, "The saw did not start the vacuum.");
        return rig;
    }

    private static MeteredSwitch WithKnownTools(DeviceCode code, int readingsASecond)
    {
        var rig = new MeteredSwitch(code, readingsASecond);
        for (var i = 0; i < 3; i++)
        {
            foreach (var amperes in new[] { Saw, Second })
            {
                rig.Tool(amperes);
                rig.Run(2 * Buckets);
                rig.Tool(0);
                rig.Run(3 * Buckets);
                Assert.IsFalse(rig.IsVacuumOn, "The vacuum did not stop.");
            }
        }

        return rig;
    }

    private static StepCost[] Cut(MeteredSwitch rig)
    {
        rig.Tool(Saw);
        var run = rig.Run(Buckets / 2);
        Assert.IsTrue(rig.IsVacuumOn, "The saw did not start the vacuum.");
        rig.Tool(0);
        StepCost[] all = [.. run, .. rig.Run(2 * Buckets)];
        Assert.IsFalse(rig.IsVacuumOn, "The vacuum did not stop.");
        return all;
    }
}
