using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Tables;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Makes a day of what its file says, and checks what no member shows by itself.</summary>
internal sealed class DayReader
{
    private readonly JsonSource _source;
    private readonly JsonPlaces _places;
    private readonly DayFields _fields;
    private readonly NameList _circuits;
    private readonly NameList _tools;

    private DayReader(JsonSource source)
    {
        _source = source;
        _places = new JsonPlaces(source);
        _fields = JsonBinding.Read(source, _places);
        _circuits = new NameList(_places, "circuit", [.. _fields.Circuits.Select(circuit => circuit.Name)]);
        _tools = new NameList(_places, "tool", [.. _fields.Tools.Select(tool => tool.Name)]);
    }

    /// <summary>Reads a day.</summary>
    /// <param name="source">Its file.</param>
    /// <returns>The day.</returns>
    public static Day Read(JsonSource source) => new DayReader(source).Read();

    private Day Read()
    {
        double seconds = _fields.Seconds.Seconds;
        if (seconds < 1)
        {
            throw _places.Error("$.seconds", $"a day must be at least 1 second long, not {seconds}");
        }

        _circuits.Check("$.vacuum.circuit", _fields.Vacuum.Circuit);
        SensorFields sensor = _fields.Sensor;
        Day day = new()
        {
            Name = _fields.Name,
            Seconds = seconds,
            Shop = Shop(),
            NoiseAmperes = sensor.Noise,
            HumAmperes = sensor.Hum,
            HumDegrees = sensor.HumDegrees,
            Crosstalk = sensor.Crosstalk,
            CrosstalkDegrees = sensor.CrosstalkDegrees,
            DriftMillivoltsPerHour = sensor.Drift,
            Turns = (int)sensor.Turns,
            MillivoltsPerAmpere = sensor.Gain,
            DropOutProbability = _fields.Converter.DropOuts,
            StepErrorCounts = _fields.Converter.StepErrors,
            Pace = ReadPace(),
            Tools = [.. _fields.Tools.Select(ReadTool)],
            Settings = _fields.Settings,
            Steps = new StepReader(_places, _fields, _tools, _circuits).Read(),
        };
        if (sensor.NoiseFrom is { } noise)
        {
            ReadNoise(noise, day);
        }

        day.Knows = [.. _fields.Knows.Select(ReadKnown)];
        for (int i = 0; i < day.Knows.Count; i++)
        {
            day.Memory = UsedBox.Teach(day, day.Knows[i]) ?? throw _places.Error(
                $"$.knows[{i}].tool",
                "the switch does not come to know this tool: it draws too little, or starts too differently");
        }

        return day;
    }

    private KnownTool ReadKnown(KnowsFields known, int index)
    {
        string path = $"$.knows[{index}]";
        _tools.Check($"{path}.tool", known.Tool);
        if (index >= ToolBook.Places || _fields.Knows.Take(index).Any(other => other.Tool == known.Tool))
        {
            throw _places.Error($"{path}.tool", $"the switch knows each tool once, and {ToolBook.Places} at the most");
        }

        if (known.Tool.Length > ToolNames.Most || !known.Tool.All(ToolNames.IsGood))
        {
            throw _places.Error(
                $"{path}.tool", $"the switch keeps names of 1 to {ToolNames.Most} small letters, figures, blanks or dashes");
        }

        if (known.NoVacuum && known.RunOn is not null)
        {
            throw _places.Error(path, "'runOn' and 'noVacuum' are both given; leave one of them");
        }

        return _fields.Tools.First(tool => tool.Name == known.Tool).ToolLine
            ? new KnownTool(known.Tool, known.RunOn, known.NoVacuum)
            : throw _places.Error($"{path}.tool", "this tool is not on the switch's line, which is all it sees");
    }

    private ShopSpecification Shop() => new()
    {
        Seed = (long)_fields.Seed,
        Hertz = _fields.Mains.Hertz,
        Volts = _fields.Mains.Volts,
        Sensor = _fields.Sensor.Kind,
        HasVacuumSensor = _fields.Vacuum.Sensor,
        IsVacuumThroughToolSensor = _fields.Vacuum.ThroughToolSensor,
        VacuumAmperes = _fields.Vacuum.Amperes,
        VacuumSoftStartSeconds = _fields.Vacuum.SoftStart,
        VacuumCircuit = _fields.Vacuum.Circuit,
        Circuits =
        [
            .. _fields.Circuits.Select(circuit =>
                new CircuitSpecification { Name = circuit.Name, Amperes = circuit.Amperes, Curve = circuit.Curve }),
        ],
        SourceOhms = _fields.Mains.Ohms,
        WanderHertz = _fields.Mains.WanderHertz,
        WanderSeconds = _fields.Mains.WanderSeconds,
        Flattening = _fields.Mains.Flattening,
    };

