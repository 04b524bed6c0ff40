namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>A name in a source that stands for something in another folder.</summary>
/// <param name="File">The source, from the repository's root.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Name">What is used.</param>
/// <param name="Room">The room that holds it.</param>
/// <param name="From">Folder of the source in its room.</param>
/// <param name="To">Folder of what is used in its room.</param>
internal sealed record FolderUse(string File, int Line, string Name, Room Room, string From, string To);
