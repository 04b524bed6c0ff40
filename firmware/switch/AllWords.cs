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
        WhyText why,
        StayWatch stay,
        KnownTools tools)
    {
        SetWord set = new SetWord(desk);
        Word[] words = new Word[]
        {
            new HelpWord(desk.InUse),
            new StatusWord(core, desk, readings, hours, boot, safe, why),
            new WhyWord(core, why, stay, controls),
            new SettingsWord(desk),
            set,
            new SaveWord(desk),
            new UndoWord(desk),
            new DefaultsWord(desk),
            new TeachWord(core, desk, journal, sounder),
            new ToolsWord(core, tools),
            new CalibrateWord(core, desk),
            new TestWord(board, core, controls, boot, readings, safe, sounder),
            new WatchWord(),
            new RecordWord(),
            new DetailsWord(core, desk.InUse, board, bucket),
            new EventsWord(log),
            new ClearWord(core, controls),
            new FilterWord(hours),
            new VacuumWord(controls, why),
            new HoldWord(controls, why),
            new RestartWord(controls, desk),
            new LampWord(),
            new AboutWord(),
        };
        return new WordList(words, set);
    }
}
