namespace nanoFramework.Hardware.Esp32;

public enum DeviceFunction
{
    None = 0,
    COM2_TX = 0x30200,
    COM2_RX = 0x30201,
}
