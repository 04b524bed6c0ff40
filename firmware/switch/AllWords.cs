using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Makes the words of the console and hands each one the parts of the switch that it uses.</summary>
internal static class AllWords
{
    /// <summary>Makes the words, in the order in which 'help' shows them.</summary>
    public static WordList Make(
        IBoard board,
        SafeBoard safe,
        ReadingStatistics readings,
        Bucket bucket,
        DetectionCore core,
        Controls controls,
        SettingsDesk desk,
        BootRecord boot,
        RunHours hours,
        EventLog log,
        Journal journal,
        Sounder sounder,
        WhyText why)
    {
        SetWord set = new SetWord(desk);
        Word[] words = new Word[21];
        int i = 0;
        words[i++] = new HelpWord(desk.InUse);
        words[i++] = new StatusWord(core, desk, readings, hours, boot, safe, why);
        words[i++] = new WhyWord(core, why);
        words[i++] = new SettingsWord(desk);
        words[i++] = set;
        words[i++] = new SaveWord(desk);
        words[i++] = new UndoWord(desk);
        words[i++] = new DefaultsWord(desk);
        words[i++] = new TeachWord(core, desk, journal, sounder);
        words[i++] = new CalibrateWord(core, desk);
        words[i++] = new TestWord(core, controls, boot, readings, safe, sounder);
        words[i++] = new WatchWord();
        words[i++] = new RecordWord();
        words[i++] = new DetailsWord(core, desk.InUse, board, bucket);
        words[i++] = new EventsWord(log);
        words[i++] = new ClearWord(controls);
        words[i++] = new FilterWord(hours);
        words[i++] = new VacuumWord(controls, why);
        words[i++] = new HoldWord(controls, why);
        words[i++] = new RestartWord(controls, desk);
        words[i++] = new AboutWord();
        return new WordList(words, set);
    }
}
