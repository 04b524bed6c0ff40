using System;
using System.Threading;
using NanoDustSwitch.Firmware;
using nanoFramework.Runtime.Native;

namespace NanoDustSwitch.Esp32;

/// <summary>
/// What the board runs. It never returns: if it did, the pins would stay as they are and nothing would watch over them any more.
/// </summary>
public static class Program
{
    // Long enough to read the message.
    private const int PauseMilliseconds = 10000;

    /// <summary>Runs the switch.</summary>
    public static void Main()
    {
        Esp32Board board = null;
        try
        {
            board = new Esp32Board();
            Switch dustSwitch = new Switch(board);
            while (!dustSwitch.IsRestarting)
            {
                dustSwitch.Step();
            }
        }
        catch (Exception)
        {
            // Whatever it was, what follows is the same.
        }

        // A switch restarts the board by itself. The program comes here only if there is no switch, or if that restart failed.
        while (true)
        {
            LetRelayRest(board);
            Say(board, "\r\nnanoDustSwitch cannot run: the vacuum stays off. The board restarts in 10 s.\r\n");
            Thread.Sleep(PauseMilliseconds);
            Restart();
        }
    }

    private static void LetRelayRest(Esp32Board board)
    {
        try
        {
            // Without a board the line was never driven high.
            if (board != null)
            {
                board.SetRelayLine(false);
            }
        }
        catch (Exception)
        {
            // The line does not toggle any more, so the relay's driver lets go by itself.
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
            // Without a serial line there is no way to say it.
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
            // It is tried again after the next pause.
        }
    }
}
