namespace NanoDustSwitch.EnclosureTests;

/// <summary>The pages of the hardware agree with the firmware, with each other and with the parameters.</summary>
[TestClass]
public sealed class PageTests
{
    // Of board-cradle.scad and sensor-holder.scad.
    private const int CradleScrews = 2;
    private const int HolderScrews = 2 * 2;

    /// <summary>Gets the pages that a person builds and commissions by.</summary>
    private static IEnumerable<Page> BuildersPages =>
        new[] { "README", "ready-made", "enclosure/README" }
            .Select(page => Page.Read($"hardware/{page}.md"));

    [TestMethod]
    public void Every_link_leads_somewhere() =>
        Findings.AssertNone(Page.Below("hardware").SelectMany(PageRules.DeadLinks));

    [TestMethod]
    public void Every_command_names_a_project_that_is_there() =>
        Findings.AssertNone(Page.Below("hardware").SelectMany(PageRules.UnknownProjects));

    [TestMethod]
    public void Every_word_of_the_console_is_one() =>
        Findings.AssertNone(BuildersPages.SelectMany(PageRules.UnknownWords));

    [TestMethod]
    public void Every_dialogue_is_what_the_virtual_shop_says() =>
        Findings.AssertNone(Page.Below("hardware").SelectMany(PageRules.UntrueDialogues));

    [TestMethod]
    public void The_spacings_on_the_page_are_those_of_the_parameters()
    {
        string page = Page.Read("hardware/enclosure/README.md").Text;
        AssertSays(
            page, Spacings.Of(Parameters.Read()).Select(spacing => $"| {spacing.Between} | {spacing.Millimetres:0.0} |\n"));
    }

    [TestMethod]
    public void The_holes_on_the_page_are_those_of_the_parameters()
    {
        Parameters p = Parameters.Read();
        string page = Page.Read("hardware/enclosure/README.md").Text;
        string[] glands = ["supply", "vacuum", "tool"];
        string[] panel = ["button", "lamp", "sensor, for two circuits only", "console"];
        Assert.HasCount(glands.Length, p.All("gland_y"));
        Assert.HasCount(panel.Length, p.All("panel_y"));
        AssertSays(
            page,
            glands.Select((name, i) => $"| {name} | mains | {p["gland_y", i]} | {p["gland_height"]} | {p["gland_hole"]} |\n"));
        AssertSays(
            page,
            panel.Select(
                (name, i) => $"| {name} | low voltage | {p["panel_y", i]} | {p["panel_height"]} | {p["panel_hole", i]} |\n"));
        AssertSays(
            page,
            [
                $"| mains | {p["breaker_at", 0]} | {p["breaker_at", 1]} | {p["breaker_hole"]} |\n",
                $"| {p["sounder_at", 0]} from the mains end | {p["sounder_at", 1]} | {p["sounder_hole"]} |\n",
            ]);
    }

