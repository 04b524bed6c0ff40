using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Changes;

/// <summary>The verdict on an order, and what would make it fit.</summary>
internal sealed class Advice
{
    /// <summary>Judges, and looks for changes where it does not fit.</summary>
    /// <param name="judgement">The order, judged.</param>
    /// <param name="trials">The trials.</param>
    public Advice(Judgement judgement, TrialBook trials)
    {
        Judgement = judgement;
        if (judgement.Fits)
        {
            return;
        }

        ChangeSearch search = new(judgement.Order, trials);
        Changes = search.Find();
        LargestVacuum = search.LargestVacuum();
    }

    /// <summary>Gets the judgement.</summary>
    public Judgement Judgement { get; }

    /// <summary>Gets the sets of changes, any of which suffices.</summary>
    public IReadOnlyList<IReadOnlyList<Change>> Changes { get; } = [];

    /// <summary>Gets the largest vacuum with which it fits as it is, A; 0 where there is none.</summary>
    public int LargestVacuum { get; }

    /// <summary>Gets the verdict in one sentence.</summary>
    public string Verdict => !Judgement.Fits ? "Does not fit as given."
        : Judgement.Sections.Any(section => section.Outcome == Outcome.Mind) ? "Fits; mind what is marked so." : "Fits.";

    /// <summary>Gets what stands before the changes.</summary>
    public string Heading => Lines.Any() ? "It would fit, all else as given, with any one of:"
        : Judgement.Sections.Where(section => section.Outcome == Outcome.Fails).All(section => section.Title == TeachJudge.Title)
            ? "The tool is too small for the switch, with ten turns as well; work the vacuum by hand."
        : "No three changes that this program knows make it fit; ask a licensed electrician.";

    /// <summary>Gets what would make it fit, a line each.</summary>
    public IEnumerable<string> Lines
    {
        get
        {
            foreach (IReadOnlyList<Change> set in Changes)
            {
                yield return string.Join("; and ", set.Select(change => change.Text)) + ": "
                    + string.Join(" ", set.Select(change => change.Options));
            }

            if (LargestVacuum > 0)
            {
                yield return $"as it is, a vacuum of {LargestVacuum} A at most: --vacuum {LargestVacuum}A";
            }
        }
    }
}
