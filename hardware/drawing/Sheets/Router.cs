using NanoDustSwitch.Drawing.Netlists;

namespace NanoDustSwitch.Drawing.Sheets;

/// <summary>
/// Lays the wires of a drawing along its grid: around the parts, with few bends and crossings, and no two on one line. Costs are
/// whole numbers and the order is that of the source, so the same source gives the same drawing everywhere.
/// </summary>
internal sealed class Router
{
    private const int Step = 10;
    private const int Bend = 45;
    private const int Crossing = 25;
    private const int Beside = 6;
    private const int Stub = 2;

    private readonly Build _build;
    private readonly int _width;
    private readonly int _height;
    private readonly bool[,] _blocked;

    // Whether a wire lies there, along (0) or across (1).
    private readonly bool[,,] _taken;

    public Router(Build build)
    {
        _build = build;
        _width = build.Size[0] / Layout.Grid;
        _height = build.Size[1] / Layout.Grid;
        _blocked = new bool[_width, _height];
        _taken = new bool[_width, _height, 2];
        foreach (Part part in build.Parts)
        {
            Block(part);
        }

        // The first steps away from every pin belong to its wire.
        foreach (Part part in build.Parts)
        {
            foreach (Pin pin in part.Pins)
            {
                int direction = Layout.DirectionOf(pin);
                Spot spot = Layout.PlaceOf(part, pin);
                for (int i = 0; i < Stub; i++)
                {
                    spot = spot.Next(direction);
                    _taken[spot.X, spot.Y, 0] = true;
                    _taken[spot.X, spot.Y, 1] = true;
                }
            }
        }
    }

    /// <summary>Lays a wire from pin to pin.</summary>
    /// <returns>The corners, both pins among them.</returns>
    public IReadOnlyList<Spot> Lay(string from, string to)
    {
        int leaving = Layout.DirectionOf(_build.PinOf(from));
        int arriving = Layout.DirectionOf(_build.PinOf(to));
        Spot first = Layout.PlaceOf(_build, from);
        Spot last = Layout.PlaceOf(_build, to);
        List<Spot> path = Find(Away(first, leaving), leaving, Away(last, arriving), (arriving + 2) % 4)
            ?? throw new InvalidDataException($"No room is left on the sheet for the wire from {from} to {to}.");
        Take(path);
        return Corners([first, .. path, last]);
    }

    private static Spot Away(Spot spot, int direction)
    {
        for (int i = 0; i < Stub; i++)
        {
            spot = spot.Next(direction);
        }

        return spot;
    }

    private static List<Spot> Corners(List<Spot> path)
    {
        List<Spot> corners = [path[0]];
        for (int i = 1; i < path.Count - 1; i++)
        {
            (Spot before, Spot at, Spot after) = (path[i - 1], path[i], path[i + 1]);
            bool straight = (before.X == at.X && at.X == after.X) || (before.Y == at.Y && at.Y == after.Y);
            if (!straight)
            {
                corners.Add(at);
            }
        }

        corners.Add(path[^1]);
        return corners;
    }

    private List<Spot>? Find(Spot start, int leaving, Spot end, int arriving)
    {
        Dictionary<(Spot Spot, int Direction), int> costs = [];
        Dictionary<(Spot Spot, int Direction), (Spot Spot, int Direction)> before = [];
        PriorityQueue<(Spot Spot, int Direction), (int Cost, int Number)> open = new();
        int number = 0;
        costs[(start, leaving)] = 0;
        open.Enqueue((start, leaving), (0, number++));
        while (open.TryDequeue(out (Spot Spot, int Direction) at, out _))
        {
            if (at == (end, arriving))
            {
                List<Spot> path = [at.Spot];
                while (before.TryGetValue(at, out at))
                {
                    path.Insert(0, at.Spot);
                }

                return [.. path.Distinct()];
            }

            for (int direction = 0; direction < 4; direction++)
            {
                bool turns = direction != at.Direction;
                bool isEnd = at.Spot == start || at.Spot == end;
                if (direction == (at.Direction + 2) % 4 || (turns && !isEnd && (IsTaken(at.Spot, 0) || IsTaken(at.Spot, 1))))
                {
                    continue;
                }

                // A turn at the end goes no further: it only makes the wire arrive as it should.
                Spot next = at.Spot == end ? end : at.Spot.Next(direction);
                if (next != end && !IsFree(next, direction & 1))
                {
                    continue;
                }

                int cost = costs[at] + Step + (turns ? Bend : 0) + Nearby(next, direction);
                if (!costs.TryGetValue((next, direction), out int known) || cost < known)
                {
                    costs[(next, direction)] = cost;
                    before[(next, direction)] = at;
                    open.Enqueue(
                        (next, direction), (cost + (Step * (Math.Abs(next.X - end.X) + Math.Abs(next.Y - end.Y))), number++));
                }
            }
        }

        return null;
    }

    private int Nearby(Spot spot, int direction)
    {
        int axis = direction & 1;
        int cost = IsTaken(spot, 1 - axis) ? Crossing : 0;
        cost += IsTaken(spot.Next((direction + 1) % 4), axis) ? Beside : 0;
        return cost + (IsTaken(spot.Next((direction + 3) % 4), axis) ? Beside : 0);
    }

    private bool IsFree(Spot spot, int axis) =>
        spot.X > 0 && spot.Y > 0 && spot.X < _width - 1 && spot.Y < _height - 1
        && !_blocked[spot.X, spot.Y] && !_taken[spot.X, spot.Y, axis];

    private bool IsTaken(Spot spot, int axis) =>
        spot.X >= 0 && spot.Y >= 0 && spot.X < _width && spot.Y < _height && _taken[spot.X, spot.Y, axis];

    private void Take(List<Spot> path)
    {
        for (int i = 1; i < path.Count; i++)
        {
            int axis = path[i].X == path[i - 1].X ? 1 : 0;
            _taken[path[i].X, path[i].Y, axis] = true;
            _taken[path[i - 1].X, path[i - 1].Y, axis] = true;
        }
    }

    private void Block(Part part)
    {
        int right = (part.At[0] + part.Size[0]) / Layout.Grid;
        int bottom = (part.At[1] + part.Size[1]) / Layout.Grid;
        for (int x = (part.At[0] / Layout.Grid) - 1; x <= right + 1; x++)
        {
            for (int y = (part.At[1] / Layout.Grid) - 1; y <= bottom + 1; y++)
            {
                _blocked[x, y] = true;
            }
        }
    }
}
