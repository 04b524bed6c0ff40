using System.CommandLine;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Texts;

namespace NanoDustSwitch.Sizing.Commands;

/// <summary>The options, and the order that they make.</summary>
internal sealed class SizingOptions
{
    private readonly Option<string> _vacuum = Needed("--vacuum", "Nameplate of the vacuum: 10A or 1200W.");
    private readonly Option<string> _tool = Needed(
        "--tool",
        "Nameplate of the tool: 12A, 1400W, or a motor's rated horsepower, 1.5hp; "
        + "with /induction, /universal or /soft-start its kind (without: induction, the hardest start).");

    private readonly Option<string> _supply = Needed(
        "--supply", "100V, 120V, 230V ... with the frequency: 120V/60Hz; 240V/60Hz is two hot wires.");
    private readonly Option<string> _breaker = Needed(
        "--breaker", "Breaker of the tool's circuit: 15A; at 230 V also C16 (16A is B16).");
    private readonly Option<string[]> _cords = new("--cord")
    {
        Description = "A cord: 8m/14AWG or 3m/1.5mm2 of the box; head:1m/14AWG of the sensing head; tool:25ft/16AWG, "
            + "vacuum:6m/1mm2. May be given several times.",
    };

    private readonly Option<string> _sensor = Needed("--sensor", "transformer-100A, hall-5A, hall-20A or hall-30A.");
    private readonly Option<string?> _plug = new("--plug")
    {
        Description = "Plug and receptacle: US15, US20, UK13, EU16, CH10, AU10 ...",
    };
    private readonly Option<string?> _vacuumCircuit = new("--vacuum-circuit")
    {
        Description = "The vacuum's and the box's own circuit, with a sensing head on the tool's: 20A, also 15A/120V beside "
            + "a 240 V tool, and 20A/US20; 'same': a plug each on one circuit.",
    };

    private readonly Option<string> _turns = new("--turns")
    {
        Description = "Turns of the tool's wire through the transformer, 1 to 10.",
        DefaultValueFactory = _ => "1",
    };
    private readonly Option<string> _box = new("--box")
    {
        Description = "Outside of the sealed box.",
        DefaultValueFactory = _ => $"{Box.Drawn}",
    };
    private readonly Option<bool> _readyMade = new("--ready-made")
    {
        Description = "No mains wiring: a switching unit for the vacuum and a line splitter for the tool, both bought and "
            + "approved, a plug each. Without --vacuum-circuit both on the one circuit.",
    };
    private readonly Option<bool> _contactor = new("--contactor")
    {
        Description = "The vacuum's contact is a contactor's, where no relay of the rating is to be had.",
    };
    private readonly Option<string?> _build = new("--build")
    {
        Description = "Write to this folder what to build this order by: drawing, parts, tools, label, settings, sheet (HTML to "
            + "print, and Markdown). Nothing where it does not fit.",
    };
    private readonly Option<string?> _report = new("--report")
    {
        Description = "Write the judgement to this page (HTML), with the starts against the breaker's curve.",
    };

    /// <summary>Adds them to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])
            [_vacuum, _tool, _supply, _breaker, _cords, _sensor, _plug, _vacuumCircuit, _turns, _box,
            _readyMade, _contactor, _build, _report])
        {
            command.Options.Add(option);
        }
    }

    /// <summary>Gives the page that is to be written.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <returns>The file, or null.</returns>
    public string? Report(ParseResult parsed) => parsed.GetValue(_report);

    /// <summary>Gets the folder that is to be written.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <returns>The folder, or null.</returns>
    public string? Build(ParseResult parsed) => parsed.GetValue(_build);

    /// <summary>Reads the order.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <returns>The order.</returns>
    public Order Order(ParseResult parsed)
    {
        Supply supply = SupplyText.Read(parsed.GetRequiredValue(_supply));
        Circuit tool = CircuitText.Tool(parsed.GetRequiredValue(_breaker), parsed.GetValue(_plug), supply);
        bool isReadyMade = parsed.GetValue(_readyMade);
        string? own = parsed.GetValue(_vacuumCircuit) ?? (isReadyMade ? CircuitText.Same : null);
        Circuit? vacuum = own is null ? null : CircuitText.Vacuum(own, tool);
        SensorModel sensor = SensorText.Read(parsed.GetRequiredValue(_sensor));
        List<Cord> cords = [.. (parsed.GetValue(_cords) ?? []).Select(CordText.Read)];
        if (sensor.Kind == SensorKind.Hall && parsed.GetValue(_build) is not null)
        {
            throw new UserException(
                $"--build has no drawing with --sensor {sensor.Name}, whose insulation is basic only; "
                + "allowed is transformer-100A.");
        }

        int turns = SensorText.Turns(parsed.GetValue(_turns)!, sensor);
        if (isReadyMade)
        {
            ReadyMadeText.Check(cords, sensor, turns, isBoxGiven: parsed.GetResult(_box) is { Implicit: false });
            if (parsed.GetValue(_contactor))
            {
                throw new UserException(
                    "--contactor is for a box with mains in it; with --ready-made the unit has its own contact.");
            }
        }
        else if (!cords.Exists(cord => cord.Use == CordUse.Box))
        {
            throw new UserException("--cord is missing for the box itself; give its length and size, such as 2m/14AWG.");
        }

        if (own is null && cords.Exists(cord => cord.Use == CordUse.Head))
        {
            throw new UserException("--cord head: is for a sensing head, which only goes with --vacuum-circuit.");
        }

        return new Order(
            LoadText.Vacuum(parsed.GetRequiredValue(_vacuum), (vacuum ?? tool).Supply),
            LoadText.Tool(parsed.GetRequiredValue(_tool), supply),
            tool,
            vacuum,
            own is not null && CircuitText.IsSame(own),
            own is null || isReadyMade ? cords : CordText.WithHead(cords, tool),
            sensor,
            turns,
            BoxText.Read(parsed.GetValue(_box)!))
        {
            IsReadyMade = isReadyMade,
            HasContactor = parsed.GetValue(_contactor),
        };
    }

    private static Option<string> Needed(string name, string description) =>
        new(name) { Description = description, Required = true };
}
