using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Holds the settings in use and those in flash. All changes, saving and going back happen here.</summary>
public sealed class SettingsDesk
{
    private readonly SettingsStore _store;
    private readonly BucketReader _reader;
    private readonly DetectionCore _core;
    private readonly Journal _journal;
    private SettingsDraft _refused;

    /// <summary>The rules that every change must keep.</summary>
    public readonly SettingsGate Gate;

    /// <summary>The settings in use.</summary>
    public readonly SettingValues InUse;

    /// <summary>The settings in flash.</summary>
    public readonly SettingValues Saved;

    /// <summary>Initializes a new instance of the <see cref="SettingsDesk"/> class.</summary>
    /// <param name="gate">The rules.</param>
    /// <param name="store">Writes the settings to flash.</param>
    /// <param name="saved">The settings in flash.</param>
    /// <param name="inUse">The settings that the core was made with.</param>
    /// <param name="reader">Reads the vacuum's line where the settings say that it has a sensor.</param>
    /// <param name="core">The core, which works with the settings.</param>
    /// <param name="journal">Logs that they were saved, or could not be.</param>
    public SettingsDesk(
        SettingsGate gate,
        SettingsStore store,
        SettingValues saved,
        SettingValues inUse,
        BucketReader reader,
        DetectionCore core,
        Journal journal)
    {
        Gate = gate;
        _store = store;
        Saved = saved;
        InUse = inUse;
        _reader = reader;
        _core = core;
        _journal = journal;
    }

    /// <summary>Gets a value indicating whether the settings wait to be saved until tool and vacuum are off.</summary>
    public bool IsSaveWaiting { get; private set; }

    /// <summary>
    /// Gets a value indicating whether the vacuum runs and cannot be switched off. Only its sensor tells that, so no word may
    /// drop the sensor's setting by the way; who types that setting itself means it.
    /// </summary>
    public bool IsAlarmNeeded
    {
        get { return _core.Faults.IsVacuumStuck; }
    }

    /// <summary>Changes a setting and uses it at once.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its new value.</param>
    /// <returns><see cref="SettingChange.Done"/>, or the rule that forbids the change.</returns>
    public SettingChange Change(SettingId id, int value)
    {
        SettingsDraft draft = new SettingsDraft(InUse);
        draft[id] = value;
        return Change(draft);
    }

    /// <summary>Changes any number of settings together and uses them at once.</summary>
    /// <param name="draft">The new values.</param>
    /// <returns><see cref="SettingChange.Done"/>, or the rule that forbids the change.</returns>
    public SettingChange Change(SettingsDraft draft)
    {
        SettingChange result = InUse.Take(draft, Gate);
        _refused = draft;
        if (result == SettingChange.Done)
        {
            _reader.ReadsVacuumLine = InUse[SettingId.VacuumTurns] > 0;
            _core.Use(InUse.ToCore());
        }

        return result;
    }

    /// <summary>Writes that a change was made, or why nothing was changed.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="change">The result of the change.</param>
    /// <param name="done">The sentence for a change that was made.</param>
    public void Report(TextOutput output, SettingChange change, string done)
    {
        if (change == SettingChange.Done)
        {
            output.Text(done).End();
        }
        else
        {
            Gate.Explain(output, change, new SettingsDraft(InUse), _refused).Text("; nothing was changed.").End();
        }
    }

    /// <summary>Goes back to the saved settings; a request to save is dropped.</summary>
    /// <returns>Number of settings that were different.</returns>
    public int Undo()
    {
        int changed = InUse.Differences(Saved);
        Change(new SettingsDraft(Saved));
        IsSaveWaiting = false;
        return changed;
    }

    /// <summary>Sets all settings to their defaults.</summary>
    /// <param name="for230Volts">Whether to take the defaults for 230 V mains.</param>
    /// <returns><see cref="SettingChange.Done"/>, or the rule that the defaults break with this board's converter.</returns>
    public SettingChange UseDefaults(bool for230Volts)
    {
        return Change(new SettingsDraft(new SettingValues(for230Volts)));
    }

    /// <summary>
    /// Saves the settings: writes them to flash at once if tool and vacuum are off, and otherwise as soon as they are. During a
    /// write, which may take some hundred milliseconds, the board cannot read the sensor, so it must wait until that does no
    /// harm.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>Whether they are saved now, will be saved later, or could not be saved.</returns>
    public SettingsSave RequestSave(long now)
    {
        IsSaveWaiting = !_core.IsQuiet;
        if (IsSaveWaiting)
        {
            return SettingsSave.Waiting;
        }

        if (!_store.Save(InUse))
        {
            _journal.Note(LogKind.SaveFailed, 0, 0, 0, now);
            return SettingsSave.Failed;
        }

        Saved.Take(new SettingsDraft(InUse), Gate);
        _journal.Note(LogKind.Saved, 0, 0, 0, now);
        _core.Faults.End(Fault.SettingsLost, now);
        return SettingsSave.Done;
    }
}
