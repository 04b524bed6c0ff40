using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SettingsGateTests
{
    private const string Crossed = "start-at must stay above stop-below (now 0.60 A and 0.35 A)";
    private const string Beyond = "start-at would be more than the sensor can show with its gain and turns: ";

    // The sensor shows 25.5 A with its default gain on this converter.
    [TestMethod]
    [DataRow((int)SettingId.StartAt, 25489, (int)SettingChange.Done, "")]
    [DataRow((int)SettingId.StartAt, 25490, (int)SettingChange.BeyondSensor, Beyond + "25.49 A at most now")]
    [DataRow((int)SettingId.Turns, 10, (int)SettingChange.Done, "")]
    [DataRow((int)SettingId.SensorGain, 1000000, (int)SettingChange.BeyondSensor, Beyond + "0.60 A at most now")]
    [DataRow((int)SettingId.StartAt, 350, (int)SettingChange.LevelsWouldCross, Crossed)]
    [DataRow((int)SettingId.StopBelow, 600, (int)SettingChange.LevelsWouldCross, Crossed)]
    [DataRow((int)SettingId.StopBelow, 599, (int)SettingChange.Done, "")]
    [DataRow((int)SettingId.RunOn, 180001, (int)SettingChange.OutOfRange, "a value is out of its range")]
    [DataRow((int)SettingId.LongestRun, 0, (int)SettingChange.Done, "")]
    [DataRow((int)SettingId.LongestRun, 1, (int)SettingChange.OutOfRange, "a value is out of its range")]
    public void AChangeIsTakenOrRefusedWithTheRuleAndThenNothingIsChanged(int id, int value, int expected, string sentence)
    {
        SettingsGate gate = Drafts.Gate();
        SettingValues values = new SettingValues();
        SettingsDraft draft = Drafts.New();
        draft[(SettingId)id] = value;
        draft[SettingId.ByHand] = 120000;
        SettingChange change = values.Take(draft, gate);
        Assert.AreEqual(expected, (int)change);
        Assert.AreEqual(change == SettingChange.Done ? 2 : 0, values.Differences(new SettingValues()));
        if (change != SettingChange.Done)
        {
            TextOutput output = new TextOutput();
            gate.Explain(output, change, Drafts.New(), draft);
            Assert.AreEqual(sentence, Texts.Take(output));
        }
    }

    [TestMethod]
    public void BothSetsOfDefaultsKeepTheRules()
    {
        Assert.AreEqual((int)SettingChange.Done, (int)Drafts.Gate().Check(Drafts.New()));
        Assert.AreEqual((int)SettingChange.Done, (int)Drafts.Gate().Check(new SettingsDraft(new SettingValues(true))));
    }
}
