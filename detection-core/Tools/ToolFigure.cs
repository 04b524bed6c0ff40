namespace NanoDustSwitch.Detection;

/// <summary>The numbers that <see cref="ToolBook"/> keeps of each tool. They are stored in flash in this order.</summary>
public enum ToolFigure
{
    /// <summary>Height of the onset, a swing in sixteenths of a count; 0 where the place is empty.</summary>
    Height = 0,

    /// <summary>Swing a tenth of a second later, in the same unit.</summary>
    After = 1,

    /// <summary>Lowest settled swing, in sixteenths of a count.</summary>
    Least = 2,

    /// <summary>Highest settled swing, in the same unit.</summary>
    Most = 3,

    /// <summary>Share of the third harmonic.</summary>
    Third = 4,

    /// <summary>Share of half waves.</summary>
    Half = 5,

    /// <summary>By how much the height differs from start to start, in parts of it.</summary>
    HeightSpread = 6,

    /// <summary>By how much what follows it differs, in parts of it.</summary>
    AfterSpread = 7,

    /// <summary>Length of the surge in stretches of 20 ms.</summary>
    Length = 8,

    /// <summary>Starts that it was seen to make.</summary>
    Starts = 9,

    /// <summary>When it was last seen: the number of that start, of all starts.</summary>
    Used = 10,

    /// <summary>How long it ran, in seconds.</summary>
    Seconds = 11,

    /// <summary>What a person asked for; see <see cref="ToolBook.NoVacuum"/>.</summary>
    Wish = 12,

    /// <summary>1 when a person has named it, else 0: it then stays before others.</summary>
    Named = 13,

    /// <summary>Place of the knee within the surge; see <see cref="ToolFigures.KneePart"/>.</summary>
    Knee = 14,

    /// <summary>Height of a first onset before that one, of a lamp or electronics; 0 where there is none.</summary>
    First = 15,

    /// <summary>What followed the first onset.</summary>
    FirstAfter = 16,

    /// <summary>Boot in which it was seen last, 0 to 65,535.</summary>
    Boot = 17,
}
