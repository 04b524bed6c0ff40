namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>Which pins are joined by metal, in some state of the build.</summary>
internal sealed class Connections
{
    private readonly Dictionary<string, string> _parents = [];

    /// <summary>Joins the wires of a build, and what joins inside its parts.</summary>
    /// <param name="build">The build.</param>
    /// <param name="closed">Whether relays are closed. A breaker always is: it may be a plain wire.</param>
    /// <param name="joins">Kinds of parts, besides terminals, whose pins conduct to each other.</param>
    /// <param name="cut">Wires that are taken out.</param>
    public Connections(Build build, bool closed, string[]? joins = null, Func<Wire, bool>? cut = null)
    {
        foreach (Wire wire in build.Wires.Where(wire => cut is null || !cut(wire)))
        {
            Join(wire.From, wire.To);
        }

        foreach (Part part in build.Parts)
        {
            if (part.Kind is "bus" or "splitter" || (joins ?? ["fuse"]).Contains(part.Kind))
            {
                foreach (Pin pin in part.Pins)
                {
                    Join(part.PinName(part.Pins[0]), part.PinName(pin));
                }
            }

            bool conducts = closed || part.Kind == "breaker";
            foreach (string[] contact in part.Contacts.Where(_ => conducts).Select(contact => contact.Split('-')))
            {
                Join($"{part.Name}.{contact[0]}", $"{part.Name}.{contact[1]}");
            }
        }
    }

    public bool Joined(string one, string other) => Root(one) == Root(other);

    /// <summary>What stands for the net of a pin.</summary>
    public string Root(string pin)
    {
        while (_parents.TryGetValue(pin, out string? parent))
        {
            pin = parent;
        }

        return pin;
    }

    private void Join(string one, string other)
    {
        if (!Joined(one, other))
        {
            _parents[Root(one)] = Root(other);
        }
    }
}
