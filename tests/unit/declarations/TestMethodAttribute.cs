using System;

namespace nanoFramework.TestFramework;

[AttributeUsage(AttributeTargets.Method, AllowMultiple = false)]
public class TestMethodAttribute : Attribute
{
}
