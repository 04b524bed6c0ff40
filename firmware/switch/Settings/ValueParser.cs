namespace NanoDustSwitch.Firmware;

/// <summary>Reads a typed value: <c>0.6</c>, <c>0.6A</c>, <c>600 mA</c>, <c>1,5 sec</c>, <c>off</c>.</summary>
public static class ValueParser
{
    private const int Parts = 1000000;

    /// <summary>Reads a value.</summary>
    /// <param name="row">The setting it is for.</param>
    /// <param name="text">What was typed, in small letters, trimmed.</param>
    /// <param name="value">The value in the setting's unit.</param>
    /// <returns>False when it is not a number with a unit that fits. The range is not checked.</returns>
    public static bool TryParse(Setting row, string text, out int value)
    {
        value = 0;
        if (row.SpecialWord != null && text == row.SpecialWord)
        {
            value = row.SpecialValue;
            return true;
        }

        int at = 0;
        long millionths;
        if (!TryNumber(text, ref at, out millionths))
        {
            return false;
        }

        long unit = UnitOf(row, text.Substring(at).Trim());
        if (unit == 0)
        {
            return false;
        }

        if (row.Unit == SettingUnit.Count && millionths % Parts != 0)
        {
            return false;
        }

        if (millionths > (long.MaxValue - Parts) / unit)
        {
            value = int.MaxValue;
            return true;
        }

        // Rounded to the setting's own step, half up.
        long wide = ((millionths * unit) + (Parts / 2)) / Parts;
        value = wide > int.MaxValue ? int.MaxValue : (int)wide;
        return true;
    }

    private static bool TryNumber(string text, ref int at, out long millionths)
    {
        millionths = 0;
        int digits = 0;
        int scale = 0;
        while (at < text.Length)
        {
            char c = text[at];
            if ((c == '.' || c == ',') && scale == 0)
            {
                scale = Parts;
            }
            else if (c >= '0' && c <= '9')
            {
                digits++;
                if (scale == 0)
                {
                    // The largest setting needs ten digits. With many more, the number of millionths would not fit into 64 bits.
                    if (digits > 12)
                    {
                        return false;
                    }

                    millionths = (millionths * 10) + ((c - '0') * (long)Parts);
                }
                else
                {
                    scale /= 10;
                    millionths += (c - '0') * scale;
                    scale = scale == 0 ? -1 : scale;
                }
            }
            else
            {
                break;
            }

            at++;
        }

        return digits > 0;
    }

    // How many of the setting's own units the typed unit stands for; 0 when the setting cannot have that unit.
    private static long UnitOf(Setting row, string unit)
    {
        // A plural, but not 'ms'.
        unit = unit.Length > 2 && unit[unit.Length - 1] == 's' ? unit.Substring(0, unit.Length - 1) : unit;
        switch (row.Unit)
        {
            case SettingUnit.Milliamperes:
                return unit == "" || unit == "a" || unit == "amp" || unit == "ampere" ? 1000 : unit == "ma" ? 1 : 0;
            case SettingUnit.MicrovoltsAnAmpere:
                return unit == "" || unit == "mv/a" ? 1000 : 0;
            case SettingUnit.Milliseconds:
                switch (unit)
                {
                    case "":
                        return row.BareMilliseconds;
                    case "ms":
                        return 1;
                    case "s":
                    case "sec":
                    case "second":
                        return 1000;
                    case "min":
                    case "minute":
                        return 60000;
                    case "h":
                    case "hour":
                        return 3600000;
                    default:
                        return 0;
                }

            default:
                return unit == "" ? 1 : 0;
        }
    }
}
