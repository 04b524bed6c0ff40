using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>Windows that show a swing exactly, all of it at the mains frequency.</summary>
internal static class Windows
{
    /// <summary>Makes a window that knows all of its means.</summary>
    public static SwingWindow Full()
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < window.Means.Length; i++)
        {
            window.Add(100, 1);
        }

        return window;
    }

    /// <summary>Adds a bucket.</summary>
    public static void Add(SwingWindow window, int swing)
    {
        window.Power = SwingWindow.PowerOf(swing);
        window.Powers[window.Place] = window.Power;
        window.Halves[window.Place] = window.Power - (window.Power / 2);
        window.Place = (window.Place + 1) % window.Means.Length;
    }
}
