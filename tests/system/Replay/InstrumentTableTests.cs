using System.Globalization;
using System.Text;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Tables;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>
/// Tables as instruments write them: 4 A at 50 Hz from half a second on. The heads with "Start" and "Increment", with "Channel A"
/// above "(mV)", and with a name and its unit in two lines are as public programs read them (found by a search for these words,
/// 2026); "tInc" and "Vertical Units" beside the numbers are from memory.
/// </summary>
[TestClass]
public sealed class InstrumentTableTests
{
    private const double Seconds = 1.5;
    private const double Begins = 0.5;

    private static readonly TableOptions s_nothing = new(null, null, null, null, 2, 1);

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(
        "Time,Channel A\n(ms),(mA)\n\n",
        "{7:0.000},{4:0.00}",
        5000,
        null,
        "in mA, by its name; column 1 is the time in ms, from -0.5 s")]
    [DataRow(
        "Time,Channel A,Channel B\n(ms),(mV),(A)\n",
        "{2:0.00},{6:0.000},{1:0.000}",
        5000,
        null,
        "column 3 ('Channel B (A)') in A, by")]
    [DataRow("Time,Channel A\n(ms),(mV)\n\n", "{2:0.00},{8:0.000}", 5000, 0.01, "in A, times 0.01, by --scale")]
    [DataRow("s,Channel A\n", "{0:0.0000},{1:0.000}", 5000, null, "('Channel A') in A, as nothing says otherwise")]
    [DataRow("s,I (A) raw\n", "{0:0.0000},{1:0.000}", 5000, null, "('I (A) raw') in A, by its name")]
    [DataRow("s,V,A\n", "{0:0.0000},230,{1:0.000}", 5000, null, "column 3 ('A') in A")]
    [DataRow("t (s),I [kA]\n", "{0:0.0000},{9:0.0000000}", 5000, null, "in kA, by its name")]
    [DataRow("t (s);I (µA)\n", "{0:0.0000};{10:0}", 5000, null, "in µA, by its name")]
    [DataRow(
        "X,CH1,Start,Increment,\nSequence,Volt,-5.0e-01,2.0e-04\n",
        "{11},{6:0.0000},",
        5000,
        10.0,
        "5,000 readings a second, from -0.5 s on, by the lines")]
    [DataRow("CH1V, t0 = -0.5, tInc = 0.0002,\n", "{6:0.0000},,,", 5000, 10.0, "from -0.5 s on, by the lines above")]
    [DataRow("Sample Interval,CH1:2.0E-04\n,CH1\n,Ampere\n", "{11},{1:0.000}", 5000, null, "column 2 ('CH1 Ampere') in A")]
    [DataRow(
        "Source,CH1\nVertical Units,A\nHorizontal Units,s\n\nTIME,CH1\n",
        "{0:0.0000},{1:0.000}",
        5000,
        null,
        "('CH1 A') in A, by its name")]
    [DataRow("s,A\n", "{0:0.000},{1:0.000}", 5000, null, "taken at even distances as the times repeat")]
    [DataRow("s,A\n", "{0:0.0000000},{1:0.000}", 100_000, null, "the board takes 2,000 of them")]
    [DataRow("s,A\n", "{0:0.0000},{12:0.000}", 5000, null, "It rests at 3.00 A, which is taken off")]
    [DataRow("s,A\n", "{0:0.0000},{1:0.000}|0.1", 5000, null, "line 7502 is cut and left out")]
    public void The_current_in_it_is_found(string header, string row, int rate, double? scale, string wanted)
    {
        TableReadings readings = Read(header, row, rate, s_nothing with { Scale = scale });
        TestContext.WriteLine(readings.Understood);
        StringAssert.Contains(readings.Understood, wanted);
        TableSource source = new("table", readings, 2, 1);
        ReplayRun run = new ReplayRun(source, source.Settings).Run(_ => { });
        Assert.IsTrue(run.IsGood);
        Assert.AreEqual(Begins + readings.Begin, run.SeenAt, 0.02);
        Assert.AreEqual(4, run.RunningAmperes, 0.2, "true rms");

        // Whatever it rests at, the answer comes as soon.
        Assert.AreEqual(0.78, run.VacuumAt - run.OnsetAt, 0.02);
    }

    [TestMethod]
    [DataRow("Time,Channel A\n(ms),(mV)\n\n", "{2:0.00},{6:0.000}", "is a voltage by its name, 'Channel A (mV)'")]
    [DataRow("Time,Channel A\n(ms),(V)\n\n", "{2:0.00},{6:0.000}", "is a voltage by its name, 'Channel A (V)'")]
    [DataRow("Source,CH1\nVertical Units,V\nTIME,CH1\n", "{0:0.0000},{1:0.000}", "is a voltage by its name, 'CH1 V'")]
    [DataRow("t (s),P (W)\n", "{0:0.0000},{1:0.000}", "is in W by its name, 'P (W)', and no current")]
    [DataRow("s,A\n", "{13:0.0000},{1:0.000}", "line 5002: the time in column 1 falls from 0.9998; cut the file there")]
    [DataRow("s,A\n", "{0:0.0},{1:0.000}", "has a gap of 0.1 s between two readings")]
    public void What_is_no_current_is_refused(string header, string row, string wanted)
    {
        UserException complaint = Assert.ThrowsExactly<UserException>(() => Read(header, row, 5000, s_nothing));
        StringAssert.Contains(complaint.Message, wanted);
    }

    [TestMethod]
    public void A_column_of_times_is_never_taken_for_the_current()
    {
        TableReadings readings = Read("", "{13:0.0000},{1:0.000}", 5000, s_nothing with { Rate = 5000 });
        StringAssert.Contains(readings.Understood, "column 2 in A");
        readings = Read("", "{0:0.0000},{1:0.000}", 5000, s_nothing with { Rate = 2000 });
        StringAssert.Contains(readings.Understood, "by --rate, and not 5,000 as the times in column 1 say");
        readings = Read("", "{1:0.000},{0:0.0000}", 5000, s_nothing with { TimeColumn = 2 });
        StringAssert.Contains(readings.Understood, "column 1 in A, as nothing says otherwise");
    }

    [TestMethod]
    [DataRow("{1:0.000}", 15.5, "LOOK: 62 A rms is more than a tool on a plug draws")]
    [DataRow("{14:0.000}", 1, "LOOK: 230 all the time is the mains' voltage and no current")]
    [DataRow("{1:0.000000}", 0.001, "LOOK: never more than 4 mA rms")]
    [DataRow("{1:0.000}", 1, "5,000 readings a second.")]
    public void What_no_tool_draws_is_said(string row, double scale, string wanted) =>
        StringAssert.Contains(Read("", "{0:0.0000}," + row, 5000, s_nothing with { Scale = scale }).Understood, wanted);

    [TestMethod]
    public void Of_many_readings_only_those_are_kept_that_are_used()
    {
        TableReadings readings = Read("s,A\n", "{0:0.0000000},{1:0.000}", 200_000, s_nothing);
        Assert.HasCount(3000, readings.Values);
        Assert.HasCount(15_000, readings.Fine!, "means for the spectrum");
    }

    // 0 s, 1 A, 2 ms, 3 µs, 4 mA, 5 nothing, 6 V of a clamp with 10 A a volt, 7 ms from a trigger, 8 mV of the clamp, 9 kA,
    // 10 µA, 11 row, 12 A with 3 A of direct current, 13 s that begin anew after one, 14 V of the mains.
    private static TableReadings Read(string header, string row, int rate, TableOptions options)
    {
        string[] parts = row.Split('|');
        StringBuilder text = new(header);
        for (int i = 0; i < Seconds * rate; i++)
        {
            double time = (double)i / rate;
            double sine = Math.Sqrt(2) * Math.Sin(2 * Math.PI * 50 * (time - Begins));
            double amperes = time < Begins ? 0 : 4 * sine;
            text.AppendFormat(
                CultureInfo.InvariantCulture,
                parts[0],
                time,
                amperes,
                time * 1e3,
                time * 1e6,
                amperes * 1e3,
                0,
                amperes / 10,
                (time * 1e3) - 500,
                amperes * 100,
                amperes / 1e3,
                amperes * 1e6,
                i,
                amperes + 3,
                time % 1,
                230 * sine).Append('\n');
        }

        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, text.Append(parts.Length > 1 ? parts[1] : "").ToString());
            return TableReadings.Read(file, options);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