    [TestMethod]
    public void The_sizes_on_the_page_are_those_of_the_parameters()
    {
        Parameters p = Parameters.Read();
        string page = Page.Read("hardware/enclosure/README.md").Text;

        // Within a sentence, whatever its lines.
        page = string.Join(' ', page.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        AssertSays(page, new[] { "box_inside", "head_inside" }.Select(box => $"{p[box, 0]} × {p[box, 1]} × {p[box, 2]} mm"));
        double cut = p["box_corner"] + p["plate_gap"];
        double gaps = 2 * p["plate_gap"];
        AssertSays(
            page,
            [$"{p["box_inside", 0] - gaps} × {p["box_inside", 1] - gaps} mm, its corners cut out {cut} mm"]);
        string[] parts =
        [
            "rail", "earth_foot", "neutral_terminals", "line_terminals", "fuse", "relay", "end_stop", "last_stop", "supply",
        ];
        AssertSays(page, parts.Select(part => $" {p[part, 2]} × {p[part, 3]} × {p[part, 4]} |"));
        AssertSays(
            page,
            [
                $"hold cords of {p["gland_clamp", 0]} to {p["gland_clamp", 1]} mm", $"12 AWG is {p["cord", 1]} mm thick",
                $"14 AWG {p["cord", 0]} mm", $"{p["core_straight"]} mm straight", $"inner radius of {p["core_bend"]} diameters",
            ]);
        AssertSays(page, [$"{p["crossing_apart"]} mm along the trough", $"the barrier's {p["barrier_wall"]} mm."]);
    }

    // What a hand reaches from outside has a hole to reach it by, and the list counts the glands and screws of the parameters.
    [TestMethod]
    public void Everything_in_the_walls_has_its_hole_and_the_list_counts_glands_and_screws()
    {
        Parameters p = Parameters.Read();
        string list = Page.Read("hardware/parts.csv").Text;
        string holes = Page.Read("hardware/enclosure/README.md").Text;
        string[] reached = ["button", "lamp", "sounder", "console", "breaker for equipment"];
        AssertSays(holes, reached.Select(name => $"\n| {name}"));
        int screws = p.BarrierScrews().Length + CradleScrews + HolderScrews;
        AssertSays(list, [$",always,{screws}\nboard screw,", "\nplastic screw,wired,\"M4 screw"]);
        Findings.AssertNone(list.Split('\n')
            .Where(line => line.StartsWith("gland,", StringComparison.Ordinal)
                && !line.EndsWith($",{p.All("gland_y").Count}", StringComparison.Ordinal)));
    }

    // Of the drawings the list names the two whose plastic must be flame-rated.
    [TestMethod]
    public void The_barrier_is_asked_for_a_flame_rating_on_page_and_list()
    {
        AssertSays(Page.Read("hardware/enclosure/README.md").Text, ["barrier and sensor's holder", "UL 94 V-0 at 3 mm"]);
        AssertSays(
            Page.Read("hardware/parts.csv").Text,
            ["\nbarrier,wired,barrier and sensor's holder,", "UL 94 V-0 at 3 mm or thinner"]);
    }

    [TestMethod]
    [DataRow("[a](nowhere.md)", "there is no nowhere.md")]
    [DataRow("[a](#no-such-heading)", "no heading for #no-such-heading")]
    [DataRow("[a](README.md#no-such-heading)", "no heading for README.md#no-such-heading")]
    [DataRow("![a](enclosure/pictures/none.png)", "there is no enclosure/pictures/none.png")]
    [DataRow("`vacum-turns 1`", "the console does not know 'vacum-turns 1'")]
    [DataRow("`vacuum-turns 12`", "the console does not know 'vacuum-turns 12'")]
    [DataRow("`calibrate soon`", "the console does not know 'calibrate soon'")]
    [DataRow("`vacuum perhaps`", "the console does not know 'vacuum perhaps'")]
    [DataRow("`told off: sensor sulks`", "the console does not know 'told off: sensor sulks'")]
    [DataRow("`dotnet run --project hardware/sizzling -- --help`", "there is no project hardware/sizzling")]
    [DataRow("```console\n> run-on 8\nrun-on 8 s (saved)\n```", "the shop says:")]
    public void A_mistake_on_a_page_is_named(string text, string wanted)
    {
        Page page = new("hardware/README.md", text);
        string[] findings =
        [
            .. PageRules.DeadLinks(page),
            .. PageRules.UnknownProjects(page),
            .. PageRules.UnknownWords(page),
            .. PageRules.UntrueDialogues(page),
        ];
        Assert.ContainsSingle(findings, string.Join('\n', findings));
        Assert.Contains(wanted, findings[0], StringComparison.Ordinal);
    }

    private static void AssertSays(string page, IEnumerable<string> wanted) =>
        Findings.AssertNone(wanted.Where(text => !page.Contains(text, StringComparison.Ordinal))
            .Select(text => $"the page does not say '{text.Trim()}'"));
}
