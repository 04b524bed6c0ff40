using System;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ConvertersTests
{
    [TestMethod]
    [DataRow(4095, 806)]
    [DataRow(1023, 3226)]
    public void AConverterOnWhichASensorCanRestIsTaken(int fullScale, int microvolts)
    {
        ConverterScale scale = Converters.Of(fullScale, microvolts);
        Assert.AreEqual(fullScale, scale.FullScale);
        Assert.AreEqual(microvolts, scale.MicrovoltsACount);
    }

    // 13 to 16 bits over 3.3 V: the power of a large swing would not fit.
    [TestMethod]
    [DataRow(4096, 806)]
    [DataRow(8191, 403)]
    [DataRow(16383, 201)]
    [DataRow(32767, 101)]
    [DataRow(65535, 50)]
    public void MoreThanTwelveBitsAreRefusedWithWhatToDo(int fullScale, int microvolts)
    {
        string said = "";
        try
        {
            Converters.Of(fullScale, microvolts);
        }
        catch (ArgumentException exception)
        {
            said = exception.Message;
        }

        Assert.IsTrue(said.StartsWith("a converter of more than 12 bits: hand its readings in as 0 to 4095"), said);
    }

    // As a board that is broken may say.
    [TestMethod]
    [DataRow(0, 806)]
    [DataRow(-1, 806)]
    [DataRow(-1, -9000000)]
    [DataRow(2000, 806)]
    [DataRow(2147483647, 2147483647)]
    [DataRow(-2147483648, -2147483648)]
    [DataRow(4095, 0)]
    [DataRow(4095, -1)]
    [DataRow(4095, 1)]
    [DataRow(4095, 2147483647)]
    public void AnyOtherIsNotBelieved(int fullScale, int microvolts)
    {
        bool isBelieved = true;
        try
        {
            Converters.Of(fullScale, microvolts);
        }
        catch (ArgumentOutOfRangeException)
        {
            isBelieved = false;
        }

        Assert.IsFalse(isBelieved);
    }
}
