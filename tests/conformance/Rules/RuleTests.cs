using System.Reflection;
using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>The product keeps every rule, and every rule finds what breaks it and leaves the rest alone.</summary>
[TestClass]
public class RuleTests
{
    public static IEnumerable<object[]> Rules =>
        typeof(IDeviceRule).Assembly.GetTypes()
            .Where(type => type.IsClass && typeof(IDeviceRule).IsAssignableFrom(type))
            .Select(type => new object[] { type });

    /// <summary>
    /// Gets the rules without which a board cannot load the unit tests. These need a library more than the product, and may
    /// reckon as they like.
    /// </summary>
    public static IEnumerable<object[]> RulesForTests =>
        Rules.Where(rule => (Type)rule[0] != typeof(ReferencesRule) && (Type)rule[0] != typeof(NoFloatingPointRule));

    [TestMethod]
    [DynamicData(nameof(Rules), DynamicDataDisplayName = nameof(NameOf))]
    public void TheProductKeepsIt(Type rule) =>
        Findings.AssertNone(DeviceAssemblies.Product.SelectMany(fileName => Of(rule, fileName)));

    [TestMethod]
    [DynamicData(nameof(RulesForTests), DynamicDataDisplayName = nameof(NameOf))]
    public void TheTestsForABoardKeepIt(Type rule) => Findings.AssertNone(Of(rule, DeviceAssemblies.UnitTests));

