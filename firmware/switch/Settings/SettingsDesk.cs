using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Where settings are changed, used, kept and given up again.</summary>
public sealed class SettingsDesk
{
    private readonly Switch _switch;
    private readonly SettingsStore _store;

    /// <summary>The settings in use.</summary>
    public readonly SettingValues InUse = new SettingValues();

    /// <summary>The settings in flash.</summary>
    public readonly SettingValues Saved = new SettingValues();

    /// <summary>Whether the settings wait to be saved until tool and vacuum are off.</summary>
    public bool IsSaveWaiting;

    /// <summary>Initializes a new instance of the <see cref="SettingsDesk"/> class with what flash has.</summary>
    /// <param name="of">The switch.</param>
    /// <param name="board">The board.</param>
    public SettingsDesk(Switch of, SafeBoard board)
    {
        _switch = of;
        _store = new SettingsStore(board);
        _store.Load(Saved);
        InUse.CopyFrom(Saved);
    }

    /// <summary>Gets a value indicating whether both copies in flash were bad.</summary>
    public bool IsLost
    {
        get { return _store.IsLost; }
    }

    /// <summary>Gets how many settings in flash were out of range and fell back to their defaults.</summary>
    public int FellBack
    {
        get { return _store.FellBack; }
    }

    /// <summary>Changes a setting and uses it at once.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its new value, which the table allows.</param>
    /// <returns>Whether it was changed, and if not, why.</returns>
    public SettingChange Change(SettingId id, int value)
    {
        int before = InUse[id];
        InUse[id] = value;
        SettingChange result = InUse[SettingId.StopBelow] >= InUse[SettingId.StartAt] ? SettingChange.LevelsWouldCross
            : LargestStartAt() < InUse[SettingId.StartAt] ? SettingChange.BeyondSensor
            : SettingChange.Done;
        if (result == SettingChange.Done)
        {
            Use();
        }
        else
        {
            InUse[id] = before;
        }

        return result;
    }

    /// <summary>Gives the largest start-at that the sensor can show, with its gain and turns as they are set.</summary>
    /// <returns>Rms current in mA.</returns>
    public int LargestStartAt()
    {
        return LargestStartAt(InUse, _switch.FullScale, _switch.MicrovoltsACount);
    }

    /// <summary>Gives the largest start-at that a sensor can show.</summary>
    /// <param name="settings">Its gain and turns.</param>
    /// <param name="fullScale">Greatest count of the converter.</param>
    /// <param name="microvoltsACount">Size of a count in µV.</param>
    /// <returns>Rms current in mA.</returns>
    public static int LargestStartAt(SettingValues settings, int fullScale, int microvoltsACount)
    {
        // Half of full scale, peak to peak: what is left of an ESP32 converter's usable span, with room for the rest's tolerance.
        SensorScale scale = new SensorScale(settings[SettingId.SensorGain], settings[SettingId.Turns], microvoltsACount);
        return scale.FromSwing(fullScale / 2 * SensorScale.PartsACount);
    }

    /// <summary>Uses the settings as they are now.</summary>
    public void Use()
    {
        _switch.UseSettings();
    }

    /// <summary>Goes back to the saved settings.</summary>
    /// <returns>Number of settings that were different.</returns>
    public int Undo()
    {
        int changed = InUse.Differences(Saved);
        InUse.CopyFrom(Saved);
        Use();
        IsSaveWaiting = false;
        return changed;
    }

    /// <summary>Puts all settings to their defaults.</summary>
    /// <param name="for230Volts">Whether to those for 230 V mains.</param>
    public void UseDefaults(bool for230Volts)
    {
        InUse.Reset(for230Volts);
        Use();
    }

    /// <summary>Writes the settings to flash now; only while quiet.</summary>
    /// <returns>False when the flash failed.</returns>
    public bool Save()
    {
        bool isSaved = _store.Save(InUse);
        _switch.Note(isSaved ? LogKind.Saved : LogKind.SaveFailed, 0, 0, 0);
        if (isSaved)
        {
            Saved.CopyFrom(InUse);
            _switch.Core.Faults.End(Fault.SettingsLost, _switch.Now);
        }

        return isSaved;
    }
}
