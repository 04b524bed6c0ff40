namespace NanoDustSwitch.Firmware;

/// <summary>Notes that the filter has been looked at.</summary>
public sealed class FilterWord : Word
{
    /// <summary>Initializes a new instance of the <see cref="FilterWord"/> class.</summary>
    public FilterWord()
        : base("filter", "filter done", "count the filter's hours from nought again")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        RunHours hours = console.Switch.Hours;
        if (rest == "done")
        {
            hours.FilterSeconds = 0;
            console.Switch.SaveHoursWhenQuiet();
            console.Say("The filter's hours count from nought again.");
            return;
        }

        console.Output.Fixed(hours.FilterSeconds / 360, 1).Text(" h since the filter was looked at; 'filter done' after the next look.").End();
    }
}
