using System;
using System.Collections.Generic;
using System.Linq;
using Microsoft.VisualStudio.TestTools.UnitTesting;

namespace NanoDustSwitch;

/// <summary>What rules have found, a sentence for each thing that is wrong.</summary>
internal static class Findings
{
    /// <summary>Fails with all of them when there are any.</summary>
    public static void AssertNone(IEnumerable<string> findings)
    {
        var all = findings.ToArray();
        Assert.IsEmpty(all, All(all));
    }

    /// <summary>Fails with all of them when none has the words.</summary>
    public static void AssertFound(string words, IEnumerable<string> findings)
    {
        var all = findings.ToArray();
        Assert.Contains(finding => finding.Contains(words, StringComparison.Ordinal), all, All(all));
    }

    private static string All(string[] findings) => Environment.NewLine + string.Join(Environment.NewLine, findings);
}
