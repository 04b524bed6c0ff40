using System.Reflection;

namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>Bytes of the numbers that an object keeps, those of its own objects and arrays included.</summary>
internal static class StateSize
{
    /// <summary>Adds them up.</summary>
    /// <param name="things">The objects.</param>
    public static int Of(params object[] things) => things.Sum(thing => Of(thing, []));

    private static int Of(object? thing, HashSet<object> seen)
    {
        switch (thing)
        {
            case null:
                return 0;
            case bool or sbyte or byte:
                return sizeof(byte);
            case Enum or int or uint:
                return sizeof(int);
            case long:
                return sizeof(long);
            case string:
                return 0;
        }

        if (!seen.Add(thing))
        {
            return 0;
        }

        if (thing is Array array)
        {
            return array.Cast<object?>().Sum(item => Of(item, seen));
        }

        const BindingFlags Fields = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;
        return thing.GetType().GetFields(Fields).Sum(field => Of(field.GetValue(thing), seen));
    }
}
