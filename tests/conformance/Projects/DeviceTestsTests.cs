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
        Findings.AssertNone(DeviceTestsRule.Findings(assembly));
        Assert.IsNotEmpty(DeviceTestsRule.Tests(assembly));
    }

    [TestMethod]
    public void AUseOfThisIsFound() => AssertFound("uses 'this'", test =>
    {
        test.Body.Instructions.Insert(0, Instruction.Create(OpCodes.Pop));
        test.Body.Instructions.Insert(0, Instruction.Create(OpCodes.Ldarg_0));
    });

    [TestMethod]
    public void AFieldIsFound() => AssertFound("_state: a field", test => test.DeclaringType.Fields.Add(
        new FieldDefinition("_state", FieldAttributes.Private, test.Module.TypeSystem.Int32)));

    [TestMethod]
    public void ARowOfAnotherTypeIsFound() => AssertFound(
        "the device does not convert", test => test.Parameters[0].ParameterType = test.Module.TypeSystem.Double);

    [TestMethod]
    public void ARowOfAnotherLengthIsFound() => AssertFound(
        "a row of", test => test.Parameters.Add(new ParameterDefinition(test.Module.TypeSystem.Int32)));

    [TestMethod]
    public void ARowThatTheDeviceCannotReadIsFound()
    {
        AssertFound("null for", test => SetFirstValue(test, new(test.Module.TypeSystem.String, null)));
        AssertFound(
            "which the device cannot read",
            test => SetFirstValue(test, new(test.Module.GetType(test.DeclaringType.FullName), 0)));
    }

    private static void SetFirstValue(MethodDefinition method, CustomAttributeArgument value) =>
        DeviceTestsRule.Rows(method).First()[0] = value;

    // The first test that has rows, spoilt.
    private static void AssertFound(string words, Action<MethodDefinition> spoil)
    {
        using var assembly = DeviceAssemblies.Read(Tests);
        spoil(DeviceTestsRule.Tests(assembly).First(method => DeviceTestsRule.Rows(method).Any()));
        Findings.AssertFound(words, DeviceTestsRule.Findings(assembly));
    }
}
