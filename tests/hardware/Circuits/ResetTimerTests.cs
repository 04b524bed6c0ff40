namespace NanoDustSwitch.HardwareTests.Circuits;

/// <summary>
/// The timer of hardware/circuits/reset-timer.cir: one restart for a board that was alive and hangs, none for one that never came
/// alive. Tolerances as for the heartbeat's driver; its capacitors 20 %, its drain 5 %.
/// </summary>
[TestClass]
public class ResetTimerTests
{
    // Boot and first flash of the lamp take a few seconds; what a board really takes nobody has measured.
    private const double LongestBoot = 8.0;

    private const string Early = "c=0.8 r=0.95 logic=3.2 supply=5.25 up=198k down=39.4k offset=-10m leak=5 temp=70 vth=0.8";
    private const string Late = "c=1.2 r=1.05 logic=3.4 supply=4.75 up=202k down=38.6k offset=10m temp=-10 vth=2";
    private const double Hang = 20.0;

    [TestMethod]
    [DataRow("vacuum=0 lit=0")]
    [DataRow("vacuum=0 lit=1")]
    [DataRow("vacuum=1 lit=1")]
    [DataRow("vacuum=1 lit=1 hold=0.1 " + Early)]
    [DataRow("vacuum=1 lit=1 " + Late)]
    [DataRow("vacuum=0 lit=0 " + Early)]
    [DataRow("vacuum=0 lit=1 " + Late)]
    public void ABoardThatHangsIsRestartedOnce(string changes)
    {
        Circuit circuit = Circuit.Run("reset-timer", changes);
        Assert.IsGreaterThan(2.5, circuit["up"]);
        Assert.IsInRange(Hang + LongestBoot, Hang + 60.0, circuit["fired"]);

        // A tenth of a millisecond would do (ESP32 data sheet: 50 us; memory).
        Assert.IsInRange(0.01, 1.0, circuit["back"] - circuit["fired"]);
        Assert.IsFalse(circuit.Has("again"));
    }

    // While it boots or is flashed its lines stand: a timer that fires then would never let it come alive.
    [TestMethod]
    [DataRow("vacuum=-1")]
    [DataRow("vacuum=-1 lit=1 hang=0.2")]
    [DataRow("vacuum=-1 lit=1 hang=0.2 logic=3.4 supply=4.75 temp=70")]
    public void ABoardThatNeverCameAliveIsLeftAlone(string changes)
    {
        Circuit circuit = Circuit.Run("reset-timer", changes);
        Assert.IsGreaterThan(0.0, circuit["boot"]);
        Assert.IsFalse(circuit.Has("fired"));
        Assert.IsGreaterThan(2.5, circuit["low"]);
    }

    [TestMethod]
    [DataRow("vacuum=0")]
    [DataRow("vacuum=1")]
    [DataRow("vacuum=0 " + Early)]
    [DataRow("vacuum=0 " + Late)]
    public void ABoardThatRestartsByItselfHasTimeForIt(string changes)
    {
        Circuit circuit = Circuit.Run("reset-timer", $"{changes} revive={Hang + LongestBoot}");
        Assert.IsFalse(circuit.Has("fired"));
        Assert.IsGreaterThan(2.5, circuit["low"]);
    }

    // The comparator's output is low while it is armed: from the fourth flash on without a break.
    [TestMethod]
    [DataRow("")]
    [DataRow(Early)]
    [DataRow(Late)]
    public void TheLampAloneArmsIt(string changes) => Assert.IsLessThan(0.5, Circuit.Run("reset-timer", changes)["ready"]);
}
