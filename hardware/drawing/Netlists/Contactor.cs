namespace NanoDustSwitch.Drawing.Netlists;

/// <summary>
/// Makes of a build the one for a vacuum over the relay's motor rating: a contactor takes over the relay's contacts, and the
/// relay switches the contactor's coil, which is fed through a fuse of its own.
/// </summary>
internal static class Contactor
{
    private const string Relay = "K1";

    /// <summary>Whether a build has the vacuum's relay.</summary>
    public static bool IsFor(Build build) => build.Parts.Any(part => part.Name == Relay && part.Contacts.Length > 0);

    /// <summary>Gives the build with a contactor; parts, wires and places else as they were.</summary>
    public static Build In(Build build)
    {
        Part relay = build.Parts.Single(part => part.Name == Relay);
        string[] poles = [.. relay.Pins.Where(pin => pin.Island == "mains").Select(pin => $"{pin.Name} top mains")];
        Part contactor = relay with
        {
            Name = "KM",
            Kind = "contactor",
            Text = "contactor for motors, coil for mains voltage",
            At = [900, 300],
            Size = [270, 100],
            PinTexts = [.. poles, "A1 left mains", "A2 bottom mains"],
        };
        Part coilRelay = relay with
        {
            Text = "relay for the contactor's coil",
            Contacts = ["11-14"],
            PinTexts = ["11 top mains", "14 top mains", "A1 bottom elv", "A2 bottom elv"],
        };
        Part fuse = build.Parts.Single(part => part.Name == "F1") with { Name = "F3", At = [640, 460], Size = [130, 60] };

        // Of two hot conductors each has a fuse, as for the supply.
        bool isTwoHot = build.Parts.Any(part => part.Name == "F2");
        Part[] added = isTwoHot ? [contactor, fuse, fuse with { Name = "F4", At = [980, 450] }] : [contactor, fuse];
        string toLine = Next(build, "XL");
        string toOther = Next(build, "XN");
        string line = build.Wires.Single(wire => wire.To == $"{Relay}.11").Colour;
        string other = build.Wires.First(wire => wire.From == "XN.2").Colour;
        Wire[] coil =
        [
            Of(toLine, "F3.1", line), Of("F3.2", $"{Relay}.11", line), Of($"{Relay}.14", "KM.A1", line),
            .. isTwoHot ? [Of(toOther, "F4.1", other), Of("F4.2", "KM.A2", other)] : new[] { Of(toOther, "KM.A2", other) },
        ];
        return build with
        {
            Title = build.Title + ", with a contactor",
            Notes = [.. build.Notes.Select(note => note.Replace("the relay", "the contactor", StringComparison.Ordinal))],
            Parts =
            [
                .. build.Parts.Select(part => part == relay ? coilRelay : part.Name is "XL" or "XN" ? Longer(build, part) : part),
                .. added,
            ],
            Wires = [.. build.Wires.Select(wire => wire with { From = Moved(wire.From), To = Moved(wire.To) }), .. coil],
        };

        // The vacuum's conductors go from the relay's contacts to those of the contactor, which have the same numbers.
        string Moved(string pin) =>
            poles.Any(pole => pin == $"{Relay}.{pole.Split(' ')[0]}") ? pin.Replace(Relay, "KM", StringComparison.Ordinal) : pin;
    }

    private static string Next(Build build, string terminals) =>
        $"{terminals}.{build.Parts.Single(part => part.Name == terminals).Pins.Count + 1}";

    private static Part Longer(Build build, Part terminals) =>
        terminals with { PinTexts = [.. terminals.PinTexts, $"{Next(build, terminals.Name).Split('.')[1]} bottom mains"] };

    private static Wire Of(string from, string to, string colour) => new() { From = from, To = to, Colour = colour };
}
