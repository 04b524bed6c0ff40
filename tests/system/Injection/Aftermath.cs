namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>What a person does and sees after trouble.</summary>
/// <param name="rig">The shop.</param>
/// <param name="witness">Looks at it.</param>
internal sealed class Aftermath(InjectedRig rig, Witness witness)
{
    /// <summary>The longest run-on, in microseconds: stretched for many starts, and the time to see that a tool has stopped.
    /// </summary>
    public const long StretchedRunOn = 61 * ASecond;

    /// <summary>What the console says of a vacuum that is held off.</summary>
    public const string HeldWords = "until 'vacuum auto' or a long press";

    private const long ASecond = 1_000_000;

    // A fault of the readings ends by itself after 10 s of good ones; a program that failed is tried again after 10 s.
    private const long FaultEnds = 12 * ASecond;

    // More than the restart gap, and than what the witness grants.
    private const long Rest = ASecond * 6 / 10;

    // Board's own start, ordinary start with its surge.
    private const long StartPatience = 3 * ASecond;

    // Leaves a question or a stream.
    private const byte ControlC = 3;

    private static readonly string[] s_lost = [" not ", "lost", "cannot"];

    private bool IsToldThatHoldIsLost => witness.Said.Split('\n').Any(line =>
        line.Contains("hold", StringComparison.Ordinal) && s_lost.Any(word => line.Contains(word, StringComparison.Ordinal)));

    /// <summary>Gets a value indicating whether the relay stayed closed with all tools off, handed back to auto.</summary>
    public bool IsRelayHeld { get; private set; }

    /// <summary>Lets go of the button and asks whether the vacuum is held off.</summary>
    /// <returns>True when the console says so.</returns>
    public bool IsSaidHeld()
    {
        rig.Do("-button");
        witness.Run(ASecond / 10);
        return witness.Ask("why").Contains(HeldWords, StringComparison.Ordinal);
    }

    /// <summary>Pulls the plug with a tool on.</summary>
    /// <returns>True if the vacuum stays off, or if it was said that it might not.</returns>
    public bool IsHoldKept()
    {
        rig.Do("+saw");
        rig.Replug();
        witness.Run(FaultEnds, () => rig.Switch is not null);
        return !witness.Run(StartPatience, () => rig.Board.IsRelayDriven) || IsToldThatHoldIsLost;
    }

    /// <summary>Puts the shop in order and has a tool start the vacuum.</summary>
    /// <returns>What it took.</returns>
    public Verdict NextStart()
    {
        rig.Tidy();
        if (Starts() || Starts())
        {
            return Verdict.Survived;
        }

        rig.Do("clear");
        if (Starts())
        {
            return Verdict.NeededClear;
        }

        rig.Replug();
        return Starts() ? Verdict.NeededPlug : Verdict.NoNextStart;
    }

    // What a person does who finds it stuck in something: ends it, waits until the vacuum is off, and switches the saw on.
    private bool Starts()
    {
        rig.Do("-saw");
        rig.Type([ControlC]);
        witness.Ask("");
        witness.Ask("vacuum auto");
        if (!witness.Run(StretchedRunOn, () => rig.Time - witness.LastDrivenAt > Rest))
        {
            IsRelayHeld = true;
            return false;
        }

        rig.Do("+saw");
        if (!witness.Run(StartPatience, () => rig.Board.IsRelayDriven))
        {
            witness.Run(FaultEnds);
            return false;
        }

        // A pause of the board while it is asked may have cost the relay its beat.
        for (int i = 0; i < 3; i++)
        {
            witness.Run(Rest);
            if (witness.Ask("why").Contains("on: ", StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
