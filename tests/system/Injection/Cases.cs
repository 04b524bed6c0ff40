using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>The cases of a day.</summary>
/// <param name="survey">The day.</param>
internal sealed class Cases(Survey survey)
{
    // Seldom called: while the board comes up every kind of nonsense is tried.
    private const int MostKinds = TroubledBoard.KindsOfNumber;

    // The second call of a pair comes within about two seconds, half of them within a step or two.
    private const int Near = 12;
    private const int Far = 4000;

    private static readonly Trouble[] s_troubles = [.. Enum.GetValues<Trouble>().Except([Trouble.PowerGoes])];

    /// <summary>Gives every call with every trouble.</summary>
    /// <returns>The cases in order of time.</returns>
    public IEnumerable<InjectionCase> All()
    {
        for (int call = 0; call < survey.Calls; call++)
        {
            bool isAskedAtBoot = survey.Member(call)
                is BoardCall.FullScale or BoardCall.MicrovoltsACount or BoardCall.FailedParts or BoardCall.ReadSlot;
            foreach (Trouble trouble in s_troubles)
            {
                int kinds = trouble == Trouble.Nonsense && isAskedAtBoot ? MostKinds : 1;
                for (int i = 0; i < kinds; i++)
                {
                    yield return Case(call, trouble, call + i);
                }
            }
        }
    }

    /// <summary>Draws calls: of half of the cases any, of the others each member as likely as the other.</summary>
    /// <param name="count">How many.</param>
    /// <param name="random">Draws.</param>
    /// <param name="arePairs">Whether a second call goes wrong after the first.</param>
    /// <returns>The cases in order of time.</returns>
    public IEnumerable<InjectionCase> Drawn(int count, Random random, bool arePairs)
    {
        int[][] members = [.. Enumerable.Range(0, survey.Calls).GroupBy(survey.Member).Select(calls => calls.ToArray())];
        List<InjectionCase> cases = [];
        for (int i = 0; i < count; i++)
        {
            int[] of = members[random.Next(members.Length)];
            int call = i % 2 == 0 ? random.Next(survey.Calls) : of[random.Next(of.Length)];
            InjectionCase first = Case(call, s_troubles[random.Next(s_troubles.Length)], random.Next(1 << 16));
            Blow then = new(
                random.Next(random.Next(2) == 0 ? Near : Far), s_troubles[random.Next(s_troubles.Length)], random.Next(1 << 16));
            cases.Add(arePairs ? first with { Then = then } : first);
        }

        return cases.OrderBy(tried => tried.Step);
    }

    /// <summary>
    /// Gives the power cuts at every byte of every write to flash: alone; after a write that failed; and before one, or a read,
    /// or all of them, fail while the board comes up.
    /// </summary>
    /// <returns>The cases in order of time.</returns>
    public IEnumerable<InjectionCase> Cuts()
    {
        for (int call = 0; call < survey.Calls; call++)
        {
            if (survey.Member(call) != BoardCall.WriteSlot)
            {
                continue;
            }

            (int step, int number) = survey.At(call);
            for (int kind = 0; kind < TroubledBoard.WaysToTear * (survey.BytesOf(call) + 1); kind++)
            {
                Blow cut = new(number, Trouble.PowerGoes, kind);
                yield return new InjectionCase(step, BoardCall.WriteSlot, cut);
                yield return new InjectionCase(
                    step,
                    BoardCall.WriteSlot,
                    new Blow(0, Trouble.ThrowsOnce, 0, BoardCall.WriteSlot),
                    new Blow(0, Trouble.PowerGoes, kind, BoardCall.WriteSlot));
                foreach (BoardCall then in new[] { BoardCall.ReadSlot, BoardCall.WriteSlot })
                {
                    yield return new InjectionCase(
                        step, BoardCall.WriteSlot, cut, new Blow(kind % Slots.Count, Trouble.ThrowsOnce, 0, then));
                    yield return new InjectionCase(step, BoardCall.WriteSlot, cut, new Blow(0, Trouble.ThrowsForEver, 0, then));
                }
            }
        }
    }

    private InjectionCase Case(int call, Trouble trouble, int kind)
    {
        (int step, int number) = survey.At(call);
        return new InjectionCase(step, survey.Member(call), new Blow(number, trouble, kind));
    }
}
