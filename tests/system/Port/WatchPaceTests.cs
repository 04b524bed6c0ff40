using System.Text;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>
/// What the board's streams cost it at its own pace: lines a second, bytes a second, and the longest time without a
/// reading.
/// </summary>
[TestClass]
public sealed class WatchPaceTests
{
    private const int Seconds = 20;

    // 115,200 baud with start and stop bit.
    private const int BytesASecond = 11_520;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow("watch", 1.0, 100.0, 5000)]
    [DataRow("watch", 2.0, 150.0, 10_000)]

    // The model charges all of a byte when it is sent, and a recording sends a hundred at a time; by the cost meter it is 2.4 ms.
    [DataRow("record", 1.0, 100.0, 10_000)]
    public void A_stream_leaves_no_hole_in_the_readings(string word, double instruction, double conversion, int longestGap)
    {
        Pace pace = Pace.Esp32() with
        {
            Costs = new BoardCosts { InstructionMicroseconds = instruction, ConversionMicroseconds = conversion },
        };
        TriangleLine line = new();
        Rig rig = new(new PcBoard(line, pace.Clock(1), FlashImage.Blank(), pace.Time(1)));
        rig.RunUntil(4_000_000);
        rig.Board.Serial.Type(word + "\r");

        // The line itself and the collection that it may bring about are not the stream's.
        rig.RunUntil(rig.Board.ShopTime + 500_000);
        rig.Board.Serial.TakeSent();
        line.Forget();
        rig.RunUntil(rig.Board.ShopTime + (Seconds * 1_000_000L));
        string[] lines = Encoding.ASCII.GetString(rig.Board.Serial.TakeSent()).Split("\r\n");
        int bytes = lines.Sum(one => one.Length + 2);

        TestContext.WriteLine(
            $"{lines.Length - 1} lines and {bytes:#,0} bytes in {Seconds} s, longest gap {line.LongestGap / 1000.0:0.00} ms");
        Assert.IsLessThan(longestGap, line.LongestGap);
        Assert.IsLessThan(BytesASecond * Seconds, bytes);
        Assert.IsTrue(rig.Switch.Core.IsToolRunning);
        Assert.IsGreaterThanOrEqualTo(10 * Seconds, lines.Length - 1);
    }
}
