using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The PC as a board, in lockstep virtual time: time passes only while the firmware reads its line.</summary>
/// <param name="line">What hangs on it.</param>
/// <param name="clock">When readings are taken.</param>
/// <param name="flash">Its flash.</param>
internal sealed class PcBoard(Line line, ReadingClock clock, FlashImage flash) : IBoard
{
    private long _bootedAt;

    /// <summary>Gets the serial line.</summary>
    public SerialLink Serial { get; } = new();

    /// <summary>Gets the virtual time of the shop in microseconds; it goes on over a restart.</summary>
    public long ShopTime { get; private set; }

    /// <summary>Gets or sets a value indicating whether somebody presses the button.</summary>
    public bool IsButtonDown { get; set; }

    /// <summary>Gets a value indicating whether the lamp shines.</summary>
    public bool IsLampOn { get; private set; }

    /// <summary>Gets a value indicating whether the sounder sounds.</summary>
    public bool IsSounderOn { get; private set; }

    /// <summary>Gets a value indicating whether the firmware has asked for a restart.</summary>
    public bool WantsRestart { get; private set; }

    /// <inheritdoc/>
    public long Now => ShopTime - _bootedAt;

    /// <inheritdoc/>
    public int FullScale => line.FullScale;

    /// <inheritdoc/>
    public int MicrovoltsACount => line.MicrovoltsACount;

    /// <summary>Comes up again: the clock counts from nought, pins rest, the flash is as it was.</summary>
    public void Boot()
    {
        // A second for the board's own start; nothing drives the relay meanwhile.
        line.SetRelayLine(ShopTime, false);
        ShopTime += 1_000_000;
        line.Advance(ShopTime);
        clock.SkipTo(ShopTime);
        _bootedAt = ShopTime;
        IsLampOn = false;
        IsSounderOn = false;
        WantsRestart = false;
    }

    /// <inheritdoc/>
    public int ReadBurst(int[] readings, long until)
    {
        long end = until + _bootedAt;
        int count = 0;
        while (clock.Due < end && count < readings.Length)
        {
            readings[count++] = line.Read(clock.Due);
            clock.Advance();
        }

        ShopTime = count < readings.Length ? end : clock.Due;
        return count;
    }

    /// <inheritdoc/>
    public void SetRelayLine(bool high) => line.SetRelayLine(ShopTime, high);

    /// <inheritdoc/>
    public void SetLamp(bool on) => IsLampOn = on;

    /// <inheritdoc/>
    public void SetSounder(bool on) => IsSounderOn = on;

    /// <inheritdoc/>
    public int ReadSerial(byte[] buffer) => Serial.Read(buffer);

    /// <inheritdoc/>
    public void WriteSerial(byte[] buffer, int offset, int count) => Serial.Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public int ReadSlot(int slot, byte[] buffer) => flash.Read(slot, buffer);

    /// <inheritdoc/>
    public void WriteSlot(int slot, byte[] buffer, int count) => flash.Write(slot, buffer.AsSpan(0, count));

    /// <inheritdoc/>
    public void Restart() => WantsRestart = true;
}
