using System;
using System.Threading;
using NanoDustSwitch.Firmware;
using nanoFramework.Runtime.Native;

namespace NanoDustSwitch.Esp32;

/// <summary>What the board runs. It never returns: the end of a program leaves the pins as they are, and nothing runs any more.</summary>
public static class Program
{
    // Time to read why, and few enough starts that their writes do not wear out the flash.
    private const int PauseMilliseconds = 10000;

    /// <summary>Runs the switch.</summary>
    public static void Main()
    {
        Esp32Board board = null;
        try
        {
            board = new Esp32Board();
            Switch of = new Switch(board);
            while (!of.IsRestarting)
            {
                of.Step();
            }
        }
        catch (Exception)
        {
            // What to do is the same for all of them.
        }

        // A switch restarts the board by itself. It comes here if there is no switch, or if that restart failed.
        while (true)
        {
            Rest(board);
            Say(board, "\r\nnanoDustSwitch cannot run: the vacuum stays off. The board restarts in 10 s.\r\n");
            Thread.Sleep(PauseMilliseconds);
            Restart();
        }
    }

    private static void Rest(Esp32Board board)
    {
        try
        {
            // Without a board the line was never anything but at rest.
            if (board != null)
            {
                board.SetRelayLine(false);
            }
        }
        catch (Exception)
        {
            // Nothing toggles any more: the driver lets go by itself.
        }
    }

    private static void Say(Esp32Board board, string text)
    {
        try
        {
            byte[] bytes = new byte[text.Length];
            for (int i = 0; i < bytes.Length; i++)
            {
                bytes[i] = (byte)text[i];
            }

            if (board != null)
            {
                board.WriteSerial(bytes, 0, bytes.Length);
            }
        }
        catch (Exception)
        {
            // Then nobody hears it.
        }
    }

    private static void Restart()
    {
        try
        {
            Power.RebootDevice(RebootOption.NormalReboot);
        }
        catch (Exception)
        {
            // The next try comes after the next pause.
        }
    }
}
