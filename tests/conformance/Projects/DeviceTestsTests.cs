using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Projects;

[TestClass]
public class DeviceTestsTests
{
    private const string Tests = "NFUnitTest.dll";

    [TestMethod]
    public void TheDeviceCanCallTheTests()
    {
        using var assembly = DeviceAssemblies.Read(Tests);
        var findings = DeviceTestsRule.Findings(assembly).ToList();
        Assert.IsEmpty(findings, string.Join(Environment.NewLine, findings));
        Assert.IsNotEmpty(DeviceTestsRule.Tests(assembly));
    }

    [TestMethod]
    public void AUseOfThisIsFound()
    {
        using var assembly = DeviceAssemblies.Read(Tests);
        var body = DeviceTestsRule.Tests(assembly).First().Body;
        body.Instructions.Insert(0, Instruction.Create(OpCodes.Pop));
        body.Instructions.Insert(0, Instruction.Create(OpCodes.Ldarg_0));
        AssertFound("uses 'this'", assembly);
    }

    [TestMethod]
    public void AFieldIsFound()
    {
        using var assembly = DeviceAssemblies.Read(Tests);
        var type = DeviceTestsRule.Tests(assembly).First().DeclaringType;
        type.Fields.Add(new FieldDefinition("_state", FieldAttributes.Private, assembly.MainModule.TypeSystem.Int32));
        AssertFound("_state: a field", assembly);
    }

    [TestMethod]
    public void ARowOfAnotherTypeIsFound()
    {
        using var assembly = DeviceAssemblies.Read(Tests);
        FirstWithRows(assembly).Parameters[0].ParameterType = assembly.MainModule.TypeSystem.Double;
        AssertFound("the device does not convert", assembly);
    }

    [TestMethod]
    public void ARowOfAnotherLengthIsFound()
    {
        using var assembly = DeviceAssemblies.Read(Tests);
        FirstWithRows(assembly).Parameters.Add(new ParameterDefinition(assembly.MainModule.TypeSystem.Int32));
        AssertFound("a row of", assembly);
    }

    [TestMethod]
    public void ARowThatTheDeviceCannotReadIsFound()
    {
        using var assembly = DeviceAssemblies.Read(Tests);
        var text = new CustomAttributeArgument(assembly.MainModule.TypeSystem.String, null);
        SetFirstValue(FirstWithRows(assembly), text);
        AssertFound("null for", assembly);

        var type = new CustomAttributeArgument(assembly.MainModule.GetType(FirstWithRows(assembly).DeclaringType.FullName), 0);
        SetFirstValue(FirstWithRows(assembly), type);
        AssertFound("which the device cannot read", assembly);
    }

    private static MethodDefinition FirstWithRows(AssemblyDefinition assembly) =>
        DeviceTestsRule.Tests(assembly).First(method => DeviceTestsRule.Rows(method).Any());

    private static void SetFirstValue(MethodDefinition method, CustomAttributeArgument value) =>
        DeviceTestsRule.Rows(method).First()[0] = value;

    private static void AssertFound(string words, AssemblyDefinition assembly) =>
        Assert.Contains(finding => finding.Contains(words, StringComparison.Ordinal), DeviceTestsRule.Findings(assembly));
}
