using System;

namespace nanoFramework.TestFramework;

[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public class DataRowAttribute : Attribute
{
    public DataRowAttribute(params object[] methodParameters)
    {
    }
}
