using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class IntegerMathTests
{
    // The definition of a whole square root: its square is not above the number, the next one's is.
    [TestMethod]
    public void ItIsTheGreatestWhoseSquareIsNotAbove()
    {
        for (int i = 1; i < 3000; i++)
        {
            long value = (long)i * i * 7;
            long root = IntegerMath.SquareRoot(value, i);
            Assert.IsTrue(root * root <= value);
            Assert.IsTrue((root + 1) * (root + 1) > value);
        }
    }

    [TestMethod]
    [DataRow(0L, 0)]
    [DataRow(-5L, 0)]
    [DataRow(1L, 1)]
    [DataRow(3L, 1)]
    [DataRow(4L, 2)]
    [DataRow(99L, 9)]
    [DataRow(100L, 10)]
    [DataRow(4292870400L, 65520)]
    [DataRow(4611686014132420609L, 2147483647)]
    public void KnownRoots(long value, int root)
    {
        Assert.AreEqual(root, IntegerMath.SquareRoot(value, 1));
        Assert.AreEqual(root, IntegerMath.SquareRoot(value, root));
    }

    // Just below a square, at it, and just above, from guesses on either side.
    [TestMethod]
    public void BesideSquaresItIsExactFromAnyGuess()
    {
        for (long root = 1; root < 1000000000; root = (root * 3 / 2) + 1)
        {
            for (int i = 0; i < 5; i++)
            {
                int guess = (int)(i == 0 ? 1 : i == 1 ? root / 2 : i == 2 ? root : i == 3 ? root + 1 : 2147483647);
                Assert.AreEqual((int)root - 1, IntegerMath.SquareRoot((root * root) - 1, guess));
                Assert.AreEqual((int)root, IntegerMath.SquareRoot(root * root, guess));
                Assert.AreEqual((int)root, IntegerMath.SquareRoot((root * root) + (2 * root), guess));
            }
        }
    }

    [TestMethod]
    [DataRow(0)]
    [DataRow(-1)]
    [DataRow(1)]
    [DataRow(12345)]
    [DataRow(2147483647)]
    [DataRow(-2147483648)]
    public void AnyGuessIsSafe(int guess)
    {
        Assert.AreEqual(1414, IntegerMath.SquareRoot(2000000, guess));
    }
}
