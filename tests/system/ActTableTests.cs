using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.SystemTests;

/// <summary>An act without a row would end the first day that has it.</summary>
[TestClass]
public sealed class ActTableTests
{
    [TestMethod]
    public void Every_act_has_its_row()
    {
        foreach (DayAct act in Enum.GetValues<DayAct>())
        {
            Assert.AreNotEqual("", ActTable.Of(act).Told(new DayStep(0, act)), $"firmware/simulator/Days/ActTable.cs: {act}");
        }
    }
}
