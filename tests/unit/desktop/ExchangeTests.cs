using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>The tape carries the core's whole state: every field of every part, but those that are named here.</summary>
[TestClass]
public class ExchangeTests
{
    private const BindingFlags Fields = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;

    // Settings and what is worked out from them, and first guesses at a root that any other gives as well.
    private static readonly string[] s_notState =
    {
        "NoiseFloor._cap", "RunDetector.StartLooks", "RelayGate._restMicroseconds",
        "SwingWindow._swing", "SwingWindow.Least", "SwingWindow.Greatest", "ToolMatch.Score", "ToolMatch.IsCut",
        "SurgeWatch.Circuit", "ToolBook.Lowest", "ToolBook.Highest",
        "VacuumControl.WantsVacuum", "VacuumControl.IsWaitingForSurge", "VacuumControl.NextLook",
        "DetectionCore._hasVacuumLine", "DetectionCore._meterTurn", "StartCounter._period",
    };

    // The levels follow from settings and floors. The tape holds no notices: the board takes them in the same step.
    private static readonly Type[] s_notParts =
    {
        typeof(CoreSettings), typeof(SensorScale), typeof(ConverterScale), typeof(ToolLevels),
        typeof(NoticeQueue), typeof(VacuumTable),
    };

    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void EveryFieldOfEveryPartIsOnTheTape(bool flags)
    {
        CoreBench first = new CoreBench(CoreBench.Settings());
        CoreBench second = new CoreBench(CoreBench.Settings());
        int number = 2;
        int fields = 0;
        Walk(first.Core, "", (part, field, _) =>
        {
            fields++;
            Set(part, field, flags, ref number);
        });
        Walk(second.Core, "", (part, field, _) => Clear(part, field, !flags));

        second.Take(first.Tape());

        Dictionary<string, string> expected = new Dictionary<string, string>();
        Walk(first.Core, "", (part, field, path) => expected[path] = Text(field.GetValue(part)));
        Walk(second.Core, "", (part, field, path) => Assert.AreEqual(expected[path], Text(field.GetValue(part)), path));
        Assert.IsTrue(fields > 80, fields.ToString());
    }

    [TestMethod]
    public void WhatIsNamedAsNoStateIsThere()
    {
        HashSet<string> names = new HashSet<string>();
        foreach (Type type in typeof(DetectionCore).Assembly.GetTypes())
        {
            foreach (FieldInfo field in type.GetFields(Fields))
            {
                names.Add(type.Name + "." + field.Name);
            }
        }

        Assert.AreEqual("", string.Join(", ", s_notState.Where(name => !names.Contains(name))));
    }

    private static void Walk(object part, string path, Action<object, FieldInfo, string> visit)
    {
        foreach (FieldInfo field in part.GetType().GetFields(Fields))
        {
            string name = part.GetType().Name + "." + field.Name;
            object value = field.GetValue(part);
            if (s_notState.Contains(name) || (value != null && s_notParts.Contains(value.GetType())))
            {
                continue;
            }

            if (value is Array rows && !rows.GetType().GetElementType().IsPrimitive)
            {
                for (int i = 0; i < rows.Length; i++)
                {
                    Walk(rows.GetValue(i), path + "/" + field.Name + i, visit);
                }
            }
            else if (value is Array || field.FieldType.IsPrimitive || field.FieldType.IsEnum)
            {
                visit(part, field, path + "/" + name);
            }
            else
            {
                Walk(value, path + "/" + field.Name, visit);
            }
        }
    }

    private static void Set(object part, FieldInfo field, bool flags, ref int number)
    {
        object value = field.GetValue(part);
        if (value is Array row)
        {
            for (int i = 0; i < row.Length; i++)
            {
                row.SetValue(Convert.ChangeType(number++, row.GetType().GetElementType()), i);
            }
        }
        else
        {
            field.SetValue(
                part,
                value is bool ? flags : value is Enum ? Enum.ToObject(field.FieldType, 2)
                    : Convert.ChangeType(number++, field.FieldType));
        }
    }

    private static void Clear(object part, FieldInfo field, bool flags)
    {
        object value = field.GetValue(part);
        if (value is Array row)
        {
            Array.Clear(row, 0, row.Length);
        }
        else
        {
            field.SetValue(
                part,
                value is bool ? flags : value is Enum ? Enum.ToObject(field.FieldType, 0)
                    : Convert.ChangeType(0, field.FieldType));
        }
    }

    private static string Text(object value)
    {
        return value is Array row ? string.Join(" ", row.Cast<object>()) : value.ToString();
    }
}
