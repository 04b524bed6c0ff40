namespace NanoDustSwitch.Firmware;

/// <summary>Writes values with their unit, in such a way that a person can type them in again as they are shown.</summary>
public static class ValueText
{
    /// <summary>Writes a setting's value.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="row">The setting.</param>
    /// <param name="value">The value in the setting's unit.</param>
    /// <returns>The output.</returns>
    public static TextOutput Value(TextOutput output, Setting row, int value)
    {
        if (row.SpecialWord != null && value == row.SpecialValue)
        {
            return output.Text(row.SpecialWord);
        }

        switch (row.Unit)
        {
            case SettingUnit.Milliamperes:
                // A person may have set it to the mA, so the third decimal is shown, too, unless it is 0.
                return value % 10 == 0 ? output.Amperes(value) : output.Fixed(value, 3).Text(" A");
            case SettingUnit.MicrovoltsAnAmpere:
                return Thousandths(output, value).Text(" mV/A");
            case SettingUnit.Milliseconds:
                return Time(output, value);
            default:
                return output.Number(value);
        }
    }

    /// <summary>Writes the range of a setting.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="row">The setting.</param>
    /// <returns>The output.</returns>
    public static TextOutput Range(TextOutput output, Setting row)
    {
        Value(output, row, row.Least).Text(" to ");
        Value(output, row, row.Greatest);
        if (row.SpecialWord != null)
        {
            output.Text(", or ").Text(row.SpecialWord);
        }

        return output;
    }

    /// <summary>Writes a time in the largest unit in which it is a whole number, or in seconds.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="milliseconds">Time in ms, 0 or more.</param>
    /// <returns>The output.</returns>
    public static TextOutput Time(TextOutput output, long milliseconds)
    {
        if (milliseconds >= 3600000 && milliseconds % 3600000 == 0)
        {
            return output.Number(milliseconds / 3600000).Text(" h");
        }

        if (milliseconds >= 60000 && milliseconds % 60000 == 0)
        {
            return output.Number(milliseconds / 60000).Text(" min");
        }

        return Thousandths(output, milliseconds).Text(" s");
    }

    // Writes thousandths as whole units, with as many decimals as are needed.
    private static TextOutput Thousandths(TextOutput output, long value)
    {
        int decimals = 3;
        while (decimals > 0 && value % 10 == 0)
        {
            value /= 10;
            decimals--;
        }

        return output.Fixed(value, decimals);
    }
}
