using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Inspector.Spectrum;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Charts;
using NanoDustSwitch.Simulator.Pages;
using ScottPlot;

namespace NanoDustSwitch.Inspector.Report;

/// <summary>What a page says about a recording: verdict, figures, a cycle, the spectrum, the swing over time.</summary>
internal static class ReportPage
{
    private const int LongestTimeline = 60;
    private const int MostHarmonics = 13;

    /// <summary>Makes the page of a recording.</summary>
    /// <param name="choices">The settings it was replayed with.</param>
    /// <param name="runs">The replay with each.</param>
    /// <returns>The page.</returns>
    public static HtmlPage Of(IReadOnlyList<SettingChoice> choices, IReadOnlyList<ReplayRun> runs)
    {
        HtmlPage page = new(runs[0].Source.Name);
        page.AddVerdict((runs.Count > 1 ? choices[^1].Title + ": " : "") + Verdict.Of(runs[^1]), runs[^1].IsGood);
        AddReplay(page, choices, runs);
        return page;
    }

    /// <summary>Adds all about a recording: figures, swing, cycle, spectrum, timeline, settings.</summary>
    /// <param name="page">The page.</param>
    /// <param name="choices">The settings it was replayed with.</param>
    /// <param name="runs">The replay with each.</param>
    public static void AddReplay(HtmlPage page, IReadOnlyList<SettingChoice> choices, IReadOnlyList<ReplayRun> runs)
    {
        ReplaySource source = runs[0].Source;
        string[] header = ["", .. choices.Select(choice => choice.Title)];
        page.AddText($"{source.Seconds:0.00} s: {source.Understood}");
        page.AddHeading("What the switch makes of it");
        page.AddTable(header, ReplayReport.Rows.Select(row => (string[])[row.Name, .. runs.Select(row.Value)]));
        for (int i = 0; i < runs.Count; i++)
        {
            AddFigure(
                page,
                ReportFigure.Swing(runs[i]),
                $"Swing over time{(runs.Count > 1 ? $", {choices[i].Title}" : "")}, as the rms current of a sine",
                (ChartStyle.Blue, "swing"),
                (ChartStyle.Vermilion, "starts at, dashed"),
                (ChartStyle.Black, "stops below, dotted"),
                (ChartStyle.Green, "vacuum on"));
        }

        AddSpectrum(page, MainsSpectrum.Of(source.Wave, source.Shapes));
        for (int i = 0; i < runs.Count; i++)
        {
            if (runs[i].Timeline.Count == 0)
            {
                continue;
            }

            page.AddHeading("Timeline" + (runs.Count > 1 ? $", {choices[i].Title}" : ""));
            if (runs.Count > 1)
            {
                page.AddText(Verdict.Of(runs[i]));
            }

            page.AddTable(
                ["s", "what"],
                runs[i].Timeline.Take(LongestTimeline).Select(entry => (string[])[$"{entry.Time / 1e6:0.000}", entry.Text]),
                isText: true);
        }

        page.AddHeading("Settings");
        SettingId[] ids = [.. Enumerable.Range(0, SettingsTable.Count).Select(i => (SettingId)i)];
        page.AddTable(
            header,
            ids.Select(id => (string[])
                [SettingsTable.Row(id).Name, .. choices.Select(choice => FirmwareText.Of(id, choice.Values[id]))]));
    }

    private static void AddSpectrum(HtmlPage page, MainsSpectrum spectrum)
    {
        page.AddHeading("The current itself");
        if (!spectrum.IsFound)
        {
            page.AddText("There is no current of the mains' frequency in it that stands out of the noise.");
            return;
        }

        string slice = spectrum.IsOfBuckets
            ? " The board sends means of 2.5 ms: harmonics above 200 Hz are not in them but fold back, so that those below are "
                + "about right only."
            : "";
        page.AddText(
            $"{spectrum.Hertz:0.00} Hz, {spectrum.Amperes[0]:0.00} A rms at that frequency, all harmonics together "
            + $"{spectrum.Distortion * 100:0.#} % of it; from {spectrum.Seconds:0.00} s at {spectrum.From:0.00} s.{slice}");
        AddFigure(
            page,
            ReportFigure.Cycle(spectrum),
            $"A cycle: {spectrum.Cycles:0} cycles laid over each other",
            (ChartStyle.Sky, spectrum.IsOfBuckets ? "means of 2.5 ms" : "readings"),
            (ChartStyle.Vermilion, "fundamental and harmonics"));
        AddFigure(
            page,
            ReportFigure.Lines(spectrum),
            $"Spectrum up to {ReportFigure.End(spectrum):#,0} Hz"
                + (ReportFigure.End(spectrum) < spectrum.Rate / 2
                    ? " (the readings would show more, a mains current has little there)"
                    : ", as far as the readings show it"),
            (ChartStyle.Blue, "the current"),
            (ChartStyle.Vermilion, "fundamental and harmonics"));
        page.AddTable(
            ["harmonic", "Hz", "A rms", "%"],
            spectrum.Amperes.Take(MostHarmonics).Select((amperes, i) => (string[])
            [
                $"{i + 1}", $"{(i + 1) * spectrum.Hertz:0.0}", $"{amperes:0.000}", $"{100 * amperes / spectrum.Amperes[0]:0.0}",
            ]));
    }

    private static void AddFigure(HtmlPage page, string svg, string caption, params (Color Color, string Name)[] keys) =>
        page.AddFigure(svg, ReportFigure.Width, ReportFigure.Height, caption, keys);
}
