using NanoDustSwitch.Esp32;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.BoardTests;

[TestClass]
public class LineTests : BoardTest
{
    [TestInitialize]
    public void TheChipIsHere() => Chip.Enter();

    [TestMethod]
    public void TheRelayLineDoesAsItIsTold()
    {
        Esp32Board board = new();
        foreach (bool high in new[] { true, false, true, true, false, false })
        {
            board.SetRelayLine(high);
            Assert.AreEqual(high, Chip.Relay.Level);
        }

        Assert.AreEqual(4, Chip.Relay.Changes);
    }

    // A level that is handed over is an object on the device, a toggle is none.
    [TestMethod]
    public void ABeatIsAToggleAndASecondWordOfRestIsWritten()
    {
        Esp32Board board = new();
        Chip.Calls.Clear();
        board.SetRelayLine(true);
        board.SetRelayLine(false);
        board.SetRelayLine(false);
        CollectionAssert.AreEqual(new[] { "Toggle 25", "Toggle 25", "Write 25" }, Chip.Calls);
    }

    [TestMethod]
    public void ASecondWordOfRestHelpsALineThatWentAstray()
    {
        Esp32Board board = new();
        Chip.Relay.Drive(true);
        board.SetRelayLine(false);
        Assert.IsFalse(Chip.Relay.Level);
    }

    [TestMethod]
    public void LampAndSounderDoAsTheyAreTold()
    {
        Esp32Board board = new();
        board.SetLamp(true);
        board.SetSounder(true);
        Assert.IsTrue(Chip.Pin(PinPlan.Lamp).Level);
        Assert.IsTrue(Chip.Pin(PinPlan.Sounder).Level);
        board.SetLamp(false);
        board.SetSounder(false);
        Assert.IsFalse(Chip.Pin(PinPlan.Lamp).Level);
        Assert.IsFalse(Chip.Pin(PinPlan.Sounder).Level);
    }

    [TestMethod]
    [DataRow(Chip.ButtonUp, false)]
    [DataRow(2047, false)]
    [DataRow(2046, true)]
    [DataRow(0, true)]
    public void TheButtonPullsItsLineToGround(int counts, bool isDown)
    {
        Esp32Board board = new();
        Chip.ButtonLine = counts;
        Chip.Calls.Clear();
        Assert.AreEqual(isDown, board.IsButtonDown);

        // A pin that is read in any other way is an object on the device.
        CollectionAssert.AreEqual(new[] { "ReadValue 5" }, Chip.Calls);
    }

    [TestMethod]
    public void TheFreeHeapIsAskedForWithoutMovingAnything()
    {
        Esp32Board board = new();
        Chip.Calls.Clear();
        long before = Chip.Elapsed;
        Assert.AreEqual(54_840, board.FreeHeap);
        Assert.IsLessThan(1000, Chip.Elapsed - before);
    }

    [TestMethod]
    [DataRow("FileStream.Read")]
    [DataRow("FileStream.Write")]
    public void FlashThatFailsIsThrownAndNotedEachTime(string call)
    {
        Esp32Board board = new();
        byte[] bytes = new byte[8];
        board.WriteSlot(0, bytes, 8);
        Chip.Break(call);
        for (int i = 0; i < 2; i++)
        {
            Assert.ThrowsExactly<InvalidOperationException>(() =>
            {
                board.WriteSlot(0, bytes, 8);
                board.ReadSlot(0, bytes);
            });
            Assert.AreEqual(BoardParts.Flash, board.FailedParts);
        }
    }

    [TestMethod]
    public void WithoutItsPinTheRelayCanRestAndNothingElse()
    {
        Chip.Break("OpenPin 25");
        Esp32Board board = new();
        board.SetRelayLine(false);
        Assert.ThrowsExactly<InvalidOperationException>(() => board.SetRelayLine(true));
    }

    [TestMethod]
    [DataRow("OpenPin 25", BoardParts.RelayLine)]
    [DataRow("OpenPin 26", BoardParts.Lamp)]
    [DataRow("OpenPin 27", BoardParts.Sounder)]
    [DataRow("OpenChannel 5", BoardParts.Button)]
    [DataRow("OpenChannel 6", BoardParts.ToolLine)]
    [DataRow("OpenChannel 7", BoardParts.VacuumLine)]
    [DataRow("new AdcController", BoardParts.ToolLine | BoardParts.VacuumLine | BoardParts.Button)]
    [DataRow("SetPinFunction 22", BoardParts.Serial)]
    [DataRow("SetPinFunction 23", BoardParts.Serial)]
    [DataRow("new SerialPort", BoardParts.Serial)]
    [DataRow("SerialPort.Open", BoardParts.Serial)]
    [DataRow("Directory.Exists", BoardParts.Flash | BoardParts.FlashDrive)]
    public void WhatFailsToOpenIsNotedAndAllElseIsThere(string call, BoardParts failed)
    {
        Chip.Break(call);
        Esp32Board board = new();
        Assert.AreEqual(failed, board.FailedParts);
        board.SetLamp(true);
        board.SetSounder(true);
        Chip.ButtonLine = 0;
        Assert.AreEqual(!failed.HasFlag(BoardParts.Button), board.IsButtonDown);
        Assert.AreEqual(failed != BoardParts.Lamp, Chip.Pin(PinPlan.Lamp).Level);
        Assert.AreEqual(failed != BoardParts.Sounder, Chip.Pin(PinPlan.Sounder).Level);
        Chip.Serial.Type("x");
        board.WriteSerial(new byte[1], 0, 1);
        Assert.AreEqual(failed == BoardParts.Serial ? 0 : 1, board.ReadSerial(new byte[8]));
        Assert.AreEqual(failed == BoardParts.Serial ? 0 : 1, Chip.Serial.TakeSent().Length);
    }
}
