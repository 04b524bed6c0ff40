using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// All rules that settings must keep, with the sentences for those that break them. Values other than the defaults reach
/// <see cref="SettingValues"/> only through here, whether a person types them, a guide measures them, or they come from flash,
/// a file or a recording.
/// </summary>
public sealed class SettingsGate
{
    private readonly int _fullScale;
    private readonly int _microvoltsACount;

    /// <summary>Initializes a new instance of the <see cref="SettingsGate"/> class for a board's converter.</summary>
    /// <param name="fullScale">Greatest count of the converter.</param>
    /// <param name="microvoltsACount">Size of a count in µV.</param>
    public SettingsGate(int fullScale, int microvoltsACount)
    {
        _fullScale = fullScale;
        _microvoltsACount = microvoltsACount;
    }

    /// <summary>Reads a typed value and checks that it is within the setting's own range.</summary>
    /// <param name="row">The setting.</param>
    /// <param name="text">What was typed, in small letters, trimmed.</param>
    /// <param name="value">The value in the setting's unit.</param>
    /// <param name="complaint">Gets the sentence that says what is wrong and what is allowed; no line end.</param>
    /// <returns>False when the value cannot be used.</returns>
    public static bool TryRead(Setting row, string text, out int value, TextOutput complaint)
    {
        bool isValue = ValueParser.TryParse(row, text, out value);
        if (isValue && row.Allows(value))
        {
            return true;
        }

        if (isValue)
        {
            complaint.Text(row.Name).Text(" cannot be ").Text(text);
        }
        else
        {
            complaint.Text("'").Text(text).Text("' is no value for ").Text(row.Name);
        }

        ValueText.Range(complaint.Text("; allowed is "), row).Text(".");
        return false;
    }

    /// <summary>Checks all rules: the range of each setting, and what settings demand of each other.</summary>
    /// <param name="draft">The values.</param>
    /// <returns><see cref="SettingChange.Done"/> when they keep every rule, or the first rule that they break.</returns>
    public SettingChange Check(SettingsDraft draft)
    {
        return FirstOutOfRange(draft) >= 0 ? SettingChange.OutOfRange
            : draft[SettingId.StopBelow] >= draft[SettingId.StartAt] ? SettingChange.LevelsWouldCross
            : draft[SettingId.StartAt] > LargestStartAt(draft) ? SettingChange.BeyondSensor
            : SettingChange.Done;
    }

    /// <summary>
    /// Sets values that break a rule back to their defaults, and keeps the others. A value out of its range is set back alone,
    /// and the two levels are set back together. Where the sensor cannot show even the default start-at, the levels become as
    /// high as it can show: sensor-gain and turns say what sensor is fitted, and a guess at that would take noise for a tool.
    /// </summary>
    /// <param name="draft">The values; they keep every rule afterwards.</param>
    /// <returns>How many values were put back.</returns>
    public int Mend(SettingsDraft draft)
    {
        int count = 0;
        int wrong = FirstOutOfRange(draft);
        while (wrong >= 0)
        {
            PutBack(draft, (SettingId)wrong);
            count++;
            wrong = FirstOutOfRange(draft);
        }

        if (Check(draft) != SettingChange.Done)
        {
            PutBack(draft, SettingId.StartAt);
            PutBack(draft, SettingId.StopBelow);
            count += 2;
        }

        int most = LargestStartAt(draft);
        if (draft[SettingId.StartAt] > most)
        {
            draft[SettingId.StopBelow] = draft[SettingId.StopBelow] * most / draft[SettingId.StartAt];
            draft[SettingId.StartAt] = most;
        }

        return count;
    }

    /// <summary>
    /// Writes which rule was broken, without the full stop, so that the caller can add what has become of the change.
    /// </summary>
    /// <param name="output">Where to.</param>
    /// <param name="refusal">The rule.</param>
    /// <param name="shown">The values that the sentence shows: those in use when one setting was to be changed, and the draft
    /// itself when many were.</param>
    /// <param name="refused">The draft, with the gain and turns by which it was judged.</param>
    /// <returns>The output.</returns>
    public TextOutput Explain(TextOutput output, SettingChange refusal, SettingsDraft shown, SettingsDraft refused)
    {
        // Figures of the draft itself are not in use, so they are no "now".
        bool isInUse = shown != refused;
        switch (refusal)
        {
            case SettingChange.LevelsWouldCross:
                output.Text(isInUse ? "start-at must stay above stop-below (now " : "start-at must stay above stop-below (");
                ValueText.Value(output, SettingsTable.Row(SettingId.StartAt), shown[SettingId.StartAt]).Text(" and ");
                return ValueText.Value(output, SettingsTable.Row(SettingId.StopBelow), shown[SettingId.StopBelow]).Text(")");
            case SettingChange.BeyondSensor:
                return output.Text("start-at would be more than the sensor can show with its gain and turns: ")
                    .Amperes(LargestStartAt(refused)).Text(isInUse ? " at most now" : " at most");
            default:
                return output.Text("a value is out of its range");
        }
    }

    private static int FirstOutOfRange(SettingsDraft draft)
    {
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            if (!SettingsTable.Row((SettingId)i).Allows(draft[(SettingId)i]))
            {
                return i;
            }
        }

        return -1;
    }

    private static void PutBack(SettingsDraft draft, SettingId id)
    {
        draft[id] = SettingsTable.Row(id).Default;
    }

    // The largest start-at in mA: a current whose peak-to-peak is half of the converter's full scale. Over that much an ESP32's
    // converter is linear enough, with room for the tolerance of the sensor's resting voltage.
    private int LargestStartAt(SettingsDraft draft)
    {
        SensorScale scale = new SensorScale(draft[SettingId.SensorGain], draft[SettingId.Turns], _microvoltsACount);
        return scale.FromSwing(_fullScale / 2 * SensorScale.PartsACount);
    }
}
