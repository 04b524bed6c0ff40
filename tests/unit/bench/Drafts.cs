using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>Settings for tests, and the rules of the fake board.</summary>
internal static class Drafts
{
    public static SettingsGate Gate()
    {
        return new SettingsGate(ToolLine.FullScale, ToolLine.MicrovoltsACount);
    }

    /// <summary>The defaults, to be changed.</summary>
    public static SettingsDraft New()
    {
        return new SettingsDraft(new SettingValues());
    }

    /// <summary>
    /// A value that is not the default, such that all of them together keep the rules: the least one where that is no default.
    /// </summary>
    public static int Other(SettingId id)
    {
        Setting row = SettingsTable.Row(id);
        return row.Least == row.Default ? row.Least + 1 : row.Least;
    }

    /// <summary>A draft in which no setting has its default.</summary>
    public static SettingsDraft AllOther()
    {
        SettingsDraft draft = New();
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            draft[(SettingId)i] = Other((SettingId)i);
        }

        return draft;
    }

    public static SettingValues Checked(SettingsDraft draft)
    {
        SettingValues values = new SettingValues();
        Assert.AreEqual((int)SettingChange.Done, (int)values.Take(draft, Gate()));
        return values;
    }

    /// <summary>Writes a slot of settings as a firmware would that keeps no rules.</summary>
    /// <param name="board">The board.</param>
    /// <param name="numbersAndValues">Number and value of a setting, number and value of the next.</param>
    public static void PutInFlash(IBoard board, params int[] numbersAndValues)
    {
        SlotPair pair = new SlotPair(new SafeBoard(board), Slots.Settings);
        int at = SlotPair.Head;
        for (int i = 0; i < numbersAndValues.Length; i += 2)
        {
            pair.Buffer[at] = (byte)numbersAndValues[i];
            pair.Buffer[at + 1] = (byte)(numbersAndValues[i] >> 8);
            LittleEndian.Write(pair.Buffer, at + 2, numbersAndValues[i + 1]);
            at += 6;
        }

        // And a rest that is no whole pair.
        pair.Write(1, at + 3 - SlotPair.Head);
    }
}
