using System.Globalization;
using System.Text;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.SystemTests.Abuse;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// A button and a console are pressed and typed at random, tools and plugs go in and out, the contact welds now and then, and the
/// board collects for 20 to 400 ms: 100 shop hours with DUST_ABUSE at "all". After each spell of it the switch has to be of use.
/// </summary>
[TestClass]
public sealed class RandomHandsTests
{
    private const int Hours = 100;
    private const double SampleHours = 0.5;
    private const long ASecond = 1_000_000;
    private const long AnHour = 3600 * ASecond;

    private static readonly string[] s_lines =
    [
        "hold", "hold", "vacuum on", "vacuum off", "vacuum auto", "clear", "teach", "yes", "no", "status", "why", "save",
        "events", "restart\ryes", "watch", "record", "test\ryes", "details",
    ];

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void After_any_pressing_and_typing_a_hold_is_kept_off_means_off_and_the_next_start_works()
    {
        double hours = AbusePart.Every == 0 ? SampleHours : Math.Max(1, Hours / AbusePart.Every);
        int parts = Math.Max(2, (int)hours);
        StringBuilder wrongs = new();
        int spells = 0;
        int holds = 0;
        Parallel.For(0, parts, part =>
        {
            Random random = new(part);
            InjectedRig rig = new(Shop(), part);
            Witness witness = new(rig);
            witness.Run(4 * ASecond);
            while (rig.Time < hours * AnHour / parts)
            {
                Settle(witness);
                int seed = random.Next();
                witness = new Witness(rig);
                Play(rig, witness, new Random(seed));
                string verdicts = Judge(rig, witness, ref holds);
                Interlocked.Increment(ref spells);
                if (verdicts.Length > 0)
                {
                    lock (wrongs)
                    {
                        wrongs.AppendLine(CultureInfo.InvariantCulture, $"{verdicts}: part {part}, before {rig.Time / 1e6:0} s");
                    }
                }
            }
        });

        TestContext.WriteLine($"{hours} shop hours, {spells} spells, {holds} holds\n{wrongs}");
        Assert.AreNotEqual(0, holds);
        Assert.AreEqual(0, wrongs.Length, wrongs.ToString());
    }

    private static Day Shop() => new()
    {
        Shop = new ShopSpecification { HasVacuumSensor = true },
        Tools = [ShortDay.Tool(ToolKind.Universal, 6)],
        Pace = new Pace(2000, 0, new BoardCosts { LeastCollectionMilliseconds = 20, MostCollectionMilliseconds = 400 }),
    };

    private static void Settle(Witness witness)
    {
        foreach (string line in new[] { "\u0003", "vacuum-turns 0", "defaults", "yes", "vacuum-turns 1", "clear", "vacuum auto" })
        {
            witness.Ask(line);
            witness.Run(ASecond / 2);
        }
    }

    private static void Play(InjectedRig rig, Witness witness, Random random)
    {
        AbusiveTyping typing = new(random);
        for (long end = rig.Time + random.Next(5, 120) * ASecond; rig.Time < end;)
        {
            switch (random.Next(40))
            {
                case 0:
                    rig.Shop.Relay.SetFault(rig.Time, RelayFault.Welded);
                    break;
                case 1 or 2:
                    rig.Shop.Relay.SetFault(rig.Time, RelayFault.None);
                    break;
                case 3:
                    rig.Replug();
                    break;
                case < 10:
                    rig.Do("+saw");
                    break;
                case < 16:
                    rig.Do("-saw");
                    break;
                case < 22:
                    rig.Do("+button");
                    break;
                case < 30:
                    rig.Do("-button");
                    break;
                case < 36:
                    rig.Do(s_lines[random.Next(s_lines.Length)]);
                    break;
                default:
                    rig.Type(typing.Next());
                    break;
            }

            witness.Run((long)(Math.Pow(random.NextDouble(), 3) * 4 * ASecond));
        }
    }

    private static string Judge(InjectedRig rig, Witness witness, ref int holds)
    {
        List<Verdict> verdicts = [];
        Aftermath aftermath = new(rig, witness);
        witness.Ask("");
        witness.Run(2 * ASecond);
        if (aftermath.IsSaidHeld())
        {
            Interlocked.Increment(ref holds);
            if (!aftermath.IsHoldKept())
            {
                verdicts.Add(Verdict.HoldLost);
            }
        }

        if (witness.FalseOff is not null && witness.Ask("vacuum-turns").Contains("vacuum-turns 1", StringComparison.Ordinal))
        {
            verdicts.Add(Verdict.SaidOff);
        }

        Settle(witness);
        verdicts.Add(aftermath.NextStart());
        verdicts.AddRange(aftermath.IsRelayHeld ? [Verdict.RelayHeld] : []);
        return string.Join(", ", verdicts.Intersect(InjectionTally.Failures));
    }
}
