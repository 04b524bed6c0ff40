using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The settings of the switch: those in use and those in flash, and all that can be done with them.</summary>
public sealed class SettingsDesk
{
    private readonly Switch _switch;
    private readonly SettingsStore _store;

    /// <summary>The rules that every change must keep.</summary>
    public readonly SettingsGate Gate;

    /// <summary>The settings in use.</summary>
    public readonly SettingValues InUse = new SettingValues();

    /// <summary>The settings in flash.</summary>
    public readonly SettingValues Saved = new SettingValues();

    /// <summary>Initializes a new instance of the <see cref="SettingsDesk"/> class with what flash has.</summary>
    /// <param name="of">The switch.</param>
    /// <param name="board">The board.</param>
    /// <param name="gate">The rules.</param>
    public SettingsDesk(Switch of, SafeBoard board, SettingsGate gate)
    {
        _switch = of;
        Gate = gate;
        _store = new SettingsStore(board, gate);
        _store.Load(Saved);
        InUse.Take(new SettingsDraft(Saved), gate);
    }

    /// <summary>Gets a value indicating whether the settings wait to be saved until tool and vacuum are off.</summary>
    public bool IsSaveWaiting { get; private set; }

    /// <summary>Gets a value indicating whether both copies in flash were bad.</summary>
    public bool IsLost
    {
        get { return _store.IsLost; }
    }

    /// <summary>Gets how many settings in flash broke a rule and fell back to their defaults.</summary>
    public int FellBack
    {
        get { return _store.FellBack; }
    }

    /// <summary>Changes a setting and uses it at once.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its new value.</param>
    /// <returns><see cref="SettingChange.Done"/>, or the rule that stands against it.</returns>
    public SettingChange Change(SettingId id, int value)
    {
        SettingsDraft draft = new SettingsDraft(InUse);
        draft[id] = value;
        return Change(draft);
    }

    /// <summary>Changes any number of settings together and uses them at once.</summary>
    /// <param name="draft">The new values.</param>
    /// <returns><see cref="SettingChange.Done"/>, or the rule that stands against it.</returns>
    public SettingChange Change(SettingsDraft draft)
    {
        SettingChange result = InUse.Take(draft, Gate);
        if (result == SettingChange.Done)
        {
            _switch.UseSettings();
        }

        return result;
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

    /// <summary>Puts all settings to their defaults.</summary>
    /// <param name="for230Volts">Whether to those for 230 V mains.</param>
    /// <returns><see cref="SettingChange.Done"/>, or the rule that they break with this board's converter.</returns>
    public SettingChange UseDefaults(bool for230Volts)
    {
        return Change(new SettingsDraft(new SettingValues(for230Volts)));
    }

    /// <summary>
    /// Keeps the settings over a power cut: writes them to flash at once while tool and vacuum are off, and otherwise as soon as
    /// they are. A write stalls the readings for up to some hundred milliseconds, so it has to wait for a moment in which that
    /// does no harm.
    /// </summary>
    /// <returns>Whether they are saved, or wait for it.</returns>
    public SettingsSave RequestSave()
    {
        IsSaveWaiting = !_switch.IsQuiet;
        if (IsSaveWaiting)
        {
            return SettingsSave.Waiting;
        }

        if (!_store.Save(InUse))
        {
            _switch.Note(LogKind.SaveFailed, 0, 0, 0);
            return SettingsSave.Failed;
        }

        Saved.Take(new SettingsDraft(InUse), Gate);
        _switch.Note(LogKind.Saved, 0, 0, 0);
        _switch.Core.Faults.End(Fault.SettingsLost, _switch.Now);
        return SettingsSave.Done;
    }
}
