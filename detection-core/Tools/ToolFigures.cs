namespace NanoDustSwitch.Detection;

/// <summary>What a tool's start showed. Swings are in sixteenths of a count.</summary>
public sealed class ToolFigures
{
    /// <summary>Parts of a share: so many are the whole.</summary>
    public const int Whole = 1024;

    /// <summary>Greatest swing there can be.</summary>
    public const int MostSwing = 1 << 17;

    /// <summary>Greatest share there can be.</summary>
    public const int MostPart = (1 << 16) - 1;

    /// <summary>A knee at the end of the surge.</summary>
    public const int MostKnee = 64;

    /// <summary>Height of the onset: swing of the mains frequency in its first 40 ms; 0 until it is known.</summary>
    public int Height;

    /// <summary>The same a tenth of a second later; 0 until it is known.</summary>
    public int After;

    /// <summary>Lowest steady swing that followed; the greatest number until there is one.</summary>
    public int Level = int.MaxValue;

    /// <summary>
    /// How much the third harmonic adds to the swing, in parts of <see cref="Whole"/>; negative where another tool hides it.
    /// </summary>
    public int Third;

    /// <summary>
    /// By how much more the current goes to one side than to the other, in parts of <see cref="Whole"/>: much for half waves.
    /// </summary>
    public int Half;

    /// <summary>When the current first was steady, in stretches of 20 ms after the onset; 0 until then.</summary>
    public int Length;

    /// <summary>When the current had come well down from its height, in the same unit; 0 until then.</summary>
    public int Knee;

    /// <summary>Gets the place of the knee within the surge: late for a motor that draws much until it is at speed.</summary>
    public int KneePart
    {
        get { return Knee == 0 ? 0 : Knee >= Length ? MostKnee : Knee * MostKnee / Length; }
    }

    /// <summary>
    /// Height of a first onset, which another one followed: of a tool's lamp or electronics before its motor; 0 where there
    /// was none.
    /// </summary>
    public int First;

    /// <summary>What followed the first onset.</summary>
    public int FirstAfter;

    /// <summary>Level of another tool that ran meanwhile, which makes all of these less sure; 0 where there was none.</summary>
    public int Other;

    /// <summary>Begins an onset; one that was before was the first stage.</summary>
    public void Begin()
    {
        if (First == 0 && Height > 0)
        {
            First = Height;
            FirstAfter = After > 0 ? After : Height;
        }

        Height = 0;
        After = 0;
        Level = int.MaxValue;
        Third = 0;
        Half = 0;
        Length = 0;
        Knee = 0;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        Height = tape.Number(Height);
        After = tape.Number(After);
        Level = tape.Number(Level);
        Third = tape.Number(Third);
        Half = tape.Number(Half);
        Length = tape.Number(Length);
        Knee = tape.Number(Knee);
        First = tape.Number(First);
        FirstAfter = tape.Number(FirstAfter);
        Other = tape.Number(Other);
    }
}
