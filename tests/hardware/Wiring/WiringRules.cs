namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>What must hold for every build. Each rule gives a sentence for each thing that is wrong.</summary>
internal static class WiringRules
{
    public static IEnumerable<string> All(Build build) =>
    [
        .. EveryPinIsWired(build), .. IslandsStayApart(build), .. EarthReachesAll(build), .. NeutralsAreNotShared(build),
        .. OutletsHaveTheirCircuit(build), .. TheRelaySwitchesTheVacuum(build), .. TheSensorSeesTheToolAlone(build),
        .. ColoursSayWhatTheyAre(build), .. OnlyLowVoltageLeavesABox(build), .. EveryFeedHasItsFuse(build),
        .. EveryTransformerHasItsBurden(build), .. ACaseHasNoMains(build),
    ];

    public static IEnumerable<string> EveryPinIsWired(Build build)
    {
        string[] ends = [.. build.Wires.SelectMany(wire => new[] { wire.From, wire.To })];
        string[] pins = [.. build.Parts.SelectMany(part => part.Pins.Select(part.PinName))];
        return
        [
            .. ends.Except(pins).Select(end => $"{end} is no pin"),
            .. pins.Except(ends).Where(pin => !IsWindow(build, pin)).Select(pin => $"{pin} has no wire"),
            .. pins.GroupBy(pin => pin).Where(group => group.Count() > 1).Select(group => $"{group.Key} is there twice"),
        ];
    }

    /// <summary>Mains, earth, extra-low voltage and the console's side are joined by no metal, relays open or closed.</summary>
    public static IEnumerable<string> IslandsStayApart(Build build) =>
        from wire in build.Wires
        let one = build.PinOf(wire.From).Island
        let other = build.PinOf(wire.To).Island
        where one != other
        select $"{wire} joins {one} and {other}";

    /// <summary>
    /// Unbroken, by a wire of earth's colour of its own from the stud: nothing is earthed through something else.
    /// </summary>
    public static IEnumerable<string> EarthReachesAll(Build build)
    {
        // No switch and no fuse conducts here: earth may pass through neither. Nor does a wire of another colour.
        Connections wired = new(build, closed: false, joins: [], cut: wire => !IsEarthColour(build, wire.Colour));
        foreach (Part part in build.Parts.Where(part => part.Kind is "metal" or "outlet"))
        {
            string pin = EarthOf(part);
            IEnumerable<Part> plugs =
                build.Of("plug").Where(plug => part.Kind == "metal" ? plug.Box == part.Box : plug.Circuit == part.Circuit);
            if (!plugs.Any(plug => wired.Joined(pin, EarthOf(plug))))
            {
                yield return $"{part.Name} has no earth";
            }

            Wire[] wires = [.. build.Wires.Where(wire => wire.From == pin || wire.To == pin)];
            if (wires.Length != 1
                || build.PartOf(wires[0].From == pin ? wires[0].To : wires[0].From).Kind is not ("bus" or "plug"))
            {
                yield return $"{part.Name} has no earth wire of its own from the stud";
            }
        }
    }

    public static IEnumerable<string> NeutralsAreNotShared(Build build)
    {
        Connections closed = new(build, closed: true);
        return
            from one in Sources(build)
            from other in Sources(build)
            where string.CompareOrdinal(build.PartOf(one).Name, build.PartOf(other).Name) < 0 && closed.Joined(one, other)
            select $"{one} and {other} are joined: circuits share nothing";
    }

    /// <summary>
    /// With the relay closed every pin of an outlet is joined to the pin of the same name of its circuit's plug, and to no other.
    /// </summary>
    public static IEnumerable<string> OutletsHaveTheirCircuit(Build build)
    {
        Connections closed = new(build, closed: true);
        foreach (Part outlet in build.Of("outlet"))
        {
            foreach (Pin pin in outlet.Pins)
            {
                string[] joined = [.. Sources(build).Where(one => closed.Joined(one, outlet.PinName(pin)))];
                string wanted = SourceOf(build, outlet, pin);
                if (joined is not [string only] || only != wanted)
                {
                    string found = joined.Length == 0 ? "none" : string.Join(", ", joined);
                    yield return $"{outlet.PinName(pin)} should be joined to {wanted} and is to {found}";
                }
            }
        }
    }

