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
    [DataRow(65535, 76)]
    public void AConverterOnWhichASensorCanRestIsTaken(int fullScale, int microvolts)
    {
        ConverterScale scale = Converters.Of(fullScale, microvolts);
        Assert.AreEqual(fullScale, scale.FullScale);
        Assert.AreEqual(microvolts, scale.MicrovoltsACount);
    }

    // As a board that is broken may say.
    [TestMethod]
    [DataRow(0, 806)]
    [DataRow(-1, 806)]
    [DataRow(-1, -9000000)]
    [DataRow(2000, 806)]
    [DataRow(65536, 806)]
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
