namespace NanoDustSwitch.Detection;

/// <summary>
/// A set of faults in one number, with a bit for each fault, and the one way to walk through it:
/// <code>for (int i = FaultBits.Next(bits, -1); i >= 0; i = FaultBits.Next(bits, i))</code>
/// Flash and the lines of <c>watch</c> hold such numbers.
/// </summary>
public static class FaultBits
{
    /// <summary>Gives the set of a single fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Its bit.</returns>
    public static int Of(Fault fault)
    {
        return 1 << (int)fault;
    }

    /// <summary>Finds the next fault of a set.</summary>
    /// <param name="bits">The set; bits of faults that this version does not know are passed over.</param>
    /// <param name="after">Number of the fault before; -1 to begin.</param>
    /// <returns>Number of the fault; -1 when there is none left.</returns>
    public static int Next(int bits, int after)
    {
        for (int i = after + 1; i < FaultMonitor.Count; i++)
        {
            if ((bits & (1 << i)) != 0)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Finds a fault by its place in a set, for an answer that has a row for each.</summary>
    /// <param name="bits">The set.</param>
    /// <param name="place">0 for the first.</param>
    /// <returns>Number of the fault; -1 when there are not that many.</returns>
    public static int At(int bits, int place)
    {
        int i = Next(bits, -1);
        while (i >= 0 && place-- > 0)
        {
            i = Next(bits, i);
        }

        return i;
    }
}
