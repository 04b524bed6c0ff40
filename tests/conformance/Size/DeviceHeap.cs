using System.Reflection;

namespace NanoDustSwitch.ConformanceTests.Size;

/// <summary>
/// The room that objects take in the device's heap, by walking from one to the next. The sizes are those of
/// nanoframework/nf-interpreter on a processor of 32 bits: nanoCLR_Runtime__HeapBlock.h, and Execution.cpp where objects are
/// made.
/// </summary>
/// <param name="isOurs">Whether the fields of a type are known; others are counted and not looked into.</param>
internal sealed class DeviceHeap(Func<Type, bool> isOurs)
{
    // The heap is dealt out in blocks of this size.
    private const int Block = 12;
    private const int ArrayHead = 20;
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    private readonly HashSet<object> _seen = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, int> _bytes = new(StringComparer.Ordinal);

    /// <summary>Gets the room by the type of the object.</summary>
    public IReadOnlyDictionary<string, int> Bytes => _bytes;

    /// <summary>Gets the number of objects of the device's libraries, whose fields cannot be seen here.</summary>
    public int LibraryObjects { get; private set; }

    public int Total => _bytes.Values.Sum();

    /// <summary>Adds an object and all that can be reached from it.</summary>
    public void Add(object? root)
    {
        switch (root)
        {
            case null:
                break;
            case string text:
                // One that is named in the code points there, and is an object of its own wherever it is kept; others hold their
                // bytes.
                Count("texts", Block + (string.IsInterned(text) is null ? text.Length + 1 : 0));
                break;
            case Array array when _seen.Add(array):
                AddArray(array);
                break;
            case Delegate:
                throw new NotSupportedException($"The size of a {root.GetType()} is not known here.");
            default:
                if (root is not Array && _seen.Add(root))
                {
                    AddObject(root);
                }

                break;
        }
    }

    /// <summary>Adds the static fields of types, and all that can be reached from them.</summary>
    public void AddStatics(IEnumerable<Type> types)
    {
        foreach (var field in types.SelectMany(type => type.GetFields(Own | BindingFlags.Static))
            .Where(field => !field.IsLiteral))
        {
            Count("static fields", Block);
            AddIfReference(field.FieldType, field.GetValue(null));
        }
    }

    private void AddArray(Array array)
    {
        var element = array.GetType().GetElementType()!;
        Count("arrays", ArrayHead + (array.Length * SizeOf(element)));
        if (!element.IsValueType)
        {
            foreach (var one in array)
            {
                Add(one);
            }
        }
    }

    private void AddObject(object one)
    {
        if (!isOurs(one.GetType()))
        {
            LibraryObjects++;
            return;
        }

        // A block for the object and one for each field, however small.
        FieldInfo[] fields = [.. Line(one.GetType()).SelectMany(type => type.GetFields(Own | BindingFlags.Instance))];
        Count(one.GetType().Name, Block * (1 + fields.Length));
        foreach (var field in fields)
        {
            AddIfReference(field.FieldType, field.GetValue(one));
        }
    }

    private void AddIfReference(Type type, object? value)
    {
        if (!type.IsValueType)
        {
            Add(value);
        }
        else if (!type.IsPrimitive && !type.IsEnum)
        {
            throw new NotSupportedException(
                $"The struct {type} is an object of its own on the device, which is not counted here.");
        }
    }

    private void Count(string what, int bytes) =>
        _bytes[what] = _bytes.GetValueOrDefault(what) + ((bytes + Block - 1) / Block * Block);

    private static IEnumerable<Type> Line(Type type)
    {
        for (var one = type; one is not null; one = one.BaseType)
        {
            yield return one;
        }
    }

    private static int SizeOf(Type element) => Type.GetTypeCode(element) switch
    {
        _ when !element.IsValueType => Block,
        TypeCode.Boolean or TypeCode.Byte or TypeCode.SByte => 1,
        TypeCode.Char or TypeCode.Int16 or TypeCode.UInt16 => 2,
        TypeCode.Int32 or TypeCode.UInt32 => 4,
        TypeCode.Int64 or TypeCode.UInt64 => 8,
        _ => throw new NotSupportedException($"The size of an array of {element} is not known here."),
    };
}