    /// <summary>The relay opens every conductor of the vacuum that may be live, no other, and nothing of the tool's.</summary>
    public static IEnumerable<string> TheRelaySwitchesTheVacuum(Build build)
    {
        Connections open = new(build, closed: false);
        foreach (Part outlet in build.Of("outlet"))
        {
            foreach (Pin pin in outlet.Pins)
            {
                bool mustOpen =
                    outlet.For == "vacuum" && pin.Island == "mains" && (build.EitherMayBeLive || pin.Name.StartsWith('L'));
                bool isOpen = !open.Joined(outlet.PinName(pin), SourceOf(build, outlet, pin));
                if (mustOpen != isOpen)
                {
                    yield return $"{outlet.PinName(pin)} {(mustOpen ? "must" : "must not")} be opened by the relay";
                }
            }
        }
    }

    /// <summary>One line of the tool passes through the tool's sensor, once; nothing else does. The vacuum's likewise.</summary>
    public static IEnumerable<string> TheSensorSeesTheToolAlone(Build build)
    {
        foreach (Part transformer in build.Of("transformer"))
        {
            Wire[] through = [.. build.Wires.Where(wire => wire.Through.Contains(transformer.Name))];
            if (through.Length != 1 || through[0].Through.Count(name => name == transformer.Name) != 1)
            {
                yield return $"one wire must pass through {transformer.Name} once; {through.Length} do";
                continue;
            }

            Connections whole = new(build, closed: true);
            Connections without = new(build, closed: true, cut: wire => wire == through[0]);
            foreach (Part outlet in build.Of("outlet"))
            {
                string[] lost =
                [
                    .. outlet.Pins
                        .Where(pin => IsLost(outlet.PinName(pin), SourceOf(build, outlet, pin)))
                        .Select(pin => pin.Name),
                ];
                bool isIts = outlet.For == transformer.For;
                if (isIts ? lost.Length != 1 || !lost[0].StartsWith('L') : lost.Length != 0)
                {
                    string fed = lost.Length == 0 ? "nothing" : string.Join(", ", lost);
                    yield return $"{transformer.Name} watches the {transformer.For}, "
                        + $"and the wire through it feeds {outlet.Name}: {fed}";
                }
            }

            // The box's own supply would be seen as a small tool for ever.
            foreach (Part supply in build.Of("supply"))
            {
                IEnumerable<string> pins = supply.Pins.Where(pin => pin.Island == "mains").Select(supply.PinName);
                if (pins.Any(pin => Sources(build).Any(source => IsLost(pin, source))))
                {
                    yield return $"{supply.Name} is fed through {transformer.Name}";
                }
            }

            bool IsLost(string pin, string source) => whole.Joined(pin, source) && !without.Joined(pin, source);
        }
    }

    public static IEnumerable<string> ColoursSayWhatTheyAre(Build build)
    {
        Connections closed = new(build, closed: true);
        string[] mains = [.. build.Colours.Values.SelectMany(colours => colours)];
        foreach (Wire wire in build.Wires)
        {
            string island = build.PinOf(wire.From).Island;
            string[] roles = island == "mains"
                ?
                [
                    .. PlugPins(build).Where(end => closed.Joined(end.Plug.PinName(end.Pin), wire.From))
                        .Select(end => RoleOf(end.Pin)),
                ]
                : island == "earth" ? ["earth"] : [];
            bool isRight = roles.Length == 0
                ? !mains.Contains(wire.Colour)
                : roles.All(role => build.Colours[role].Contains(wire.Colour));
            if (!isRight)
            {
                yield return $"{wire} is {wire.Colour}, which is not for {(roles.Length == 0 ? "extra-low voltage" : roles[0])}";
            }
        }
    }

