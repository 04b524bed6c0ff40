using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>
/// The PC as a board, in lockstep virtual time: time passes only while the firmware reads its line and, with a time of its
/// own, while it works.
/// </summary>
/// <param name="line">What hangs on it.</param>
/// <param name="clock">When readings are taken; not used with a time of its own.</param>
/// <param name="flash">Its flash.</param>
/// <param name="time">The board's own time; null for a board whose work takes none.</param>
internal sealed class PcBoard(Line line, ReadingClock clock, FlashImage flash, BoardTime? time = null) : IBoard
{
    private const long BootMicroseconds = 1_000_000;
    private const byte EndOfLine = (byte)'\r';

    private long _bootedAt;
    private bool _isClosing;

    /// <summary>Gets the flash.</summary>
    public FlashImage Flash => flash;

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

    /// <summary>Gets a value indicating whether the board has its power.</summary>
    public bool IsPowered => line.IsPowered;

    /// <summary>Gets the time of all garbage collections so far, in microseconds.</summary>
    public long Collected { get; private set; }

    /// <inheritdoc/>
    public long Now => ShopTime - _bootedAt;

    /// <inheritdoc/>
    public int FullScale => line.FullScale;

    /// <inheritdoc/>
    public BoardParts FailedParts => BoardParts.None;

    /// <inheritdoc/>
    public int FreeHeap => 0;

    /// <inheritdoc/>
    public int MicrovoltsACount => line.MicrovoltsACount;

    /// <summary>Gets the time of the board's own start in microseconds.</summary>
    public long BootTime => time?.Boot ?? BootMicroseconds;

    /// <summary>Without power, or before the firmware's first line: a moment passes, and nothing drives the relay.</summary>
    public void Wait()
    {
        line.SetRelayLine(ShopTime, false);
        IsLampOn = false;
        IsSounderOn = false;
        WantsRestart = false;
        Pass(Bucket.Microseconds);
    }

    /// <summary>The firmware begins: the clock counts from nought, the flash is as it was.</summary>
    public void Boot()
    {
        clock.SkipTo(ShopTime);
        _bootedAt = ShopTime;
    }

    /// <summary>The firmware has done a step: what it did beside reading and closing the bucket took its time.</summary>
    public void EndStep()
    {
        Work(time?.Idle ?? 0);
    }

    /// <summary>The board is busy with something else than the firmware.</summary>
    /// <param name="microseconds">How long.</param>
    public void Stall(long microseconds)
    {
        Pass(microseconds);
        clock.SkipTo(ShopTime);
    }

    /// <inheritdoc/>
    public int ReadBurst(int[] readings, int from, int sure, long until)
    {
        long end = until + _bootedAt;
        int count = from;
        if (time is not null)
        {
            // Two by two, as the real board reads. The burst's own time holds the last look at the clock.
            ShopTime += time.Burst;
            while (count < sure || (ShopTime < end && count < readings.Length - 1))
            {
                ShopTime += count < sure ? 0 : time.Look;
                for (int i = 0; i < 2; i++)
                {
                    readings[count++] = line.Read(ShopTime);
                    ShopTime += time.Reading;
                }
            }

            _isClosing = true;
            return count;
        }

        while (clock.Due < end && count < readings.Length)
        {
            readings[count++] = line.Read(clock.Due);
            clock.Advance();
        }

        // A time to stop at that has gone by already takes none.
        ShopTime = Math.Max(ShopTime, count < readings.Length ? end : clock.Due);
        return count;
    }

    /// <inheritdoc/>
    public int ReadVacuumLine()
    {
        int reading = line.ReadVacuumLine(ShopTime);
        ShopTime += time?.Reading ?? 0;
        return reading;
    }

    /// <inheritdoc/>
    public void SetRelayLine(bool high)
    {
        Work(0);
        line.SetRelayLine(ShopTime, high);
    }

    /// <inheritdoc/>
    public void SetLamp(bool on) => IsLampOn = on;

    /// <inheritdoc/>
    public void SetSounder(bool on) => IsSounderOn = on;

    /// <inheritdoc/>
    public int ReadSerial(byte[] buffer)
    {
        int count = Serial.Read(buffer);
        if (time is not null && count > 0)
        {
            bool isLine = buffer.AsSpan(0, count).Contains(EndOfLine);
            long collection = isLine ? time.Collection() : 0;
            Work(time.Bytes(count) + collection);
            Collected += collection;
        }

        return count;
    }

    /// <inheritdoc/>
    public void WriteSerial(byte[] buffer, int offset, int count)
    {
        Serial.Write(buffer.AsSpan(offset, count));
        Work(time?.Bytes(count) ?? 0);
    }

    /// <inheritdoc/>
    public int ReadSlot(int slot, byte[] buffer) => flash.Read(slot, buffer);

    /// <inheritdoc/>
    public void WriteSlot(int slot, byte[] buffer, int count)
    {
        flash.Write(slot, buffer.AsSpan(0, count));
        Work(time?.FlashWrite() ?? 0);
    }

    /// <inheritdoc/>
    public void Restart() => WantsRestart = true;

    // Whatever comes first after the readings comes after the closing of their bucket.
    private void Work(long microseconds)
    {
        if (time is not null)
        {
            Pass(microseconds + (_isClosing ? time.Closing : 0));
            _isClosing = false;
        }
    }

    // The shop goes on while the board is busy.
    private void Pass(long microseconds)
    {
        ShopTime += microseconds;
        line.Advance(ShopTime);
    }
}
