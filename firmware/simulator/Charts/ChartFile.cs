using NanoDustSwitch.Simulator.Errors;
using ScottPlot;
using ScottPlot.MultiplotLayouts;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>Writes charts to files. What is wrong with the file comes as a <see cref="UserException"/>.</summary>
internal static class ChartFile
{
    /// <summary>Writes a chart of several panels as a PNG file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="panels">Its panels from the top down, one or more.</param>
    /// <param name="heights">Their heights in pixels.</param>
    public static void SavePng(string path, IReadOnlyList<Plot> panels, float[] heights)
    {
        // Written in one go below: no half a picture stays behind where drawing fails.
        NamedFile.Write(path, Render(panels, heights), "--chart ");
    }

    private static byte[] Render(IReadOnlyList<Plot> panels, float[] heights)
    {
        DraggableRows rows = new();
        rows.SetHeights(heights);
        Multiplot chart = new(panels[0]) { Layout = rows };
        foreach (Plot panel in panels.Skip(1))
        {
            chart.Subplots.Add(panel);
        }

        using Image image = chart.Render(ChartStyle.Width, (int)heights.Sum());
        return image.GetImageBytes(ImageFormat.Png);
    }
}
