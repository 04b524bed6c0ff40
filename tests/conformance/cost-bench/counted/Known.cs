using System;

namespace NanoDustSwitch.CostBench.Counted;

/// <summary>Small methods whose instructions were counted by hand; the tests of the meter hold the numbers.</summary>
public static class Known
{
    private static readonly KnownShape s_square = new KnownSquare();
    private static readonly IKnownCorners s_corners = s_square;
    private static object s_box;

    // 4 to set sum and index, 1 branch; a round: 4 add, 4 count; the question 3, once more than there are rounds; the end 2.
    // 10 and 11 a round.
    public static int Loop(int n)
    {
        int sum = 0;
        for (int i = 0; i < n; i++)
        {
            sum += i;
        }

        return sum;
    }

    // 3 to ask, 2 to answer.
    public static int Branch(int n)
    {
        if (n > 5)
        {
            return 1;
        }

        return 2;
    }

    // Argument, call, argument, sum, return: 5, and what the callee takes.
    public static int Calls(int n)
    {
        return Branch(n) + n;
    }

    // Field, call, return: 3, and 2 in the square.
    public static int CallsVirtually(int n)
    {
        return s_square.Corners();
    }

    // The same through an interface.
    public static int CallsThroughInterface(int n)
    {
        return s_corners.Corners();
    }

    // Length, array; its length, conversion, return: 5.
    public static int MakesArray(int n)
    {
        return new int[n].Length;
    }

    // Value, box, field; 0, return: 5.
    public static int Boxes(int n)
    {
        s_box = n;
        return 0;
    }

    // Object, call, return: 3, and 2 in the square; 3 in its constructor, 3 in the one below, which calls that of object.
    public static int MakesObject(int n)
    {
        return new KnownSquare().Corners();
    }

    // A literal, the number's address, its text, their joining, the text's length, return: 6.
    public static int MakesText(int n)
    {
        return string.Concat("a", n.ToString()).Length;
    }

    // Argument, call, store, leave, load, return: 6, and 3 + 2 in the callee. When it throws: argument, call; pop, constant,
    // store, leave; load, return: 8, and 3 + 2 in the callee.
    public static int Catches(int n)
    {
        try
        {
            return Throws(n);
        }
        catch (Exception)
        {
            return -1;
        }
    }

    // 2 to choose, 1 branch past the cases; 2 to answer.
    public static int Chooses(int n)
    {
        switch (n)
        {
            case 0:
                return 10;
            case 1:
                return 11;
            case 2:
                return 12;
            default:
                return 13;
        }
    }

    private static int Throws(int n)
    {
        if (n > 5)
        {
            throw new Exception();
        }

        return n;
    }
}
