// nanoFramework.System.IO.Ports 1.1.139
namespace System.IO.Ports;

public enum StopBits
{
    One = 1,
}
