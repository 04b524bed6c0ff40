using System;
using System.IO;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;

/// <summary>
/// Joins assemblies in nanoFramework's format to an image that a board takes: one after the other, each filled up with zeros to
/// a multiple of four bytes, as nanoFramework's own project system does. Compiled by Image.targets.
/// </summary>
public sealed class JoinImage : Task
{
    // Every assembly of firmware 1.x begins with this.
    private const string Mark = "NFMRK1\0\0";

    /// <summary>Gets or sets the assemblies' files, the program's last.</summary>
    [Required]
    public ITaskItem[] Parts { get; set; }

    /// <summary>Gets or sets the path of the image, which ends in .bin.</summary>
    [Required]
    public string ImageFile { get; set; }

    /// <inheritdoc/>
    public override bool Execute()
    {
        bool isReal = true;
        using (MemoryStream image = new MemoryStream())
        {
            foreach (ITaskItem part in Parts)
            {
                if (!File.Exists(part.ItemSpec))
                {
                    Log.LogError("{0} is missing.", part.ItemSpec);
                    return false;
                }

                byte[] bytes = File.ReadAllBytes(part.ItemSpec);
                isReal &= Encoding.ASCII.GetString(bytes, 0, Math.Min(bytes.Length, Mark.Length)) == Mark;
                image.Write(bytes, 0, bytes.Length);
                image.Write(new byte[3], 0, (4 - (bytes.Length % 4)) % 4);
            }

            Write(image.ToArray(), isReal);
        }

        return true;
    }

    private void Write(byte[] image, bool isReal)
    {
        // What was joined from stand-ins, to try the build itself, must never get onto a board: it becomes hexadecimal text, by
        // another name.
        string path = isReal ? ImageFile : ImageFile + ".stand-in.txt";
        byte[] bytes = isReal ? image : Encoding.ASCII.GetBytes(BitConverter.ToString(image));
        Directory.CreateDirectory(Path.GetDirectoryName(path));
        File.WriteAllBytes(path, bytes);
        string hash;
        using (SHA256 sha = SHA256.Create())
        {
            hash = BitConverter.ToString(sha.ComputeHash(bytes)).Replace("-", "").ToLowerInvariant();
        }

        // As the sum programs write it, and check it with -c.
        File.WriteAllText(path + ".sha256", hash + "  " + Path.GetFileName(path) + "\n");
        Say("{0}: {1:#,0} bytes, SHA-256 {2}", path, image.Length, hash);
        Say(
            isReal
                ? "To put it on a board, with the name of its port for PORT:\n"
                    + "nanoff --nanodevice --deploy --serialport PORT --image \"{0}\""
                : "Made from stand-ins for nanoFramework's packages: no image for a board.",
            path);
    }

    private void Say(string text, params object[] arguments)
    {
        Log.LogMessage(MessageImportance.High, text, arguments);
    }
}
