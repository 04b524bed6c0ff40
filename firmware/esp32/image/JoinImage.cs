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

    // Where a library says which native code it needs of the firmware: a number, 0 for none.
    private const int NativeChecksum = 20;

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
        string natives = "";
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
                isReal &= bytes.Length > NativeChecksum + sizeof(uint)
                    && Encoding.ASCII.GetString(bytes, 0, Mark.Length) == Mark;
                image.Write(bytes, 0, bytes.Length);
                image.Write(new byte[3], 0, (4 - (bytes.Length % 4)) % 4);
                uint checksum = isReal ? BitConverter.ToUInt32(bytes, NativeChecksum) : 0;
                natives += checksum == 0 ? ""
                    : string.Format("  {0}, checksum 0x{1:X8}\n", Path.GetFileNameWithoutExtension(part.ItemSpec), checksum);
            }

            Write(image.ToArray(), isReal, natives);
        }

        return true;
    }

    private void Write(byte[] image, bool isReal, string natives)
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
        Say("{0}: {1} bytes, SHA-256 {2}", path, image.Length, hash);
        if (!isReal)
        {
            Say("Made from stand-ins for nanoFramework's packages: no image for a board.");
            return;
        }

        string fits = "A board whose firmware fits lists these at: nanoff --nanodevice --devicedetails --serialport PORT\n"
            + natives;
        File.WriteAllText(path + ".fits.txt", fits);
        Say(fits + "To put the image on it:\nnanoff --nanodevice --deploy --serialport PORT --image \"{0}\"", path);
    }

    private void Say(string text, params object[] arguments)
    {
        Log.LogMessage(MessageImportance.High, text, arguments);
    }
}
