namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>A name in a source that stands for something in another folder.</summary>
/// <param name="File">The source, from the repository's root.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Name">The name.</param>
/// <param name="From">Folder of the source in its room.</param>
/// <param name="Room">The room of what is used.</param>
/// <param name="To">Its folder in that room.</param>
internal sealed record FolderUse(string File, int Line, string Name, string From, Room Room, string To);
