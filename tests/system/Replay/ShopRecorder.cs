using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>
/// Lets a board in the virtual shop make recordings as a person would: <c>record</c>, tool on, tool off, a
/// key.
/// </summary>
internal static class ShopRecorder
{
    public static string Record(ToolSpecification? tool, params string[] settings) => Record(
        tool is null ? new Day { Name = "quiet", Seconds = 20 } : ShortDay.Of(tool, 20, [], 6, 13), false, settings);

    /// <summary>Records a day of 20 s.</summary>
    /// <param name="day">The day.</param>
    /// <param name="isTimed">Whether the board's work takes time.</param>
    /// <param name="settings">Lines typed before.</param>
    /// <returns>What the console showed.</returns>
    public static string Record(Day day, bool isTimed, params string[] settings)
    {
        (_, _, Rig rig) = ShopRig.Build(day, 5, isTimed);
        rig.RunUntil(2_000_000);
        foreach (string line in settings)
        {
            rig.Ask(line);
        }

        return rig.Record(() => rig.RunUntil(20_000_000));
    }

    /// <summary>Types lines at a new board whose levels are as given.</summary>
    /// <param name="startAt">Its start-at, in mA.</param>
    /// <param name="stopBelow">Its stop-below, in mA.</param>
    /// <param name="lines">The lines.</param>
    /// <returns>Start-at, stop-below and noise afterwards in flash, in mA.</returns>
    public static (int StartAt, int StopBelow, int Noise) Type(int startAt, int stopBelow, IEnumerable<string> lines)
    {
        (_, _, Rig rig) = ShopRig.Build(new Day { Seconds = 20 }, 5, isTimed: false);
        rig.RunUntil(2_000_000);
        SettingsDraft levels = new(rig.Switch.Settings) { [SettingId.StartAt] = startAt, [SettingId.StopBelow] = stopBelow };
        Assert.AreEqual(SettingChange.Done, rig.Switch.Desk.Change(levels));
        foreach (string line in lines)
        {
            rig.Ask(line);
        }

        rig.RunUntil(rig.Board.ShopTime + 1_000_000);
        SettingValues saved = rig.Switch.SavedSettings;
        return (saved[SettingId.StartAt], saved[SettingId.StopBelow], saved[SettingId.Noise]);
    }
}
