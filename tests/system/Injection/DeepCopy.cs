using System.Reflection;
using System.Runtime.CompilerServices;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// Copies an object with all that hangs on it, so that a run can be forked at any step. Texts are shared, static fields are not
/// part of it: firmware and shop keep nothing there that changes, which a test holds.
/// </summary>
internal static class DeepCopy
{
    private const BindingFlags Instance =
        BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    private static readonly Func<object, object> s_shallow =
        typeof(object).GetMethod("MemberwiseClone", Instance)!.CreateDelegate<Func<object, object>>();

    // The fields of each type that lead to other objects; the rest is right after a shallow copy.
    private static readonly ConditionalWeakTable<Type, FieldInfo[]> s_references = [];

    /// <summary>Copies.</summary>
    /// <typeparam name="T">Type of the object.</typeparam>
    /// <param name="root">The object.</param>
    /// <returns>The copy.</returns>
    public static T Of<T>(T root)
        where T : class => (T)Copy(root, new Dictionary<object, object>(ReferenceEqualityComparer.Instance));

    private static object Copy(object original, Dictionary<object, object> known)
    {
        if (original is string)
        {
            return original;
        }

        if (known.TryGetValue(original, out object? copy))
        {
            return copy;
        }

        if (original is Delegate or Type or Pointer)
        {
            throw new NotSupportedException($"a {original.GetType()} cannot be copied");
        }

        copy = s_shallow(original);
        known.Add(original, copy);
        if (copy is Array array)
        {
            CopyElements(array, known);
            return copy;
        }

        foreach (FieldInfo field in s_references.GetValue(original.GetType(), References))
        {
            if (field.GetValue(original) is { } value)
            {
                field.SetValue(copy, Copy(value, known));
            }
        }

        return copy;
    }

    private static void CopyElements(Array array, Dictionary<object, object> known)
    {
        if (IsPlain(array.GetType().GetElementType()!))
        {
            return;
        }

        for (int i = 0; i < array.Length; i++)
        {
            if (array.GetValue(i) is { } value)
            {
                array.SetValue(Copy(value, known), i);
            }
        }
    }

    private static FieldInfo[] References(Type type)
    {
        List<FieldInfo> fields = [];
        for (Type? of = type; of is not null; of = of.BaseType)
        {
            fields.AddRange(of.GetFields(Instance).Where(field => !IsPlain(field.FieldType)));
        }

        return [.. fields];
    }

    private static bool IsPlain(Type type) => type.IsPrimitive || type.IsEnum || type == typeof(string)
        || (type.IsValueType && type.GetFields(Instance).All(field => IsPlain(field.FieldType)));
}
