using System.Globalization;
using System.Text;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>
/// Tables of readings as instruments and people write them: 4 A at 50 Hz from 0.5 s on, or what makes one
/// useless.
/// </summary>
[TestClass]
public sealed class TableTests
{
    private const double Seconds = 1.5;
    private const double Begins = 0.5;

    private static readonly TableOptions s_nothing = new(null, null, null, null, 2, 1);

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow("", "{0:0.00000},{1:0.0000}", 1000, "commas", "in A")]
    [DataRow("", "{0:0.00000},{1:0.0000},", 1000, "commas", "in A")]
    [DataRow(
        "time,current\ns,A\n\n",
        "{0:0.00000},{1:0.0000}",
        5000,
        "column 2 ('current A') in A, by its name",
        "column 1 is the time in s")]
    [DataRow("Zeit;Kanal A\n(ms);(A)\n", "{2:0.000};{1:0.0000}|,", 2000, "semicolons, decimal comma", "the time in ms")]
    [DataRow("t us\tmA\n", "{3:0}\t{4:0.0}", 2000, "in mA, by its name", "the time in us")]
    [DataRow("# made by hand\n# two columns\n", "  {0:0.00000}   {1:0.0000}", 2000, "blanks", "in A")]
    [DataRow("name, t, ADC\n", "x, {0:0.00000}, {5:0}", 2000, "in counts, by its name", "column 2 is the time")]
    [DataRow("", "{0:0.00000} {5:0}", 2000, "counts, as they are whole numbers", "column 1 is the time in s")]
    [DataRow("\"T, s\",\"I, A\"\n", "\"{0:0.00000}\",\"{1:0.0000}\"", 2000, "column 2 ('I, A')", "in A, by its name")]
    [DataRow("s,A\n", "{0:0.0000000},{1:0.0000}", 50_000, "50,000 readings a second; the board takes 2,000 of them", "in A")]
    public void Whatever_it_looks_like_the_current_in_it_is_the_same(
        string header, string row, int rate, string first, string second)
    {
        TableReadings readings = Read(header, row, rate, s_nothing);
        TestContext.WriteLine(readings.Understood);
        StringAssert.Contains(readings.Understood, first);
        StringAssert.Contains(readings.Understood, second);
        TableSource source = new("table", readings, 2, 1);
        ReplayRun run = new ReplayRun(source, source.Settings).Run(_ => { });
        Assert.AreEqual(Seconds, source.Seconds, 0.01);
        Assert.IsTrue(run.IsGood);
        Assert.AreEqual(Begins, run.SeenAt, 0.02);
        Assert.AreEqual(Begins, run.OnsetAt, 0.01);
        Assert.AreEqual(4, run.Trace.Last(point => point.Seconds < Seconds - 0.05).SwingAmperes, 0.4);
        double[] amperes = source.Wave.Amperes;
        Assert.AreEqual(4 * Math.Sqrt(2), amperes.Skip(amperes.Length / 2).Max() - amperes.Average(), 0.1);
    }

    [TestMethod]
    public void A_voltage_wants_a_scale_and_takes_it()
    {
        UserException complaint = Assert.ThrowsExactly<UserException>(
            () => Read("s,V\n", "{0:0.00000},{6:0.00000}", 2000, s_nothing));
        StringAssert.Contains(complaint.Message, "--scale");
        TableReadings readings = Read("s,V\n", "{0:0.00000},{6:0.00000}", 2000, s_nothing with { Scale = 10 });
        Assert.AreEqual(4 * Math.Sqrt(2), readings.Values.Max(), 0.05);
    }

    [TestMethod]
    public void What_was_said_goes_before_what_it_looks_like()
    {
        TableReadings readings = Read(
            "", "{5:0} {1:0.0000}", 2000, new TableOptions(1000, 2, "mA", null, 2, 1));
        Assert.AreEqual(1000, readings.Rate);
        Assert.IsFalse(readings.IsCounts);
        Assert.AreEqual(0.004 * Math.Sqrt(2), readings.Values.Max(), 1e-4);
    }

    [TestMethod]
    [DataRow("", "has no row of numbers")]
    [DataRow("a,b\nc,d\n", "has no row of numbers")]
    [DataRow("s,A\n0,1\n1,2\n2,1\n", "has 1 readings a second by the times in column 1; it takes 400 at least")]
    [DataRow("0,1\n1,2\n2,1\n", "--rate says how many readings a second")]
    [DataRow("3,1\n1,2\n2,1\n", "--rate says how many readings a second")]
    [DataRow("0.001\n0.002\n0.003\n", "has a column of times and no other numbers")]
    [DataRow("0,1\n0.001,x\n0.002,3\n", "line 2: 'x' in column 2 is not a number")]
    [DataRow("t,A\n0,1\n0.001,2\n0.002\n0.003,4\n", "line 4: there is no column 2; the row has 1")]
    [DataRow("0,1\n0.001,2\n0.002,3\n0.005,4\n0.006,4\n0.007,4\n0.008,4\n", "has a gap of 0.003 s between two readings")]
    [DataRow("record 1 nanoDustSwitch 9.1.0 4095 806\nset start-at 600\n", "breaks off before its buckets")]
    [DataRow(
        "record 1 nanoDustSwitch 9.1.0 4095 806\nset start-at 6000000\nset turns 1\n",
        "line 2: 'set start-at 6000000' is no line of a recording")]
    [DataRow(
        "record 1 nanoDustSwitch 9.1.0 4095 806\nset start-at 600\nbuckets 100\n~~~\n0000\n",
        "line 4: '~~~' is no line of a recording")]
    [DataRow("record 4 nanoDustSwitch 9.1.0 4095 806\n", "is a recording of version 4; this program reads versions 1 to 3.")]
    public void What_cannot_be_used_is_said_in_a_sentence(string text, string wanted)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, text);
            UserException complaint = Assert.ThrowsExactly<UserException>(() => SourceFile.Open(file, s_nothing));
            StringAssert.Contains(complaint.Message, wanted);
        }
        finally
        {
            File.Delete(file);
        }
    }

    // 0 s, 1 A, 2 ms, 3 µs, 4 mA, 5 counts, 6 V of a clamp with 10 A a volt.
    private static TableReadings Read(string header, string row, int rate, TableOptions options)
    {
        string[] parts = row.Split('|');
        StringBuilder text = new(header);
        for (int i = 0; i < Seconds * rate; i++)
        {
            double time = (double)i / rate;
            double amperes = time < Begins ? 0 : 4 * Math.Sqrt(2) * Math.Sin(2 * Math.PI * 50 * (time - Begins));
            string line = string.Format(
                CultureInfo.InvariantCulture,
                parts[0],
                time,
                amperes,
                time * 1e3,
                time * 1e6,
                amperes * 1e3,
                1576 + (amperes * 23.5 / 0.806),
                amperes / 10);
            text.Append(parts.Length > 1 ? line.Replace('.', ',') : line).Append('\n');
        }

        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, text.ToString());
            return TableReadings.Read(file, options);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
