// nanoFramework.Hardware.Esp32 1.6.40
namespace nanoFramework.Hardware.Esp32;

public enum DeviceFunction
{
    COM2_TX = 0x30200,
    COM2_RX = 0x30201,
}
