using System;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Measures the board itself, which nobody else can: how long an instruction, a conversion and a write take. It keeps the board
/// busy for a while, so the vacuum must be off.
/// </summary>
public sealed class BoardMeter
{
    /// <summary>Instructions in a round of <see cref="Loop"/>; the cost meter's tests hold the number.</summary>
    public const int InstructionsARound = 11;

    /// <summary>A reading's work beside the conversion, in plain instructions; the cost meter's tests hold the number.</summary>
    public const int InstructionsAReading = 147;

    private const int Rounds = 1000;
    private const int BurstMicroseconds = 20000;

    private readonly IBoard _board;
    private readonly SafeBoard _safe;
    private readonly BootRecord _boot;
    private readonly int[] _readings = new int[64];

    /// <summary>Initializes a new instance of the <see cref="BoardMeter"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="safe">Asks for the free heap.</param>
    /// <param name="boot">What is written to flash, with the content that it has.</param>
    public BoardMeter(IBoard board, SafeBoard safe, BootRecord boot)
    {
        _board = board;
        _safe = safe;
        _boot = boot;
    }

    /// <summary>Time of a plain instruction in ns.</summary>
    public int InstructionNanoseconds;

    /// <summary>Time of a conversion in µs; 0 when none could be read.</summary>
    public int ConversionMicroseconds;

    /// <summary>Time of a write to flash in ms; -1 when it failed.</summary>
    public int WriteMilliseconds;

    /// <summary>Free heap in bytes; 0 when the board does not tell.</summary>
    public int FreeHeap;

    /// <summary>Measures.</summary>
    public void Measure()
    {
        long begin = _board.Now;
        Loop(Rounds);
        InstructionNanoseconds = (int)((_board.Now - begin) * 1000 / (Rounds * InstructionsARound));
        MeasureConversion();
        begin = _board.Now;
        bool isWritten = _boot.Write(BootReason.PowerOn);
        WriteMilliseconds = isWritten ? (int)((_board.Now - begin + 500) / 1000) : -1;
        FreeHeap = _safe.FreeHeap();
    }

    /// <summary>A loop whose instructions are known.</summary>
    /// <param name="rounds">Number of rounds.</param>
    /// <returns>The sum of the numbers below it.</returns>
    public static int Loop(int rounds)
    {
        int sum = 0;
        for (int i = 0; i < rounds; i++)
        {
            sum += i;
        }

        return sum;
    }

    private void MeasureConversion()
    {
        ConversionMicroseconds = 0;
        try
        {
            long begin = _board.Now;
            int count = _board.ReadBurst(_readings, 0, 0, begin + BurstMicroseconds);
            if (count > 0)
            {
                long reading = ((_board.Now - begin) * 1000 / count) - ((long)InstructionsAReading * InstructionNanoseconds);
                ConversionMicroseconds = reading > 0 ? (int)((reading + 500) / 1000) : 0;
            }
        }
        catch (Exception)
        {
            // The sheet says that there was none. Whether it is a fault, the fault monitor decides.
            _safe.PanelTroubles++;
        }
    }
}
