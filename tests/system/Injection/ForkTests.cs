using System.Reflection;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>What the injection stands on: the minute does what it says, and a copy goes on as the original does.</summary>
[TestClass]
public sealed class ForkTests
{
    private const long ASecond = 1_000_000;

    [TestMethod]
    public void The_minute_starts_stops_teaches_saves_watches_holds_and_restarts()
    {
        InjectedRig rig = new(Scripts.Minute());
        List<string> states = [];
        while (rig.Time < 60e6)
        {
            rig.Step();
            string state = rig.Switch?.Core.Vacuum.State.ToString() ?? "dark";
            if (states.Count == 0 || states[^1] != state)
            {
                states.Add(state);
            }
        }

        string said = rig.TakeSaid();
        string[] parts =
        [
            "Saved.", "The vacuum alone shows", "Set and saved.", "seconds,amperes", "0 serial, 0 panel, 0 flash",
            "boot 2. Type help.",
        ];
        foreach (string part in parts)
        {
            Assert.Contains(part, said, StringComparison.Ordinal);
        }

        Assert.IsEmpty(
            Enum.GetNames<VacuumState>().Except(states).Except([nameof(VacuumState.Fault)]), string.Join(' ', states));
    }

    [TestMethod]
    [DataRow(0.5)]
    [DataRow(12.3)]
    [DataRow(33.3)]
    public void A_copy_goes_on_as_the_original_and_leaves_it_alone(double seconds)
    {
        InjectedRig rig = new(Scripts.Minute());
        rig.Run((long)(seconds * 1e6));
        InjectedRig first = DeepCopy.Of(rig);
        InjectedRig second = DeepCopy.Of(rig);
        first.Run(5 * ASecond);
        rig.Run(5 * ASecond);
        second.Run(5 * ASecond);
        string said = rig.TakeSaid();
        Assert.AreEqual(said, first.TakeSaid());
        Assert.AreEqual(said, second.TakeSaid());
        Assert.AreEqual(rig.Time, first.Time);
        Assert.AreEqual(rig.Switch!.Core.Swing, first.Switch!.Core.Swing);
        Assert.AreEqual(rig.Switch!.Core.Swing, second.Switch!.Core.Swing);
        Assert.AreEqual(rig.Shop.VacuumAmperes, second.Shop.VacuumAmperes);
        Assert.AreNotSame(rig.Switch!.Core, first.Switch!.Core);
    }

    // What a copy shares with its original must never change.
    [TestMethod]
    [DataRow(typeof(DetectionCore))]
    [DataRow(typeof(Switch))]
    [DataRow(typeof(VirtualShop))]
    public void Nothing_that_changes_is_kept_in_static_fields(Type of)
    {
        FieldInfo[] fields = [.. of.Assembly.GetTypes()
            .Where(type => !type.Name.Contains('<', StringComparison.Ordinal))
            .SelectMany(type => type.GetFields(
                BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(field => !field.IsInitOnly && !field.IsLiteral && !field.Name.Contains('<', StringComparison.Ordinal))];
        Assert.IsEmpty(fields, string.Join(' ', fields.Select(field => $"{field.DeclaringType}.{field.Name}")));
    }
}
