using System;
using System.Runtime.CompilerServices;

namespace nanoFramework.TestFramework;

/// <summary>
/// Of each member that is used every overload, so that the compiler chooses here as it does with the real library: with fewer
/// of them it would widen a number where the real ones are ambiguous.
/// </summary>
public sealed class Assert
{
    public static void AreEqual(bool expected, bool actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(byte expected, byte actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(char expected, char actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(DateTime expected, DateTime actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(double expected, double actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(float expected, float actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(int expected, int actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(long expected, long actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(object expected, object actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(sbyte expected, sbyte actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(short expected, short actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(string expected, string actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(uint expected, uint actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(ulong expected, ulong actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreEqual(ushort expected, ushort actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(bool notExpected, bool actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(byte notExpected, byte actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(char notExpected, char actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(
        DateTime notExpected, DateTime actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(double notExpected, double actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(float notExpected, float actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(int notExpected, int actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(long notExpected, long actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(object notExpected, object actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(sbyte notExpected, sbyte actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(short notExpected, short actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(string notExpected, string actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(uint notExpected, uint actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(ulong notExpected, ulong actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void AreNotEqual(ushort notExpected, ushort actual, [CallerArgumentExpression("actual")] string message = "")
    {
    }

    public static void IsFalse(bool condition, [CallerArgumentExpression("condition")] string message = "")
    {
    }

    public static void IsNotNull(object value, [CallerArgumentExpression("value")] string message = "")
    {
    }

    public static void IsNull(object value, [CallerArgumentExpression("value")] string message = "")
    {
    }

    public static void IsTrue(bool condition, [CallerArgumentExpression("condition")] string message = "")
    {
    }
}
