namespace NanoDustSwitch.Firmware;

/// <summary>Finds out what a person has most likely meant. Console and programs on a PC ask it.</summary>
public static class NearMiss
{
    /// <summary>
    /// Tells whether a name was typed with one slip of the finger: a letter wrong, missing or too many, or two
    /// neighbours swapped.
    /// </summary>
    /// <param name="known">The name.</param>
    /// <param name="typed">What was typed.</param>
    /// <returns>True when it is the name, or one slip away.</returns>
    public static bool IsOneSlip(string known, string typed)
    {
        // What is left of both without the same beginning and the same end.
        int from = 0;
        int ofKnown = known.Length;
        int ofTyped = typed.Length;
        while (ofKnown > 0 && ofTyped > 0 && known[from] == typed[from])
        {
            from++;
            ofKnown--;
            ofTyped--;
        }

        while (ofKnown > 0 && ofTyped > 0 && known[from + ofKnown - 1] == typed[from + ofTyped - 1])
        {
            ofKnown--;
            ofTyped--;
        }

        return (ofKnown <= 1 && ofTyped <= 1)
            || (ofKnown == 2 && ofTyped == 2 && known[from] == typed[from + 1] && known[from + 1] == typed[from]);
    }
}
