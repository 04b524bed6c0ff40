using System.Security.Cryptography;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>The pictures of the enclosure show what the drawings now make.</summary>
[TestClass]
public sealed class PictureTests
{
    [TestMethod]
    public void The_pictures_were_drawn_from_the_drawings_as_they_are()
    {
        string folder = Repository.PathOf("hardware/enclosure");
        byte[] sources = [.. Directory.GetFiles(folder, "*.scad").Order(StringComparer.Ordinal).SelectMany(File.ReadAllBytes)];
        string now = Convert.ToHexStringLower(SHA256.HashData(sources));
        Assert.AreEqual(
            now,
            File.ReadAllText(Path.Combine(folder, "pictures", "drawn-from.sha256")).Trim(),
            "A drawing or a parameter has changed since: run hardware/enclosure/draw-pictures and look at the pictures.");
    }
}
