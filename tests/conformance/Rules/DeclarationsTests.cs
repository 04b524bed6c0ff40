using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

[TestClass]
public class DeclarationsTests
{
    private const MethodAttributes Public = MethodAttributes.Public | MethodAttributes.HideBySig;

    [TestMethod]
    public void EverythingDeclaredIsUsed()
    {
        using var resolver = new DeviceResolver();
        Findings.AssertNone(
            DeviceAssemblies.Declarations.SelectMany(fileName => Rule(resolver).Findings(resolver.Read(fileName))));
    }

    [TestMethod]
    [DataRow("Dispose")]
    [DataRow("OpenPin", DisplayName = "an overload")]
    public void AMethodTooManyIsFound(string name) => AssertFound(
        "System.Device.Gpio",
        gpio => gpio.GetType("System.Device.Gpio.GpioController").Methods.Add(
            new MethodDefinition(name, Public, gpio.TypeSystem.Void)),
        $"System.Device.Gpio.GpioController.{name}: is not used");

    [TestMethod]
    public void ATypeTooManyIsFound() => AssertFound(
        "System.IO.FileSystem",
        files => files.Types.Add(new TypeDefinition("System.IO", "Directory", TypeAttributes.Public)),
        "System.IO.Directory: is not used");

    [TestMethod]
    public void AConstantTooManyIsFound() => AssertFound(
        "nanoFramework.Runtime.Native",
        native =>
        {
            var option = native.GetType("nanoFramework.Runtime.Native.RebootOption");
            var attributes = FieldAttributes.Public | FieldAttributes.Static | FieldAttributes.Literal;
            option.Fields.Add(new FieldDefinition("ClrOnly", attributes, option) { Constant = 2 });
        },
        "nanoFramework.Runtime.Native.RebootOption.ClrOnly: is not used");

    private static void AssertFound(string library, Action<ModuleDefinition> doctor, string expected)
    {
        using var resolver = new DeviceResolver();
        var declarations = resolver.Read(library + ".dll");
        doctor(declarations.MainModule);
        CollectionAssert.AreEqual(new[] { expected }, Rule(resolver).Findings(declarations).ToArray());
    }

    private static DeclarationsRule Rule(DeviceResolver resolver) => new([.. DeviceAssemblies.Product.Select(resolver.Read)]);
}
