namespace NanoDustSwitch.Sizing.Sources;

/// <summary>Where a figure comes from.</summary>
/// <param name="Name">The table or clause; empty for practice and for what is computed or tried.</param>
/// <param name="Known">How it is known.</param>
internal sealed record Source(string Name, Known Known)
{
    /// <summary>Common practice.</summary>
    public static readonly Source Practice = new("", Known.Practice);

    /// <summary>A sum.</summary>
    public static readonly Source Computed = new("", Known.Computed);

    /// <summary>The firmware in the virtual shop.</summary>
    public static readonly Source Tried = new("", Known.Tried);

    /// <summary>Cord-and-plug load on a branch circuit, and which receptacle belongs on it.</summary>
    public static readonly Source Receptacle = new("NEC 210.21(B), 210.23(A)(1)", Known.Read);

    /// <summary>Load that counts as continuous.</summary>
    public static readonly Source Continuous = new("NEC 210.19(A)(1)", Known.Read);

    /// <summary>Full-load current by horsepower.</summary>
    public static readonly Source MotorTable = new("NEC Table 430.248", Known.Read);

    /// <summary>What a motor's switch must interrupt.</summary>
    public static readonly Source MotorSwitch = new("NEC 430.82(A)", Known.Read);

    /// <summary>Contact categories.</summary>
    public static readonly Source Contacts = new("IEC 60947-4-1, IEC 61095", Known.Memory);

    /// <summary>Recommended voltage drop.</summary>
    public static readonly Source Drop = new("NEC 210.19(A) note", Known.Memory);

    /// <summary>Limits of an IEC miniature breaker.</summary>
    public static readonly Source IecBreaker = new("IEC 60898-1", Known.Memory);

    /// <summary>The transformer.</summary>
    public static readonly Source Transformer = new("data sheet 100 A : 50 mA", Known.Read);

    /// <summary>Flux in a core, and what steel and ferrite hold.</summary>
    public static readonly Source Core = new("textbooks, IEC 61869-2", Known.Memory);

    /// <summary>The Hall devices.</summary>
    public static readonly Source Hall = new("data sheet of the family", Known.Read);

    /// <summary>The converter.</summary>
    public static readonly Source Converter = new("ESP-IDF documentation", Known.Read);

    /// <summary>Plug-in adapters: double insulation, and an output that is safe to touch or limited in power.</summary>
    public static readonly Source Adapter = new("IEC 61140, IEC 62368-1, UL 1310", Known.Memory);

    /// <summary>Residual-current protection in North America.</summary>
    public static readonly Source AmericanResidual = new("UL 943", Known.Read);

    /// <summary>Residual-current protection elsewhere.</summary>
    public static readonly Source IecResidual = new("IEC 61008", Known.Memory);

    /// <inheritdoc/>
    public override string ToString() => Known switch
    {
        Known.Practice => "practice",
        Known.Computed => "computed",
        Known.Tried => "tried in the virtual shop",
        Known.Read => $"{Name}; read",
        _ => $"{Name}; memory",
    };
}
