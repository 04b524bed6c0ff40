using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Where settings are changed, used, kept and given up again.</summary>
public sealed class SettingsDesk
{
    private readonly SettingsStore _store;
    private readonly IBoard _board;
    private readonly BucketReader _reader;
    private readonly DetectionCore _core;
    private readonly Journal _journal;

    /// <summary>The settings in use.</summary>
    public readonly SettingValues InUse;

    /// <summary>The settings in flash.</summary>
    public readonly SettingValues Saved;

    /// <summary>Whether the settings wait to be saved until tool and vacuum are off.</summary>
    public bool IsSaveWaiting;

    /// <summary>Initializes a new instance of the <see cref="SettingsDesk"/> class.</summary>
    /// <param name="store">Where settings are kept.</param>
    /// <param name="saved">What it has.</param>
    /// <param name="inUse">The settings that the core was made with.</param>
    /// <param name="board">The board, whose converter limits what the sensor can show.</param>
    /// <param name="reader">Reads the vacuum's line where the settings say that it has a sensor.</param>
    /// <param name="core">The core, which uses the settings.</param>
    /// <param name="journal">Where it is logged that they were saved.</param>
    public SettingsDesk(
        SettingsStore store,
        SettingValues saved,
        SettingValues inUse,
        IBoard board,
        BucketReader reader,
        DetectionCore core,
        Journal journal)
    {
        _store = store;
        Saved = saved;
        InUse = inUse;
        _board = board;
        _reader = reader;
        _core = core;
        _journal = journal;
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
        return LargestStartAt(InUse, _board.FullScale, _board.MicrovoltsACount);
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
        _reader.ReadsVacuumLine = InUse[SettingId.VacuumTurns] > 0;
        _core.Use(InUse.ToCore());
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
    /// <param name="now">Time in microseconds.</param>
    /// <returns>False when the flash failed.</returns>
    public bool Save(long now)
    {
        bool isSaved = _store.Save(InUse);
        _journal.Note(isSaved ? LogKind.Saved : LogKind.SaveFailed, 0, 0, 0, now);
        if (isSaved)
        {
            Saved.CopyFrom(InUse);
            _core.Faults.End(Fault.SettingsLost, now);
        }

        return isSaved;
    }
}
