using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Pages;
using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Judging;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>Writes an order's folder; what is wrong with it comes as a <see cref="UserException"/>.</summary>
internal static class BuildFolder
{
    /// <summary>The page to print.</summary>
    public const string Html = "build.html";

    /// <summary>The same in Markdown.</summary>
    public const string Markdown = "build.md";

    /// <summary>Writes it, where the order fits.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="advice">The order, judged.</param>
    public static void Save(string folder, Advice advice)
    {
        if (advice.Outcome == Outcome.Fails)
        {
            return;
        }

        OrderPage order = new(advice);
        HtmlPage html = new("Dust switch: to build", order.Title);
        MarkdownPage markdown = new(order.Title);
        order.Write(html);
        order.Write(markdown);
        try
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, Html), html.ToString());
            File.WriteAllText(Path.Combine(folder, Markdown), markdown.ToString());
            File.WriteAllText(Path.Combine(folder, OrderPage.DrawingFile), order.Drawing);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or IOException
            or UnauthorizedAccessException)
        {
            string reason = exception.Message.Split(" : '")[0].TrimEnd('.');
            throw new UserException($"--build {folder} cannot be written: {reason}.", exception);
        }
    }
}
