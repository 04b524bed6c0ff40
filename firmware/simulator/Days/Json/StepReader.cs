namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Makes the steps of a day of what its file says.</summary>
/// <param name="places">Where it says it.</param>
/// <param name="fields">What it says.</param>
/// <param name="tools">The names of the tools.</param>
/// <param name="circuits">The names of the circuits.</param>
internal sealed class StepReader(JsonPlaces places, DayFields fields, NameList tools, NameList circuits)
{
    private static readonly string[] s_all = [.. JsonBinding.InfoOf(typeof(StepFields)).Properties.Select(member => member.Name)];

    /// <summary>Reads the steps.</summary>
    /// <returns>The steps, in order of time.</returns>
    public DayStep[] Read()
    {
        DayStep[] steps = new DayStep[fields.Steps.Length];
        for (int i = 0; i < steps.Length; i++)
        {
            string path = $"$.steps[{i}]";
            StepFields step = fields.Steps[i];
            CheckMembers(path, step.Do);
            tools.Check($"{path}.tool", step.Tool);
            circuits.Check($"{path}.circuit", step.Circuit);
            long at = (long)Math.Round(step.At!.Value.Seconds * 1e6);
            CheckTime($"{path}.at", at, step.At.Value, i > 0 ? steps[i - 1].At : 0);
            bool isPress = step.Do == DayAct.Press;
            steps[i] = new DayStep(
                at,
                step.Do,
                step.Tool,
                step.Load ?? step.Factor ?? step.Amperes ?? (isPress ? step.Seconds : null) ?? 0,
                step.Text ?? step.Circuit,
                isPress ? 0 : step.Seconds ?? 0);
        }

        return steps;
    }

    private void CheckMembers(string path, DayAct act)
    {
        string what = $"a '{WordConverter<DayAct>.Word(act)}' step";
        string[] allowed = ["at", "do", .. ActTable.Of(act).Members];
        if (s_all.Except(allowed).FirstOrDefault(member => places.Has($"{path}.{member}")) is { } unknown)
        {
            throw places.Error($"{path}.{unknown}", JsonPlaces.HasNo(what, unknown, allowed));
        }

        // The mains may sag for good.
        places.Require(path, what, act == DayAct.Mains ? allowed.Except(["seconds"]) : allowed, allowed);
    }

    private void CheckTime(string path, long at, ClockTime time, long before)
    {
        if (at < before)
        {
            ClockTime last = new(before / 1e6);
            throw places.Error(
                path, $"this step is at {time}, before the one above it at {last}; put the steps in order of time");
        }

        if (time.Seconds >= fields.Seconds.Seconds)
        {
            throw places.Error(
                path, $"this step is at {time}, but the day ends at {fields.Seconds}; put it earlier or make 'seconds' greater");
        }
    }
}
