using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Trials;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Changes;

/// <summary>Finds the fewest changes that make an order fit, each found by judging the changed order.</summary>
/// <param name="order">The order, which does not fit.</param>
/// <param name="trials">The trials.</param>
internal sealed class ChangeSearch(Order order, TrialBook trials)
{
    private const int MostChanges = 3;
    private const int MostSets = 4;

    private readonly Change[] _candidates = [.. Candidates.For(order)];

    /// <summary>Finds sets of changes.</summary>
    /// <returns>
    /// A few sets of the fewest changes that suffice, first those that fit without a part added; more changes where the fewest
    /// hang on the motor's nameplate; none where no set of three suffices.
    /// </returns>
    public IReadOnlyList<Offer> Find()
    {
        List<Offer> found = [];
        for (int count = 1; count <= MostChanges && found.TrueForAll(offer => offer.HangsOnTheMotor); count++)
        {
            Find(found, count, Outcome.Mind);
            Find(found, count, Outcome.Add);
        }

        return found;
    }

    /// <summary>Finds the fewest changes, two at most, with which it fits without a part added.</summary>
    /// <returns>The changes.</returns>
    public IReadOnlyList<Offer> FindWithoutAddition()
    {
        List<Offer> found = [];
        for (int count = 1; count < MostChanges && found.Count == 0; count++)
        {
            Find(found, count, Outcome.Mind);
        }

        return found;
    }

    /// <summary>Finds the largest vacuum, in whole amperes, with which the order fits as it is.</summary>
    /// <returns>The order with it; null where none of 2 A and more fits.</returns>
    public Judgement? LargestVacuum() => Largest(
        order.VacuumCurrent,
        amperes => order with { Vacuum = Smaller(order.Vacuum, amperes) });

    /// <summary>
    /// Finds the largest current, in whole amperes, that the nameplate of a motor may show in place of the table's, so that the
    /// order fits as it is.
    /// </summary>
    /// <returns>The order with it; null where none of 2 A and more fits, or the tool is not given in horsepower.</returns>
    public Judgement? LargestTool() => order.Tool.Motor is null ? null : Largest(
        order.ToolCurrent,
        amperes => order with { Tool = Smaller(order.Tool, amperes) with { Motor = null, IsKindGiven = true } });

    private static Load Smaller(Load load, int amperes) => load with
    {
        Nameplate = $"{amperes} A",
        Current = ElectricCurrent.FromAmperes(amperes),
        Watts = null,
    };

    private Judgement? Largest(ElectricCurrent from, Func<int, Order> change)
    {
        const int Least = 2;
        for (int amperes = (int)Math.Ceiling(from.Amperes) - 1; amperes >= Least; amperes--)
        {
            Judgement judgement = new(change(amperes), trials);
            if (judgement.Outcome != Outcome.Fails)
            {
                return judgement;
            }
        }

        return null;
    }

    private void Find(List<Offer> found, int count, Outcome worst)
    {
        foreach (IReadOnlyList<Change> set in Sets(count, 0))
        {
            // One way with each choice of subjects: a cord thicker than the one that suffices says nothing new.
            bool isNew = found.TrueForAll(offer => offer.Changes.Any(
                known => !set.Any(change => change.Subject == known.Subject)));
            if (found.Count < MostSets && isNew)
            {
                Judgement judgement = new(set.Aggregate(order, (changed, change) => change.Apply(changed)), trials);
                if (judgement.Outcome <= worst)
                {
                    found.Add(new Offer(set, [.. judgement.Additions]));
                }
            }
        }
    }

    private IEnumerable<IReadOnlyList<Change>> Sets(int count, int from)
    {
        for (int i = from; i < _candidates.Length; i++)
        {
            if (count == 1)
            {
                yield return [_candidates[i]];
                continue;
            }

            foreach (IReadOnlyList<Change> rest in Sets(count - 1, i + 1))
            {
                if (rest.All(change => !change.IsSaidWith(_candidates[i])))
                {
                    yield return [_candidates[i], .. rest];
                }
            }
        }
    }
}