    private Pace ReadPace()
    {
        ReadingsFields readings = _fields.Readings;
        if (readings.Pace == PaceWord.Ideal)
        {
            return new Pace(readings.Rate, readings.Jitter);
        }

        return _places.Has("$.readings.rate") || _places.Has("$.readings.jitter")
            ? throw _places.Error(
                "$.readings", "at the pace of the 'esp32' the board reads as fast as it can; leave 'rate' and 'jitter' out")
            : Pace.Esp32();
    }

    private void ReadNoise(NoiseFields noise, Day day)
    {
        if (_places.Has("$.sensor.noise"))
        {
            throw _places.Error("$.sensor.noiseFrom", "'noise' and 'noiseFrom' are both given; leave one of them");
        }

        day.NoiseAmperes = noise.Amperes;
        day.NoiseCourseRate = noise.Rate;
        try
        {
            double[] recorded = Recording.Read(Path.Combine(_source.Folder, noise.File), (int)noise.Column);
            day.NoiseCourse = MainsResidual.Of(recorded, noise.Rate, noise.Hertz);
        }
        catch (UserException exception)
        {
            string reason = exception.Message.TrimEnd('.');
            throw _places.Error("$.sensor.noiseFrom.file", $"the recording cannot be used: {reason}");
        }

        if (day.NoiseCourse.Length < noise.Rate)
        {
            throw _places.Error(
                "$.sensor.noiseFrom.file",
                "the recording is shorter than a second, or nothing is left of it without its mains harmonics");
        }
    }

    private ToolSpecification ReadTool(ToolFields tool, int index)
    {
        string path = $"$.tools[{index}]";
        _circuits.Check($"{path}.circuit", tool.Circuit);
        ToolMembers.Check(_places, path, tool.Kind);

        // Rounded down to a figure that reads well in an error.
        double halfCycle = Math.Floor(50_000 / _fields.Mains.Hertz) / 100;
        if (_places.Has($"{path}.pulseMilliseconds") && !(tool.PulseMilliseconds >= 0.1 && tool.PulseMilliseconds <= halfCycle))
        {
            string outside = NumberConverter.Outside(0.1, halfCycle, tool.PulseMilliseconds);
            throw _places.Error($"{path}.pulseMilliseconds", $"'pulseMilliseconds' {outside}");
        }

        double least = ToolMembers.LeastInrush(tool.Kind);
        if (tool.Inrush < least)
        {
            throw _places.Error($"{path}.inrush", $"'inrush' of such a motor must be {least} or more, not {tool.Inrush}");
        }

        if (tool.StageAmperes >= 0.5 * tool.Amperes)
        {
            throw _places.Error($"{path}.stageAmperes", "'stageAmperes' must be below half of 'amperes'");
        }

        return new ToolSpecification
        {
            Name = tool.Name,
            Kind = tool.Kind,
            RatedAmperes = tool.Amperes,
            StandbyAmperes = tool.Standby,
            InrushMultiple = tool.Inrush,
            InrushSeconds = tool.InrushSeconds,
            CoastSeconds = tool.CoastSeconds,
            BrakeMilliseconds = tool.BrakeMilliseconds,
            SoftStartSeconds = tool.SoftStartSeconds,
            ConductionFraction = tool.Conduction,
            PulseMilliseconds = tool.PulseMilliseconds,
            StageAmperes = tool.StageAmperes,
            StageSeconds = tool.StageSeconds,
            RunsSeconds = tool.RunsSeconds,
            RestsSeconds = tool.RestsSeconds,
            CircuitName = tool.Circuit,
            IsOnToolLine = tool.ToolLine,
            NeedsNoVacuum = _fields.Knows.Any(known => known.NoVacuum && known.Tool == tool.Name),
        };
    }
}