    public static IEnumerable<string> OnlyLowVoltageLeavesABox(Build build) =>
        from wire in build.Wires
        where build.PartOf(wire.From).Box != build.PartOf(wire.To).Box
            && build.PinOf(wire.From).Island is not ("elv" or "console")
        select $"{wire} goes from box to box and is {build.PinOf(wire.From).Island}";

    /// <summary>
    /// A fuse stands in every line that feeds the box's supply or a contactor's coil, and in both where two are hot (NEC 240.20:
    /// one in series with each ungrounded conductor; memory). The breaker behind the plug is too large for either, and may be
    /// a plain wire.
    /// </summary>
    public static IEnumerable<string> EveryFeedHasItsFuse(Build build)
    {
        Connections whole = new(build, closed: true);
        Connections blown = new(build, closed: true, joins: []);
        return
            from part in build.Parts
            where part.Kind is "supply" or "contactor"
            from pin in part.Pins
            where pin.Island == "mains" && !part.Contacts.Any(contact => contact.Split('-').Contains(pin.Name))
            from source in PlugPins(build)
            let line = source.Plug.PinName(source.Pin)
            where source.Pin.Name.StartsWith('L')
                && whole.Joined(part.PinName(pin), line) && blown.Joined(part.PinName(pin), line)
            select $"{part.PinName(pin)} has no fuse between it and {line}";
    }

    /// <summary>
    /// A burden lies across every transformer's winding, in the same box and before any plug: when that is out, the transformer
    /// keeps it.
    /// </summary>
    public static IEnumerable<string> EveryTransformerHasItsBurden(Build build)
    {
        Connections unplugged = new(build, closed: false);
        return
            from transformer in build.Of("transformer")
            where !build.Of("burden").Any(burden => burden.Box == transformer.Box
                && unplugged.Joined($"{burden.Name}.1", $"{transformer.Name}.S1")
                && unplugged.Joined($"{burden.Name}.2", $"{transformer.Name}.S2"))
            select $"{transformer.Name} has no burden before its plug";
    }

    /// <summary>In the case of a build without mains wiring nothing has a mains pin, and no mains wire ends there.</summary>
    public static IEnumerable<string> ACaseHasNoMains(Build build)
    {
        Connections closed = new(build, closed: true);
        return
            from part in build.Parts
            where part.Box == "case"
            from pin in part.Pins
            where pin.Island == "mains" || Sources(build).Any(source => closed.Joined(source, part.PinName(pin)))
            select $"{part.PinName(pin)} has mains in the case";
    }

    // Where the watched wire goes in and out: a hole, no pin.
    private static bool IsWindow(Build build, string pin) =>
        build.PartOf(pin).Kind == "transformer" && build.PinOf(pin).Side == "top";

    private static string EarthOf(Part part) => part.PinName(part.Pins.Single(pin => pin.Island == "earth"));

    private static IEnumerable<(Part Plug, Pin Pin)> PlugPins(Build build) =>
        build.Of("plug").SelectMany(plug => plug.Pins.Select(pin => (plug, pin)));

    // Where mains and earth come in.
    private static IEnumerable<string> Sources(Build build) => PlugPins(build).Select(end => end.Plug.PinName(end.Pin));

    // The pin of its circuit's plug that an outlet's pin must be joined to.
    private static string SourceOf(Build build, Part outlet, Pin pin) =>
        build.Of("plug").Single(plug => plug.Circuit == outlet.Circuit).PinName(pin);

    private static bool IsEarthColour(Build build, string colour) => build.Colours["earth"].Contains(colour);

    private static string RoleOf(Pin pin) => pin.Island == "earth" ? "earth" : pin.Name == "N" ? "neutral" : "line";
}
