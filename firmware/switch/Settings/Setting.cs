namespace NanoDustSwitch.Firmware;

/// <summary>One row of the settings table: name, unit, range, default and a line of help.</summary>
public sealed class Setting
{
    /// <summary>Name as it is typed.</summary>
    public readonly string Name;

    /// <summary>What the number stands for.</summary>
    public readonly SettingUnit Unit;

    /// <summary>Least value, in the unit.</summary>
    public readonly int Least;

    /// <summary>Greatest value, in the unit.</summary>
    public readonly int Greatest;

    /// <summary>Default, in the unit.</summary>
    public readonly int Default;

    /// <summary>Default for 230 V mains, in the unit. There, a tool of the same power draws half the current.</summary>
    public readonly int Default230;

    /// <summary>One line of help.</summary>
    public readonly string Help;

    /// <summary>A word that can be typed for <see cref="SpecialValue"/>, or null.</summary>
    public string SpecialWord;

    /// <summary>Value of <see cref="SpecialWord"/>. It is allowed even where it is outside the range.</summary>
    public int SpecialValue;

    /// <summary>For times: the milliseconds that a typed 1 without a unit stands for.</summary>
    public int BareMilliseconds = 1000;

    /// <summary>Initializes a new instance of the <see cref="Setting"/> class.</summary>
    /// <param name="name">Name as it is typed.</param>
    /// <param name="unit">What the number stands for.</param>
    /// <param name="least">Least value.</param>
    /// <param name="greatest">Greatest value.</param>
    /// <param name="standard">Default.</param>
    /// <param name="standard230">Default for 230 V mains.</param>
    /// <param name="help">One line of help.</param>
    public Setting(string name, SettingUnit unit, int least, int greatest, int standard, int standard230, string help)
    {
        Name = name;
        Unit = unit;
        Least = least;
        Greatest = greatest;
        Default = standard;
        Default230 = standard230;
        Help = help;
    }

    /// <summary>Tells whether a value is allowed.</summary>
    /// <param name="value">Value in the unit.</param>
    /// <returns>True inside the range or for the special word's value.</returns>
    public bool Allows(int value)
    {
        return (value >= Least && value <= Greatest) || (SpecialWord != null && value == SpecialValue);
    }
}
