using NanoDustSwitch.Esp32;

namespace NanoDustSwitch.BoardTests;

[TestClass]
public class OrderTests : BoardTest
{
    [TestMethod]
    public void TheRelayLineRestsBeforeAnythingElse()
    {
        Boot();
        Assert.AreEqual("new GpioController", Chip.Calls[0]);
        Assert.AreEqual($"OpenPin {PinPlan.Relay}", Chip.Calls[1]);
        Assert.IsTrue(Chip.Relay.IsOutput);
        Assert.IsFalse(Chip.Relay.Level);
        Assert.AreEqual(0, Chip.Relay.Changes);
    }

    [TestMethod]
    public void AllPartsAreOpenBeforeTheFirstFileIsTouched()
    {
        Boot();
        string[] parts =
        [
            $"OpenPin {PinPlan.Lamp}", $"OpenPin {PinPlan.Sounder}", "SerialPort.Open",
            $"OpenChannel {PinPlan.ToolChannel}", $"OpenChannel {PinPlan.VacuumChannel}", $"OpenChannel {PinPlan.ButtonChannel}",
        ];
        int firstFile = Chip.Calls.FindIndex(call => call.StartsWith("File", StringComparison.Ordinal));
        foreach (string part in parts)
        {
            Assert.IsInRange(2, firstFile - 1, Chip.Calls.IndexOf(part), part);
        }
    }

    [TestMethod]
    public void ThePortGetsItsPinsBeforeItIsOpened()
    {
        Boot();
        int open = Chip.Calls.IndexOf("SerialPort.Open");
        Assert.IsInRange(1, open, Chip.Calls.IndexOf($"SetPinFunction {PinPlan.SerialSend} COM2_TX"));
        Assert.IsInRange(1, open, Chip.Calls.IndexOf($"SetPinFunction {PinPlan.SerialReceive} COM2_RX"));
    }

    [TestMethod]
    public void EveryPinIsOpenedOnce()
    {
        Boot();
        string[] opened = [.. Chip.Calls.Where(call => call.StartsWith("OpenPin", StringComparison.Ordinal))];
        Assert.HasCount(3, opened);
        CollectionAssert.AllItemsAreUnique(opened);
    }
}
