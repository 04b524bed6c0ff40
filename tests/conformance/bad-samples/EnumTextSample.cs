namespace NanoDustSwitch.BadSamples;

public class EnumTextSample
{
    public static string Says(OrdinaryKind kind)
    {
        return kind.ToString();
    }

    public static string JoinsToText(OrdinaryKind kind)
    {
        return "kind " + kind;
    }

    public static string Formats(OrdinaryKind kind)
    {
        return $"{kind,3}";
    }

    public static bool HasIt(OrdinaryKind kind)
    {
        return kind.HasFlag(OrdinaryKind.Two);
    }
}
