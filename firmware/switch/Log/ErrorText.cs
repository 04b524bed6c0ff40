using System;
using System.IO;

namespace NanoDustSwitch.Firmware;

/// <summary>The kinds of errors that nobody expected, and the words for them.</summary>
public static class ErrorText
{
    /// <summary>Tells of what kind an error is.</summary>
    /// <param name="error">The error.</param>
    /// <returns>The first kind that fits.</returns>
    public static ErrorKind KindOf(Exception error)
    {
        return error is NullReferenceException ? ErrorKind.NullReference
            : error is IndexOutOfRangeException ? ErrorKind.IndexOutOfRange
            : error is OutOfMemoryException ? ErrorKind.OutOfMemory
            : error is InvalidOperationException ? ErrorKind.InvalidOperation
            : error is ArgumentException ? ErrorKind.Argument
            : error is InvalidCastException ? ErrorKind.InvalidCast
            : error is IOException ? ErrorKind.InputOutput
            : error is TimeoutException ? ErrorKind.Timeout
            : error is NotSupportedException ? ErrorKind.NotSupported
            : ErrorKind.Other;
    }

    /// <summary>Gives the words for a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>A few words.</returns>
    public static string Kind(ErrorKind kind)
    {
        return kind switch
        {
            ErrorKind.NullReference => "an object was missing",
            ErrorKind.IndexOutOfRange => "index out of range",
            ErrorKind.OutOfMemory => "out of memory",
            ErrorKind.InvalidOperation => "invalid operation",
            ErrorKind.Argument => "bad argument",
            ErrorKind.InvalidCast => "wrong type",
            ErrorKind.InputOutput => "a file or port failed",
            ErrorKind.Timeout => "a call took too long",
            ErrorKind.NotSupported => "not supported",
            _ => "of another kind",
        };
    }

    /// <summary>Gives the words for a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>A few words.</returns>
    public static string Place(StepPlace place)
    {
        return place switch
        {
            StepPlace.Reading => "reading the sensor",
            StepPlace.Deciding => "deciding",
            StepPlace.Relay => "feeding the relay",
            StepPlace.Buckets => "teaching, testing or recording",
            StepPlace.Journal => "noting an event",
            StepPlace.Console => "serving the console",
            StepPlace.Panel => "serving lamp and button",
            StepPlace.Flash => "writing to flash",
            _ => "at an unknown place",
        };
    }
}
