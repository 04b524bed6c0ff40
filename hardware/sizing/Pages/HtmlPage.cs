using NanoDustSwitch.Sizing.Changes;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Pages;

internal static class HtmlPage
{
    public static string Of(Advice advice, TrialBook trials) => "";
}
