namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>Which pins are joined by metal, in some state of the build.</summary>
internal sealed class Connections
{
    private readonly Dictionary<string, string> _parents = [];

    /// <summary>Joins the wires of a build, and what joins inside its parts.</summary>
    /// <param name="build">The build.</param>
    /// <param name="closed">Whether relays are closed.</param>
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
            if (part.Kind == "bus" || (joins ?? ["fuse"]).Contains(part.Kind))
            {
                foreach (Pin pin in part.Pins)
                {
                    Join(part.PinName(part.Pins[0]), part.PinName(pin));
                }
            }

            foreach (string[] contact in part.Contacts.Where(_ => closed).Select(contact => contact.Split('-')))
            {
                Join($"{part.Name}.{contact[0]}", $"{part.Name}.{contact[1]}");
            }
        }
    }

    public bool Joined(string one, string other) => Root(one) == Root(other);

    private void Join(string one, string other) => _parents[Root(one)] = Root(other);

    private string Root(string pin)
    {
        while (_parents.TryGetValue(pin, out string? parent) && parent != pin)
        {
            pin = parent;
        }

        return pin;
    }
}
