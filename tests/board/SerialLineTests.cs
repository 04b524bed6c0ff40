using System.Text;
using NanoDustSwitch.Esp32;

namespace NanoDustSwitch.BoardTests;

[TestClass]
public class SerialLineTests : BoardTest
{
    private readonly byte[] _buffer = new byte[32];

    [TestInitialize]
    public void TheChipIsHere() => Chip.Enter();

    [TestMethod]
    public void NothingHasComeAndNothingIsWaitedFor()
    {
        SerialLine line = new();
        long before = Chip.Elapsed;
        Assert.AreEqual(0, line.Read(_buffer));
        Assert.IsLessThan(100, Chip.Elapsed - before);
        Assert.DoesNotContain("SerialPort.Read", Chip.Calls);
    }

    [TestMethod]
    public void WhatHasComeIsReadAsFarAsTheBufferGoes()
    {
        SerialLine line = new();
        Chip.Serial.Type("0123456789012345678901234567890123456789");
        Assert.AreEqual(32, line.Read(_buffer));
        Assert.AreEqual(8, line.Read(_buffer));
        Assert.AreEqual("23456789", Encoding.ASCII.GetString(_buffer, 0, 8));
    }

    // A line of settings is pasted as a whole; by itself the port would hold 256 bytes and then flush all of them.
    [TestMethod]
    public void AThousandBytesAtOnceAreNotLost()
    {
        SerialLine line = new();
        Chip.Serial.Type(new string('x', 1000));
        int count = 0;
        for (int read = line.Read(_buffer); read > 0; read = line.Read(_buffer))
        {
            count += read;
        }

        Assert.AreEqual(1000, count);
    }

    [TestMethod]
    public void APieceIsSentAsItIs()
    {
        SerialLine line = new();
        line.Write(Encoding.ASCII.GetBytes("..hello.."), 2, 5);
        Assert.AreEqual("hello", Chip.Serial.TakeSent());
    }

    [TestMethod]
    public void ALineThatTakesNothingIsGivenUpBeforeTheRelayDrops()
    {
        SerialLine line = new();
        Chip.Serial.IsStuck = true;
        line.Write(new byte[120], 0, 120);
        long before = Chip.Elapsed;
        Assert.ThrowsExactly<TimeoutException>(() => line.Write(new byte[120], 0, 120));
        Assert.IsLessThan(100000, Chip.Elapsed - before);
    }

    [TestMethod]
    public void AfterAFailureTenWritesAreForgotten()
    {
        SerialLine line = new();
        Chip.Break("SerialPort.Write", 1);
        Assert.ThrowsExactly<InvalidOperationException>(() => line.Write(new byte[1], 0, 1));
        for (int i = 0; i < 10; i++)
        {
            line.Write(new byte[1], 0, 1);
            Assert.AreEqual("", Chip.Serial.TakeSent());
        }

        line.Write(new byte[1], 0, 1);
        line.Write(new byte[1], 0, 1);
        Assert.AreEqual(2, Chip.Serial.TakeSent().Length);
    }
}
