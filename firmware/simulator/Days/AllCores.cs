using System.Runtime.ExceptionServices;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Does the same work many times, on all cores.</summary>
internal static class AllCores
{
    /// <summary>Does it. What goes wrong in any of them is thrown as it was.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="count">How often.</param>
    /// <param name="work">The work, told its number from 0; from any thread.</param>
    /// <returns>What came of each, in the order of their numbers.</returns>
    public static T[] Run<T>(int count, Func<int, T> work)
    {
        T[] results = new T[count];
        try
        {
            ParallelOptions allCores = new() { MaxDegreeOfParallelism = Environment.ProcessorCount };
            Parallel.For(0, count, allCores, i => results[i] = work(i));
        }
        catch (AggregateException exception)
        {
            ExceptionDispatchInfo.Throw(exception.InnerExceptions[0]);
        }

        return results;
    }
}
