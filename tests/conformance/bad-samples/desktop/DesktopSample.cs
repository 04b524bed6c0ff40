// What the device's library does not let compile. The rules look at it as if there were a library that did.
using System;
using System.Collections;
using System.Collections.Generic;
using System.Diagnostics;
using System.Linq;
using System.Threading.Tasks;

namespace NanoDustSwitch.BadSamples;

public interface IHasBody
{
    int Answer()
    {
        return 42;
    }
}

public record RecordSample(int Number);

public class DesktopSample
{
    private volatile int _shared;

    public static IEnumerable CountsUp()
    {
        yield return 1;
        yield return 2;
    }

    public static async void Waits()
    {
        await Task.Delay(1);
    }

    public static int SumsUp(int[] numbers)
    {
        return numbers.Where(number => number > 0).Sum();
    }

    public static object Lists()
    {
        return new List<int>();
    }

    public static object TakesPair((int First, int Second) pair)
    {
        return pair.First;
    }

    public static int MayBeNull(int? number)
    {
        return number ?? 0;
    }

    public static int Slices(Span<int> numbers)
    {
        return numbers.Length;
    }

    public static int CountsFromTheEnd(Index index)
    {
        return index.Value;
    }

    public static object CountsMoney(int number)
    {
        return number * 1.1m;
    }

    public static string Joins(string[] words)
    {
        return string.Join(",", words);
    }

    public static string Replaces(string text)
    {
        return text.Replace("a", "b");
    }

    public static bool ComparesWithoutCase(string text)
    {
        return text.StartsWith("a", StringComparison.OrdinalIgnoreCase);
    }

    public static void Sorts(int[] numbers)
    {
        Array.Sort(numbers);
    }

    public static int Larger(int first, int second)
    {
        return Math.Max(first, second);
    }

    public static object Measures()
    {
        return new Stopwatch();
    }

    public static int CatchesDivision(int number)
    {
        try
        {
            return 1 / number;
        }
        catch (DivideByZeroException)
        {
            return 0;
        }
    }

    public static long AsksTheTick()
    {
        return Environment.TickCount64;
    }

    public int ReadsShared()
    {
        return _shared;
    }

    public virtual int TakesIn(in int number)
    {
        return number;
    }
}
