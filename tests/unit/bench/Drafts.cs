using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>Settings for tests, and the rules of the fake board.</summary>
internal static class Drafts
{
    public static SettingsGate Gate()
    {
        return new SettingsGate(ToolLine.FullScale, ToolLine.MicrovoltsACount);
    }

    /// <summary>A draft with the defaults, for the test to change.</summary>
    public static SettingsDraft New()
    {
        return new SettingsDraft(new SettingValues());
    }

    /// <summary>
    /// A value other than the default. Together, these values of all settings keep the rules.
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

    /// <summary>Puts settings into flash, whatever they are.</summary>
    /// <param name="board">The board.</param>
    /// <param name="settings">Name or number of a setting and its value, those of the next, with blanks between.</param>
    public static void PutInFlash(IBoard board, string settings)
    {
        SlotPair pair = new SlotPair(new SafeBoard(board), Slots.Settings);
        string[] words = settings.Split(' ');
        int at = SlotPair.Head;
        for (int i = 0; i < words.Length; i += 2)
        {
            int named = SettingsTable.Find(words[i]);
            int number = named >= 0 ? named : int.Parse(words[i]);
            pair.Buffer[at] = (byte)number;
            pair.Buffer[at + 1] = (byte)(number >> 8);
            LittleEndian.Write(pair.Buffer, at + 2, int.Parse(words[i + 1]));
            at += 6;
        }

        // Three bytes more, which are too few for another pair, must be ignored.
        pair.Write(1, at + 3 - SlotPair.Head);
    }
}