    // Each row is one way to break a rule, and the line that must say so.
    [TestMethod]
    [DataRow(typeof(NoGenericsRule), "GenericBox`1: is a generic type")]
    [DataRow(typeof(NoGenericsRule), "GenericsSample.Same: is a generic method")]
    [DataRow(
        typeof(NoGenericsRule),
        "GenericsSample.CallsGenericMethod: uses the generic method T "
        + "NanoDustSwitch.BadSamples.GenericsSample::Same<System.Int32>(T)")]
    [DataRow(
        typeof(NoGenericsRule),
        "GenericsSample.MakesGenericType: uses the generic type NanoDustSwitch.BadSamples.GenericBox`1<System.Int32>")]
    [DataRow(typeof(NoGenericsRule), "GenericsSample.TakesAction: uses the generic type System.Action`1<System.Int32>")]
    [DataRow(
        typeof(NoGenericsRule), "GenericsSample.MakesLambda: uses the generic type System.Func`2<System.Int32,System.Int32>")]
    [DataRow(
        typeof(NoGenericsRule),
        "GenericsSample.HoldsInArray: uses the generic type NanoDustSwitch.BadSamples.GenericBox`1<System.String>")]
    [DataRow(typeof(NoGenericsRule), "GenericsSample.NamesOpenType: uses the generic type System.Func`1")]
    [DataRow(typeof(NoFloatingPointRule), "FloatingPointSample._share: uses System.Single")]
    [DataRow(typeof(NoFloatingPointRule), "FloatingPointSample.Cuts: conv.r8")]
    [DataRow(typeof(NoFloatingPointRule), "FloatingPointSample.Cuts: ldc.r8")]
    [DataRow(typeof(NoFloatingPointRule), "FloatingPointSample.Compares: conv.r4")]
    [DataRow(typeof(NoFloatingPointRule), "FloatingPointSample.Holds: uses System.Double")]
    [DataRow(typeof(NoPointersRule), "PointersSample.Place: uses the pointer System.Int32*")]
    [DataRow(typeof(NoPointersRule), "PointersSample.Reserves: localloc")]
    [DataRow(typeof(NoPointersRule), "PointersSample.Pins: uses the pointer System.Int32*")]
    [DataRow(typeof(NoPointersRule), "PointersSample.CallsAnAddress: calli")]
    [DataRow(typeof(NoMultiDimensionalArraysRule), "MultiDimensionalArraysSample._grid: uses System.Int32[0...,0...]")]
    [DataRow(typeof(NoMultiDimensionalArraysRule), "MultiDimensionalArraysSample.Reads: uses System.Int32[0...,0...]")]
    [DataRow(typeof(NoMultiDimensionalArraysRule), "MultiDimensionalArraysSample.Makes: uses System.Byte[0...,0...]")]
    [DataRow(typeof(NoOverflowChecksRule), "OverflowSample.Adds: add.ovf")]
    [DataRow(typeof(NoOverflowChecksRule), "OverflowSample.Narrows: conv.ovf.u1")]
    [DataRow(typeof(NoOverflowChecksRule), "OverflowSample.ReachesFar: conv.ovf.i")]
    [DataRow(typeof(NoFiltersRule), "FilterSample.CatchesSome: catches with a filter")]
    [DataRow(typeof(NoCompilerTypesRule), "System.Runtime.CompilerServices.IsReadOnlyAttribute: is put in by the compiler")]
    [DataRow(
        typeof(NoCompilerTypesRule), "BadSamples.CompilerTypesSample: needs System.Runtime.CompilerServices.IsReadOnlyAttribute")]
    [DataRow(typeof(NoCompilerTypesRule), "CompilerTypesSample..ctor: needs System.Runtime.CompilerServices.IsReadOnlyAttribute")]
    [DataRow(typeof(NoCompilerTypesRule), "CompilerTypesSample.Fills: needs <PrivateImplementationDetails>")]
    [DataRow(typeof(NoCompilerTypesRule), "CompilerTypesSample.Chooses: needs <PrivateImplementationDetails>")]
    [DataRow(
        typeof(NoCompilerTypesRule),
        "CompilerTypesSample.MayBeNull: needs System.Runtime.CompilerServices.NullableContextAttribute")]
    [DataRow(typeof(NoEnumTextRule), "EnumTextSample.Says: takes NanoDustSwitch.BadSamples.OrdinaryKind as an object")]
    [DataRow(typeof(NoEnumTextRule), "EnumTextSample.JoinsToText: takes NanoDustSwitch.BadSamples.OrdinaryKind as an object")]
    [DataRow(typeof(NoEnumTextRule), "EnumTextSample.Formats: takes NanoDustSwitch.BadSamples.OrdinaryKind as an object")]
    [DataRow(typeof(NoEnumTextRule), "EnumTextSample.HasIt: calls System.Boolean System.Enum::HasFlag(System.Enum)")]
    [DataRow(typeof(NoNulInTextRule), "NulSample.Says: a text with a NUL")]
    [DataRow(typeof(NoNulInTextRule), "NulSample.IsDescribed: a text with a NUL")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.WritesALine: uses System.IO.Ports.SerialPort::WriteLine")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.WaitsForALine: uses System.IO.Ports.SerialPort::ReadLine")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.TakesAllAsText: uses System.IO.Ports.SerialPort::ReadExisting")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.Appends: uses System.IO.File::AppendText")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.Listens: uses System.Device.Gpio.GpioPin::add_ValueChanged")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.StopsListening: uses System.Device.Gpio.GpioPin::remove_ValueChanged")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.ListensToAll: uses System.Device.Gpio.GpioController::RegisterCallback")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.AsksTheCalendar: uses System.DateTime::get_UtcNow")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.StartsAThread: uses System.Threading.Thread::.ctor")]
    [DataRow(typeof(NotToUseRule), "NotToUseSample.StartsATimer: uses System.Threading.Timer::.ctor")]
    [DataRow(typeof(NoDisposeOfControllerRule), "ControllerSample.Uses: disposes")]
    [DataRow(typeof(NoDisposeOfControllerRule), "ControllerSample.UsesWhatItGets: disposes")]
    [DataRow(typeof(NoDisposeOfControllerRule), "ControllerSample.Disposes: disposes")]
    [DataRow(typeof(AskBeforeReadRule), "ReadSample.Waits: calls Read before")]
    [DataRow(typeof(AskBeforeReadRule), "ReadSample.WaitsForOne: calls ReadByte before")]
    [DataRow(typeof(AskBeforeReadRule), "ReadSample.AsksTooLate: calls Read before")]
    [DataRow(typeof(ConsolePortRule), "PortSample.TakesTheDebuggers: names the port COM1")]
    [DataRow(typeof(ConsolePortRule), "PortSample.SetsTheDebuggers: sets")]
    [DataRow(typeof(ConsolePortRule), "PortSample.SetsTheConverters: sets")]
    [DataRow(typeof(ConsolePortRule), "PortSample.SetsWhatItIsTold: sets")]
    public void ABreachIsFound(Type rule, string expected) =>
        Findings.AssertFound(expected, Of(rule, DeviceAssemblies.BadSamples));

    // The same for what does not compile for the device today; another library or compiler may let it through.
    [TestMethod]
    [DataRow(
        typeof(NoGenericsRule),
        "uses the generic type System.Collections.Generic.IEnumerator`1<System.Object>",
        DisplayName = "yield")]
    [DataRow(
        typeof(MembersExistRule),
        "DesktopSample.Waits: there is no System.Runtime.CompilerServices.AsyncVoidMethodBuilder in mscorlib")]
    [DataRow(typeof(MembersExistRule), "DesktopSample.SumsUp: there is no System.Linq.Enumerable in mscorlib")]
    [DataRow(typeof(NoGenericsRule), "DesktopSample.SumsUp: uses the generic method")]
    [DataRow(
        typeof(NoGenericsRule), "DesktopSample.Lists: uses the generic type System.Collections.Generic.List`1<System.Int32>")]
    [DataRow(
        typeof(NoGenericsRule), "DesktopSample.TakesPair: uses the generic type System.ValueTuple`2<System.Int32,System.Int32>")]
    [DataRow(typeof(NoGenericsRule), "DesktopSample.MayBeNull: uses the generic type System.Nullable`1<System.Int32>")]
    [DataRow(typeof(NoGenericsRule), "DesktopSample.Slices: uses the generic type System.Span`1<System.Int32>")]
    [DataRow(
        typeof(NoGenericsRule),
        "RecordSample: uses the generic type System.IEquatable`1<NanoDustSwitch.BadSamples.RecordSample>")]
    [DataRow(typeof(MembersExistRule), "RecordSample.ToString: there is no System.Text.StringBuilder in mscorlib")]
    [DataRow(typeof(MembersExistRule), "DesktopSample.CountsFromTheEnd: there is no System.Index in mscorlib")]
    [DataRow(typeof(MembersExistRule), "DesktopSample.CountsMoney: there is no System.Decimal in mscorlib")]
    [DataRow(
        typeof(MembersExistRule),
        "DesktopSample.Joins: there is no System.String System.String::Join(System.String,System.String[]) in mscorlib")]
    [DataRow(
        typeof(MembersExistRule),
        "DesktopSample.Replaces: there is no System.String System.String::Replace(System.String,System.String) in mscorlib")]
    [DataRow(
        typeof(MembersExistRule),
        "DesktopSample.ComparesWithoutCase: there is no System.Boolean "
        + "System.String::StartsWith(System.String,System.StringComparison) in mscorlib")]
    [DataRow(
        typeof(MembersExistRule),
        "DesktopSample.Sorts: there is no System.Void System.Array::Sort<System.Int32>(!!0[]) in mscorlib")]
    [DataRow(typeof(MembersExistRule), "DesktopSample.Larger: there is no System.Math in mscorlib")]
    [DataRow(typeof(MembersExistRule), "DesktopSample.Measures: there is no System.Diagnostics.Stopwatch in mscorlib")]
    [DataRow(typeof(MembersExistRule), "DesktopSample.CatchesDivision: there is no System.DivideByZeroException in mscorlib")]
    [DataRow(typeof(NotToUseRule), "DesktopSample.AsksTheTick: uses System.Environment::get_TickCount64")]
    [DataRow(typeof(NoInterfaceBodiesRule), "IHasBody.Answer: is a body in an interface")]
    [DataRow(
        typeof(NoModifiersRule), "DesktopSample._shared: uses System.Int32 modreq(System.Runtime.CompilerServices.IsVolatile)")]
    [DataRow(typeof(NoModifiersRule), "DesktopSample.ReadsShared: volatile.")]
    [DataRow(
        typeof(NoModifiersRule), "DesktopSample.TakesIn: uses System.Int32& modreq(System.Runtime.InteropServices.InAttribute)")]
    public void WhatDoesNotCompileIsFound(Type rule, string expected) =>
        Findings.AssertFound(expected, Of(rule, DeviceAssemblies.DesktopSamples));

    [TestMethod]
    public void ALibraryThatIsNotThereIsFound()
    {
        using var assembly = DeviceAssemblies.Read(DeviceAssemblies.BadSamples);
        assembly.MainModule.AssemblyReferences.Single(reference => reference.Name == "mscorlib").Name = "System.Text";
        var findings = new MembersExistRule().Findings(assembly);
        Assert.Contains("NanoDustSwitch.BadSamples.FilterSample: there is no System.Object in System.Text", findings);
    }

    [TestMethod]
    [DynamicData(nameof(Rules), DynamicDataDisplayName = nameof(NameOf))]
    public void OrdinaryCodeIsLeftAlone(Type rule) =>
        Findings.AssertNone(Of(rule, DeviceAssemblies.BadSamples).Where(finding =>
            finding[..finding.IndexOf(": ", StringComparison.Ordinal)].Contains("Ordinary", StringComparison.Ordinal)));

    public static string NameOf(MethodInfo method, object[] data) => $"{((Type)data[0]).Name}: {method.Name}";

    private static IReadOnlyList<string> Of(Type rule, string fileName)
    {
        using var assembly = DeviceAssemblies.Read(fileName);
        if (fileName == DeviceAssemblies.DesktopSamples)
        {
            // As if the device's library had it all.
            foreach (var reference in assembly.MainModule.AssemblyReferences)
            {
                reference.Name = "mscorlib";
            }
        }

        return [.. ((IDeviceRule)Activator.CreateInstance(rule)!).Findings(assembly).Distinct(StringComparer.Ordinal)];
    }
}
