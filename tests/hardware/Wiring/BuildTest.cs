namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>A test over all builds, and over builds that are wrong in one thing.</summary>
public abstract class BuildTest
{
    public static IEnumerable<object[]> Builds => BuildFiles.Names.Select(name => new object[] { name });

    private protected static Build With(Build build, params Wire[] wires) => build with { Wires = [.. build.Wires, .. wires] };

    private protected static Build Without(Build build, string from, string to)
    {
        Wire[] left = [.. build.Wires.Where(wire => wire.From != from || wire.To != to)];
        Assert.HasCount(build.Wires.Length - 1, left, "no such wire");
        return build with { Wires = left };
    }

    private protected static Build Change(Build build, string from, string to, Func<Wire, Wire> change) =>
        build with { Wires = [.. build.Wires.Select(wire => wire.From == from && wire.To == to ? change(wire) : wire)] };

    private protected static Wire Of(string from, string to, string colour, params string[] through) =>
        new() { From = from, To = to, Colour = colour, Through = through };
}
