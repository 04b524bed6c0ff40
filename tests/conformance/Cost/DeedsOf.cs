using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>Tells from an instruction what it does besides.</summary>
internal static class DeedsOf
{
    private const string Library = "mscorlib";

    public static Deeds Instruction(Instruction instruction) => instruction.OpCode.Code switch
    {
        Code.Ldstr => Deeds.Literal,
        Code.Newarr or Code.Box => Deeds.Allocation,
        Code.Newobj => Construction((MethodReference)instruction.Operand),
        Code.Call => Call((MethodReference)instruction.Operand, looksUp: false),
        Code.Callvirt => Call((MethodReference)instruction.Operand, looksUp: true),
        _ => Deeds.None,
    };

    private static Deeds Construction(MethodReference constructor)
    {
        var made = constructor.DeclaringType.Resolve().IsValueType ? Deeds.None : Deeds.Allocation;
        return made | Call(constructor, looksUp: false);
    }

    private static Deeds Call(MethodReference reference, bool looksUp)
    {
        var method = reference.Resolve();
        if (DeviceAssemblies.Declarations.Contains(method.Module.Name) && LibraryCost.Of(method).IsNative)
        {
            return Deeds.NativeCall;
        }

        if (method.Module.Assembly.Name.Name == Library)
        {
            // In doubt a string or an array that the library gives is a new one.
            var made = method.ReturnType.IsArray || method.ReturnType.MetadataType == MetadataType.String;
            return (method.HasBody ? Deeds.LibraryCall : Deeds.NativeCall) | (made ? Deeds.Allocation : Deeds.None);
        }

        // The compiler writes callvirt for every method of an object; the device looks up only those that are virtual.
        return looksUp && method.IsVirtual ? Deeds.VirtualCall : Deeds.Call;
    }
}
