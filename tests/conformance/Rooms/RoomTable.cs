namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>The one place that says which room may use which, and which folder in it which other.</summary>
internal static class RoomTable
{
    private const string Core = "detection-core";
    private const string Switch = "firmware/switch";
    private const string Simulator = "firmware/simulator";

    public static IReadOnlyList<Room> All { get; } =
    [
        new("detection-core/DetectionCore.csproj", [], new()
        {
            [Room.Top] = ["Faults", "Notices", "Readings", "Settings", "State", "Swing", "Tools", "Units", "Vacuum"],
            ["Faults"] = ["Notices", "Readings", "Settings", "State", "Swing", "Units"],
            ["Readings"] = ["Units"],
            ["Swing"] = ["Readings", "State", "Units"],
            ["Tools"] = ["Notices", "State", "Swing", "Units"],
            ["Vacuum"] = ["Notices", "Readings", "Settings", "State", "Swing", "Tools", "Units"],
        }),
        new("firmware/switch/Switch.csproj", [Core], new()
        {
            [Room.Top] =
            [
                "Board", "Console", "Console/Words", "Control", "Indicators", "Log", "Recording", "Settings", "Store", "Text",
            ],
            ["Console/Words"] =
            [
                "Board", "Console", "Control", "Guides", "Indicators", "Log", "Settings", "Store", "Text",
            ],
            ["Guides"] = ["Board", "Console", "Control", "Indicators", "Log", "Meters", "Settings", "Store", "Text"],
            ["Indicators"] = ["Board", "Console", "Control", "Settings", "Store"],
            ["Console"] = ["Board", "Log", "Meters", "Recording", "Settings", "Store", "Text"],
            ["Control"] = ["Board", "Log", "Recording", "Store"],
            ["Recording"] = ["Board", "Settings", "Text"],
            ["Settings"] = ["Board", "Log", "Store", "Text"],
            ["Log"] = ["Board", "Store", "Text"],
            ["Store"] = ["Board"],
        }),
        new("firmware/esp32/Esp32.csproj", [Core, Switch], []) { IsDeviceOnly = true },
        new("firmware/simulator/Simulator.csproj", [Core, Switch], new()
        {
            [Room.Top] = ["Commands"],
            ["Commands"] =
            [
                "Board", "Charts", "Days", "Days/Json", "Errors", "Live", "Live/Picture", "Live/Serve", "Shop", "Soak",
                "Terminal",
            ],
            ["Live/Picture"] = ["Board", "Live", "Shop", "Terminal"],
            ["Live/Serve"] = ["Board", "Errors", "Live", "Terminal"],
            ["Live"] = ["Board", "Days", "Days/Json", "Errors", "Shop", "Terminal"],
            ["Soak"] = ["Days", "Shop"],
            ["Charts"] = ["Days", "Errors"],
            ["Days/Json"] = ["Days", "Errors", "Shop", "Tables"],
            ["Days"] = ["Board", "Errors", "Shop"],
            ["Board"] = ["Errors", "Shop"],
            ["Tables"] = ["Errors"],
            ["Terminal"] = ["Errors"],
        }),
        new("firmware/inspector/Inspector.csproj", [Core, Switch, Simulator], new()
        {
            [Room.Top] = ["Commands"],
            ["Commands"] = ["Charts", "Friend", "Port", "Replay", "Report", "Tune"],
            ["Friend"] = ["Port", "Replay"],
            ["Tune"] = ["Replay", "Report"],
            ["Report"] = ["Charts", "Replay", "Spectrum"],
            ["Charts"] = ["Replay"],
            ["Port"] = ["Replay"],
            ["Replay"] = ["Spectrum"],
        }),
        new("hardware/sizing/Sizing.csproj", [Core, Switch, Simulator, "hardware/drawing"], new()
        {
            [Room.Top] = ["Commands"],
            ["Commands"] = ["Building", "Changes", "Judging", "Orders", "Pages", "Texts", "Trials"],
            ["Building"] = ["Changes", "Judging", "Orders", "Pages"],
            ["Pages"] = ["Changes", "Judging", "Orders", "Sources", "Tables", "Trials"],
            ["Changes"] = ["Judging", "Orders", "Tables", "Texts", "Trials"],
            ["Judging"] = ["Orders", "Sources", "Tables", "Trials"],
            ["Trials"] = ["Orders", "Tables", "Texts"],
            ["Texts"] = ["Orders", "Tables"],
            ["Tables"] = ["Orders", "Sources"],
            ["Orders"] = ["Sources"],
        }),
        new("hardware/drawing/Drawing.csproj", [], new()
        {
            [Room.Top] = ["Netlists", "Sheets"],
            ["Sheets"] = ["Netlists"],
        }),
    ];
}
