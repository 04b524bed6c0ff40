namespace NanoDustSwitch.Firmware;

/// <summary>Tells the filter's hours, and sets them to 0 when a person has looked at the filter.</summary>
public sealed class FilterWord : Word
{
    private readonly RunHours _hours;

    /// <summary>Initializes a new instance of the <see cref="FilterWord"/> class.</summary>
    /// <param name="hours">The run hours.</param>
    public FilterWord(RunHours hours)
        : base("filter", "filter [done]", "hours since you looked at the filter; count them anew")
    {
        _hours = hours;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (rest == "done")
        {
            _hours.StartFilter();
            console.Say("The filter's hours count anew.");
            return;
        }

        if (rest.Length > 0)
        {
            console.Say("Type 'filter' to see its hours, or 'filter done' when you have looked at it.");
            return;
        }

        console.Output.Fixed(_hours.FilterSeconds / 360, 1)
            .Text(" h since the filter was looked at; 'filter done' after the next look.").End();
    }
}
