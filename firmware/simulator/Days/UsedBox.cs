using System.Globalization;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Makes a used box of a new one: a tool is started with it a few times, alone on its line, and named.</summary>
internal static class UsedBox
{
    private const int Starts = ToolBook.StartsToKnow + 1;
    private const double RunSeconds = 4;

    // A heavy blade has nearly come to rest by then.
    private const double PeriodSeconds = 25;

    /// <summary>Teaches it a tool.</summary>
    /// <param name="day">The day, with what its box knows so far.</param>
    /// <param name="known">The tool.</param>
    /// <returns>The flash's slots of the tools then; null where the box does not come to know the tool.</returns>
    public static byte[][]? Teach(Day day, KnownTool known)
    {
        ToolSpecification tool = day.Tools.First(one => one.Name == known.Tool);

        // With the load that it has in its first start.
        List<DayStep> steps =
        [
            .. day.Steps.Where(step => step.Tool == tool.Name).TakeWhile(step => step.Act != DayAct.Start)
                .Where(step => step.Act == DayAct.Load).Select(step => step with { At = 0 }),
        ];
        for (int i = 0; i < Starts; i++)
        {
            long at = (long)(1e6 * (1 + (i * PeriodSeconds)));
            steps.Add(new DayStep(at, DayAct.Start, tool.Name));
            steps.Add(new DayStep(at + (long)(1e6 * RunSeconds), DayAct.Stop, tool.Name));
        }

        Day before = day with { Seconds = Starts * PeriodSeconds, Tools = [tool], Steps = steps, Knows = [] };
        Rig rig = new DayRun(before, day.Shop.Seed, isTraced: false).Run().Rig;
        int place = rig.Switch.Core.Vacuum.Guess.Learned;
        if (place < 0 || !rig.Switch.Tools.Names.Book.IsKnown(place))
        {
            return null;
        }

        string number = (place + 1).ToString(CultureInfo.InvariantCulture);
        rig.Ask($"tools name {number} {known.Tool}");
        if (known.NeedsNoVacuum)
        {
            rig.Ask($"tools no-vacuum {number}");
        }
        else if (known.RunOnSeconds is { } seconds)
        {
            rig.Ask(string.Create(CultureInfo.InvariantCulture, $"tools run-on {number} {seconds:0.###} s"));
        }

        rig.Switch.Tools.Save();
        byte[] buffer = new byte[Slots.Size];
        return [.. new[] { Slots.Tools, Slots.Tools + 1 }.Select(slot => buffer[..rig.Board.Flash.Read(slot, buffer)])];
    }
}
