using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Changes;

/// <summary>Finds the fewest changes that make an order fit, each found by judging the changed order.</summary>
/// <param name="order">The order, which does not fit.</param>
/// <param name="trials">The trials.</param>
internal sealed class ChangeSearch(Order order, TrialBook trials)
{
    private const int MostChanges = 3;
    private const int MostSets = 3;

    private readonly Change[] _candidates = [.. Candidates.For(order)];

    /// <summary>Finds sets of changes.</summary>
    /// <returns>A few sets of the fewest changes that suffice; none where no set of three does.</returns>
    public IReadOnlyList<IReadOnlyList<Change>> Find()
    {
        for (int count = 1; count <= MostChanges; count++)
        {
            List<IReadOnlyList<Change>> found = [];
            foreach (IReadOnlyList<Change> set in Sets(count, 0))
            {
                // One way with each choice of subjects: a cord thicker than the one that suffices says nothing new.
                bool isNew = !found.Exists(
                    other => other.Select(change => change.Subject).SequenceEqual(set.Select(change => change.Subject)));
                if (isNew && new Judgement(set.Aggregate(order, (changed, change) => change.Apply(changed)), trials).Fits)
                {
                    found.Add(set);
                    if (found.Count == MostSets)
                    {
                        break;
                    }
                }
            }

            if (found.Count > 0)
            {
                return found;
            }
        }

        return [];
    }

    /// <summary>Finds the largest vacuum, in whole amperes, with which the order fits as it is.</summary>
    /// <returns>Its current in A; 0 where none of 2 A and more does.</returns>
    public int LargestVacuum()
    {
        const int Least = 2;
        for (int amperes = (int)Math.Ceiling(order.VacuumCurrent.Amperes) - 1; amperes >= Least; amperes--)
        {
            Load vacuum = order.Vacuum with
            {
                Nameplate = $"{amperes} A",
                Current = UnitsNet.ElectricCurrent.FromAmperes(amperes),
                Watts = null,
            };
            if (new Judgement(order with { Vacuum = vacuum }, trials).Fits)
            {
                return amperes;
            }
        }

        return 0;
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
                if (rest.All(change => change.Subject != _candidates[i].Subject))
                {
                    yield return [_candidates[i], .. rest];
                }
            }
        }
    }
}
