using System.Text.RegularExpressions;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>
/// The console's 'why' and the picture of <c>watch</c> give each state the same sentence; what the stream of numbers does not
/// hold, the picture leaves out at its end.
/// </summary>
[TestClass]
public sealed partial class WatchWordsTests
{
    [TestMethod]
    [DataRow("idle", 0.0)]
    [DataRow("starting", 1.0, "start-delay 5", "/run table")]
    [DataRow("on", 2.0, "/run table")]
    [DataRow("run-on", 1.0, "run-on 20", "vacuum on", "vacuum auto")]
    [DataRow("by-hand", 1.0, "vacuum on")]
    [DataRow("until-stop", 0.0, "/run table", "vacuum off")]
    [DataRow("held", 0.0, "hold")]
    [DataRow("fault", 4.0, "/sensor out")]
    public void Why_is_said_in_the_same_words(string state, double seconds, params string[] lines)
    {
        Workbench bench = new();
        foreach (string line in lines)
        {
            if (line[0] == '/')
            {
                bench.Do(line);
                bench.Run(0.5);
            }
            else
            {
                bench.Type(line);
            }
        }

        bench.Run(seconds);
        bench.Type("watch");
        bench.Board.Serial.Type(" ");
        bench.Run(0.1);
        WatchLine watched = bench.Said.Split('\n').Select(line => WatchLine.Parse(line.Trim())).Last(line => line is not null)!;
        Assert.AreEqual(state, StateText.Name(watched.State));

        bench.Forget();
        bench.Type("why");
        string why = Number().Replace(bench.Said.Split('\n')[1], "#");
        StringAssert.StartsWith(why, Number().Replace(watched.Why(), "#"));
    }

    [GeneratedRegex(@"[\d.]*\d", RegexOptions.NonBacktracking)]
    private static partial Regex Number();
}
