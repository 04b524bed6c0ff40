namespace NanoDustSwitch.Firmware;

/// <summary>
/// Kinds of errors that nobody expected. The numbers are stored in flash: a number never changes its meaning.
/// </summary>
public enum ErrorKind
{
    /// <summary>None of the others.</summary>
    Other = 0,

    /// <summary>An object was used that is not there.</summary>
    NullReference = 1,

    /// <summary>An array was read or written beyond its end.</summary>
    IndexOutOfRange = 2,

    /// <summary>The memory is full.</summary>
    OutOfMemory = 3,

    /// <summary>Something was asked for that is not possible at this moment.</summary>
    InvalidOperation = 4,

    /// <summary>A call was given a value that it does not take.</summary>
    Argument = 5,

    /// <summary>An object is of another type than was taken for granted.</summary>
    InvalidCast = 6,

    /// <summary>A file or a port has failed.</summary>
    InputOutput = 7,

    /// <summary>A call has waited for too long.</summary>
    Timeout = 8,

    /// <summary>A call that this device does not know.</summary>
    NotSupported = 9,
}
