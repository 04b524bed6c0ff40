namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>Rooms and folders use each other as <see cref="RoomTable"/> says, and in no other way.</summary>
internal static class RoomRule
{
    /// <summary>The uses that are not allowed.</summary>
    public static IEnumerable<string> NotAllowed(Room room, IEnumerable<FolderUse> uses) => uses
        .Where(use => use.Room.Folder == room.Folder ? !room.Allows(use.From, use.To) : !room.Uses.Contains(use.Room.Folder))
        .Select(use => $"{use.File} line {use.Line}: {use.Name} is in {PathOf(use.Room, use.To)}, "
            + $"which {PathOf(room, use.From)} may not use.");

    /// <summary>What is allowed and nobody does.</summary>
    public static IEnumerable<string> NotUsed(Room room, IReadOnlyList<FolderUse> uses)
    {
        var inside = uses.Where(use => use.Room.Folder == room.Folder).Select(use => (use.From, use.To)).ToHashSet();
        return room.Arrows.SelectMany(row => row.Value.Select(to => (From: row.Key, To: to)))
            .Where(arrow => !inside.Contains(arrow))
            .Select(arrow => $"{PathOf(room, arrow.From)} may use {PathOf(room, arrow.To)} and does not.")
            .Concat(room.Uses.Except(uses.Select(use => use.Room.Folder))
                .Select(other => $"{room.Folder} may use {other} and does not."));
    }

    /// <summary>The shortest cycle through each place that has one.</summary>
    public static IEnumerable<string> Cycles(IReadOnlyDictionary<string, string[]> arrows) =>
        arrows.Keys.Select(place => ShortestCycle(arrows, place)).OfType<string>();

    private static string? ShortestCycle(IReadOnlyDictionary<string, string[]> arrows, string place)
    {
        var seen = new HashSet<string>();
        var ways = new Queue<string[]>([[place]]);
        while (ways.TryDequeue(out var way))
        {
            foreach (var next in arrows.TryGetValue(way[^1], out var to) ? to : [])
            {
                if (next == place)
                {
                    return string.Join(" -> ", [.. way, next]);
                }

                if (seen.Add(next))
                {
                    ways.Enqueue([.. way, next]);
                }
            }
        }

        return null;
    }

    private static string PathOf(Room room, string folder) => folder == Room.Top ? room.Folder : $"{room.Folder}/{folder}";
}
