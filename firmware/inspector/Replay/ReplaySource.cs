using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Spectrum;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>A recording that the core can decide on again, with the settings it was made with or others.</summary>
internal abstract class ReplaySource
{
    /// <summary>Gets the file's name.</summary>
    public abstract string Name { get; }

    /// <summary>Gets what was understood of the file.</summary>
    public abstract string Understood { get; }

    /// <summary>Gets the settings it was made with; the defaults where it knows of none.</summary>
    public abstract SettingValues Settings { get; }

    /// <summary>Gets the rules that settings for it must keep.</summary>
    public abstract SettingsGate Gate { get; }

    /// <summary>Gets a value indicating whether it knows the settings that it was made with.</summary>
    public abstract bool HasSettings { get; }

    /// <summary>Gets the seconds of modelled idle before and after it.</summary>
    public abstract double Lead { get; }

    /// <summary>Gets its length in seconds, the modelled idle left out.</summary>
    public abstract double Seconds { get; }

    /// <summary>
    /// Gets the time of its first reading by its own times, in seconds; below 0 before an oscilloscope's trigger.
    /// </summary>
    public virtual double Begin => 0;

    /// <summary>Gets the current itself; of a long table the minute with the most in it.</summary>
    public abstract Wave Wave { get; }

    /// <summary>Gets readings as they came, a few cycles of them, where <see cref="Wave"/> is of means; none otherwise.</summary>
    public virtual IReadOnlyList<Wave> Shapes => [];

    /// <summary>Lets the core decide.</summary>
    /// <param name="settings">The settings.</param>
    /// <param name="look">Called after each bucket with its end, in seconds from the beginning of the recording, and the
    /// core.</param>
    public abstract void Run(SettingValues settings, Action<double, DetectionCore> look);
}
