using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// A new user's lines, right and wrong, and the board's answers, which were read and judged one by one. After a wanted change the
/// new answers are in the file that the message names: read them, then put them in place of the approved ones.
/// </summary>
[TestClass]
public sealed class ApprovedConsoleTests
{
    [TestMethod]
    public void A_new_user_gets_the_approved_answers()
    {
        StringBuilder shown = new();
        using (StringReader input = new(Repository.ReadText("tests/system/approved/new-user.lines")))
        using (StringWriter output = new(shown) { NewLine = "\n" })
        {
            PipedSession.Run(new LiveShop(FlashImage.Blank()), input, output);
        }

        string received = shown.ToString().Replace(ProductVersion.Text, "X.Y.Z", StringComparison.Ordinal);
        string approved = Repository.PathOf("tests/system/approved/new-user.txt");
        if (!File.Exists(approved) || File.ReadAllText(approved) != received)
        {
            string file = Path.Combine(AppContext.BaseDirectory, "new-user.received.txt");
            File.WriteAllText(file, received);
            Assert.Fail($"The answers have changed; compare {file} with tests/system/approved/new-user.txt.");
        }
    }
}
