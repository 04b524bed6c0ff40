using ScottPlot;
using ScottPlot.Plottables;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>What all charts have in common: colours, sizes, margins and the axis of time.</summary>
internal static class ChartStyle
{
    /// <summary>Width of a chart in pixels.</summary>
    public const int Width = 1600;

    /// <summary>Size of most text.</summary>
    public const float FontSize = 16;

    /// <summary>Size of a note.</summary>
    public const float SmallFontSize = 13;

    /// <summary>Width of a panel's inside in pixels.</summary>
    public const float InnerWidth = Width - LeftMargin - RightMargin;

    private const float LeftMargin = 120;
    private const float RightMargin = 215;

    // Colours of Okabe and Ito, which people with the usual kinds of colour blindness can tell apart.

    /// <summary>Black, for what is asked for.</summary>
    public static readonly Color Black = Colors.Black;

    /// <summary>Grey, for what stands back.</summary>
    public static readonly Color Grey = Color.FromHex("#999999");

    /// <summary>Orange.</summary>
    public static readonly Color Orange = Color.FromHex("#E69F00");

    /// <summary>Sky blue.</summary>
    public static readonly Color Sky = Color.FromHex("#56B4E9");

    /// <summary>Bluish green.</summary>
    public static readonly Color Green = Color.FromHex("#009E73");

    /// <summary>Yellow.</summary>
    public static readonly Color Yellow = Color.FromHex("#F0E442");

    /// <summary>Blue.</summary>
    public static readonly Color Blue = Color.FromHex("#0072B2");

    /// <summary>Vermilion.</summary>
    public static readonly Color Vermilion = Color.FromHex("#D55E00");

    /// <summary>Reddish purple.</summary>
    public static readonly Color Purple = Color.FromHex("#CC79A7");

    // The first of these that is installed; where there is none of them, what the drawing library takes.
    private static readonly string s_font = Array.Find(
        ["Segoe UI", "Helvetica Neue", "Noto Sans", "DejaVu Sans", "Liberation Sans", "Arial"], IsInstalled) ?? Fonts.Default;

    /// <summary>Makes an empty panel.</summary>
    /// <param name="label">Label of the upright axis, with the unit.</param>
    /// <param name="top">Height above the panel in pixels.</param>
    /// <param name="bottom">Height below it in pixels.</param>
    /// <returns>The panel.</returns>
    public static Plot Panel(string label, float top, float bottom)
    {
        Plot panel = new();
        panel.Font.Set(s_font);
        panel.Layout.Fixed(new PixelPadding(LeftMargin, RightMargin, bottom, top));
        panel.Grid.MajorLineColor = Colors.Black.WithOpacity(0.12);
        panel.YLabel(label, FontSize);
        panel.Axes.Left.Label.Bold = false;
        panel.Axes.Left.MinimumSize = LeftMargin - 5;
        panel.Axes.Left.TickLabelStyle.FontSize = FontSize;
        panel.Axes.Bottom.TickLabelStyle.FontSize = FontSize;
        panel.Legend.FontSize = FontSize;
        panel.Legend.SymbolWidth = 36;
        panel.Legend.OutlineWidth = 0;
        panel.Legend.ShadowColor = Colors.Transparent;
        panel.ShowLegend(Edge.Right).Alignment = Alignment.UpperLeft;
        return panel;
    }

    /// <summary>Sets the axis of time.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="from">First second.</param>
    /// <param name="to">Last second.</param>
    /// <param name="isLabelled">Whether the times are written below it.</param>
    public static void SetTime(Plot panel, double from, double to, bool isLabelled)
    {
        TimeTicks ticks = new(from, to);
        panel.Axes.SetLimitsX(from, to);
        panel.Axes.Bottom.TickGenerator = ticks.Generator(isLabelled);
        if (isLabelled)
        {
            panel.XLabel(ticks.Label, FontSize);
            panel.Axes.Bottom.Label.Bold = false;
        }
    }

    /// <summary>Adds a line.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="points">Its points.</param>
    /// <param name="color">Its colour.</param>
    /// <param name="name">Its name beside the panel.</param>
    /// <param name="pattern">Its pattern.</param>
    public static void AddLine(Plot panel, Coordinates[] points, Color color, string name, LinePattern pattern)
    {
        Scatter line = panel.Add.ScatterLine(points, color);
        line.LineWidth = 2;
        line.LinePattern = pattern;
        line.LegendText = name;
    }

    // For a font that is not there the library gives another one.
    private static bool IsInstalled(string font) => string.Equals(
        Fonts.GetTypeface(font, FontWeight.Normal, FontSlant.Upright, FontSpacing.Normal).FamilyName,
        font,
        StringComparison.OrdinalIgnoreCase);
}
