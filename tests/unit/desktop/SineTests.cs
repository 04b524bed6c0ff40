using System;

namespace NanoDustSwitch.UnitTests;

// The tests' own sine against the one of .NET's library.
[TestClass]
public class SineTests
{
    [TestMethod]
    public void ItIsTheLibrarysSine()
    {
        for (int i = -5000; i <= 5000; i++)
        {
            double turns = i / 997.0;
            Assert.AreEqual(Math.Sin(2 * Math.PI * turns), Sine.Of(turns), 1e-12);
        }
    }
}
