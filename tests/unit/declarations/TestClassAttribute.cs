using System;

namespace nanoFramework.TestFramework;

[AttributeUsage(AttributeTargets.Class, AllowMultiple = false)]
public class TestClassAttribute : Attribute
{
}
