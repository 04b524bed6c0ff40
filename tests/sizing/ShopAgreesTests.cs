using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.SizingTests;

/// <summary>The verdict on starts against the virtual shop itself, whose own breakers trip while the firmware runs.</summary>
[TestClass]
public sealed class ShopAgreesTests
{
    private const string Rest = "--cord 2m/12AWG --sensor transformer-100A";

    [TestMethod]
    [DataRow("--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A")]
    [DataRow("--vacuum 1000W --tool 2000W --supply 230V/50Hz --breaker B16 --plug EU16")]
    [DataRow("--vacuum 1000W --tool 2000W --supply 230V/50Hz --breaker C16 --plug EU16")]
    [DataRow("--vacuum 1000W --tool 800W --supply 230V/50Hz --breaker B10 --plug EU16")]
    [DataRow("--vacuum 1500W --tool 1200W/universal --supply 230V/50Hz --breaker B10 --plug EU16")]
    [DataRow("--vacuum 9A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A")]
    public void Breakers_trip_in_the_shop_when_the_program_says_so(string line)
    {
        Judged judged = new($"{line} {Rest}");
        Order order = judged.Order;
        foreach (bool withDelay in new[] { true, false })
        {
            foreach (bool isSoon in new[] { true, false })
            {
                TrialShop shop = new(order, withBreakers: true);
                Breaker breaker = shop.Shop.Wiring.FindCircuit(TrialShop.ToolCircuit).Breaker;
                breaker.InstantaneousMultiple = isSoon ? Breakers.Of(breaker.Curve).From : Breakers.Of(breaker.Curve).To;
                shop.Type([.. judged.Judgement.Lines, .. withDelay ? Array.Empty<string>() : ["start-delay 0"]]);
                shop.Run(2);
                long begin = shop.Now;
                shop.Tool.Start(begin);
                shop.Run(StartCourse.Seconds);

                BreakerTrial trial = new(order.ToolCircuit, StartJudge.ToolOf(judged.Trials.Start(order, 1, withDelay)));
                double said = isSoon ? trial.SoonTrip : trial.LateTrip;
                double tripped = breaker.IsTripped ? (breaker.TrippedAt - begin) * 1e-6 : double.PositiveInfinity;
                if (said < StartCourse.Seconds)
                {
                    Assert.AreEqual(said, tripped, 0.03, $"delay {withDelay}, soon {isSoon}");
                }
                else
                {
                    Assert.IsFalse(breaker.IsTripped, $"delay {withDelay}, soon {isSoon}: tripped after {tripped} s");
                }
            }
        }
    }

    [TestMethod]
    public void The_delay_makes_the_difference_for_some_breakers()
    {
        // Else the test above would agree about nothing: at once it trips, after the surge it holds.
        Judged judged = new($"--vacuum 1000W --tool 800W --supply 230V/50Hz --breaker B10 --plug EU16 {Rest}");
        Assert.IsTrue(
            new BreakerTrial(judged.Order.ToolCircuit, StartJudge.ToolOf(judged.Trials.Start(judged.Order, 1, true))).Holds
            != new BreakerTrial(judged.Order.ToolCircuit, StartJudge.ToolOf(judged.Trials.Start(judged.Order, 1, false))).Holds);
    }

    [TestMethod]
    public void A_hall_sensor_clips_where_its_model_is_told_to()
    {
        Order order = Judged.OrderOf("--vacuum 5A --tool 12A --supply 120V/60Hz --breaker 15A --cord 2m/14AWG --sensor hall-5A");
        Assert.AreEqual(2500.0 / 185, new TrialShop(order).Shop.Sensor.LimitAmperes, 1e-9);
    }
}
