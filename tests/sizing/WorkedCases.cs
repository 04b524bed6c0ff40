namespace NanoDustSwitch.SizingTests;

/// <summary>
/// The worked cases. Each figure was worked out by hand from the table that is named beside it; "read", "memory" and "practice"
/// say how that is known. hardware/sizing/README.md has them as a table, which is compared with this list.
/// </summary>
internal static class WorkedCases
{
    private const string Receptacle = "NEC 210.21(B), 210.23(A)(1); read";
    private const string National = "national standards; memory";
    private const string MotorTable = "NEC Table 430.248; read";
    private const string CordTable = "NEC Table 400.5(A); read";
    private const string Teach = "Smallest tool";
    private const string Transformer = "--sensor transformer-100A";

    /// <summary>The cases.</summary>
    public static readonly IReadOnlyList<WorkedCase> All =
    [
        new("one 15 A circuit for both",
            $"--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --cord 8m/14AWG {Transformer}", 1,
            new("Load", "the circuit, nameplate", "NO", ["22.0 A", "12.0 A"], Receptacle),
            new("Load", "the circuit, code load", "NO", ["27.5 A", "15 A"], "NEC 210.19(A)(1); read"),
            new("Cords", "box", "NO", ["22.0 A", "18 A"], CordTable),
            // 2 x 26.25 ft x 3.14 ohm/1000 ft x 22 A.
            new("Cords", "its drop", "ok", ["3.63 V", "3.02 %"], "NEC Chapter 9 Table 8; read")),
        new("two circuits",
            $"--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A --cord 2m/14AWG {Transformer}", 0,
            new("Load", "tool's circuit, nameplate", "ok", ["12.0 A"], Receptacle),
            new("Load", "vacuum's circuit, nameplate", "ok", ["10.0 A", "12.0 A"], Receptacle),
            new("Relay", "or by horsepower", "ok", ["3/4 hp", "13.8 A"], MotorTable),
            new("Sensor", "gain", "ok", ["23.5 mV/A"], "data sheet 100 A : 50 mA; read"),
            // 12 A x 6 x root of 2 x 147 ohm x (50 + 2.65) ms / (2000² x 55 mm²).
            new("Sensor", "core", "ok", ["102 A", "3.58 T", "1.5 T"], "textbooks, IEC 61869-2; memory"),
            // 1270 mV less 150 mV, over 23.5 mV/A.
            new("Sensor", "clips at", "ok", ["47.7 A peak"], "computed")),
        new("20 A circuit, 15 A receptacle: stays 12 A",
            $"--vacuum 6A --tool 8A --supply 120V/60Hz --breaker 20A --cord 2m/14AWG {Transformer}", 1,
            new("Load", "the circuit, nameplate", "NO", ["14.0 A", "12.0 A"], Receptacle),
            new("Load", "the circuit, receptacle", "ok", ["US15", "20 A"], Receptacle)),
        new("the same with a 20 A receptacle",
            $"--vacuum 6A --tool 8A --supply 120V/60Hz --breaker 20A --plug US20 --cord 2m/14AWG {Transformer}", 3,
            new("Load", "the circuit, nameplate", "ok", ["14.0 A", "16.0 A"], Receptacle),
            // 20 A of breaker over 18 A of cord.
            new("Protection", "overload", "add", ["20 A", "18 A", "equipment of 18 A"], "practice")),
        new("16 AWG on a 20 A circuit",
            $"--vacuum 8A --tool 8A --supply 120V/60Hz --breaker 20A --plug US20 --cord 2m/16AWG {Transformer}", 1,
            new("Load", "the circuit, nameplate", "ok", ["16.0 A"], Receptacle),
            new("Cords", "box", "NO", ["16.0 A", "13 A"], CordTable)),
        new("45 ft of 16 AWG to the tool",
            "--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A --cord 2m/14AWG "
            + $"--cord head:1m/14AWG --cord tool:45ft/16AWG {Transformer}",
            0,
            new("Cords", "tool", "mind", ["12.0 A", "13 A", "15 A can flow"], CordTable),
            // (2 x 45 ft x 4.99 + 2 x 3.281 ft x 3.14) ohm/1000 ft x 12 A, of 120 V.
            new("Cords", "wall to tool", "mind", ["5.64 V", "4.70 %", "over 3 %", "33.8 V"], "NEC 210.19(A) note; memory")),
        new("240 V tool, 120 V vacuum",
            $"--vacuum 9A --tool 2hp --supply 240V/60Hz --breaker 20A --vacuum-circuit 15A/120V --cord 2m/14AWG {Transformer}", 0,
            new("Load", "tool", "ok", ["12.0 A"], MotorTable),
            new("Load", "tool's circuit, code load", "ok", ["15.0 A", "20 A"], "NEC 210.19(A)(1); read"),
            new("Relay", "or by horsepower", "ok", ["1/2 hp", "9.8 A"], MotorTable),
            new("Relay", "poles", "ok", ["one"], "practice")),
        new("two hot wires for both",
            $"--vacuum 5A --tool 1hp --supply 240V/60Hz --breaker 20A --cord 3m/12AWG {Transformer}", 0,
            new("Load", "tool", "ok", ["8.0 A"], MotorTable),
            new("Load", "the circuit, nameplate", "ok", ["13.0 A", "16.0 A"], Receptacle),
            new("Relay", "poles", "ok", ["two", "hot"], "practice")),
        new("18 AWG at the box",
            "--vacuum 7A --tool 5A/universal --supply 120V/60Hz --breaker 20A --plug US20 --vacuum-circuit 20A "
            + $"--cord 2m/18AWG {Transformer}",
            3,
            new("Protection", "overload", "add", ["20 A", "10 A", "CB1", "equipment of 10 A"], "practice"),
            new("Protection", "overload, head", "ok", ["20 A", "covers"], "practice")),
        new("16 AWG at the sensing head",
            "--vacuum 9A --tool 2hp --supply 240V/60Hz --breaker 20A --vacuum-circuit 15A/120V --cord 2m/14AWG "
            + $"--cord tool:3m/16AWG {Transformer}",
            3,
            new("Cords", "head", "ok", ["12.0 A", "13 A"], CordTable),
            new("Protection", "overload, head", "add", ["20 A", "13 A", "CB2", "equipment of 13 A"], "practice")),
        new("18 AWG at the sensing head",
            "--vacuum 9A --tool 2hp --supply 240V/60Hz --breaker 20A --vacuum-circuit 15A/120V --cord 2m/14AWG "
            + $"--cord head:1m/18AWG {Transformer}",
            1,
            new("Cords", "head", "NO", ["12.0 A", "10 A"], CordTable),
            new("Protection", "overload, head", "NO", ["20 A", "10 A"], "practice")),
        new("horsepower counts by the table",
            $"--vacuum 4A --tool 1hp --supply 120V/60Hz --breaker 20A --plug US20 --cord 2m/12AWG {Transformer}", 1,
            new("Load", "tool", "ok", ["16.0 A"], MotorTable),
            new("Load", "the circuit, nameplate", "NO", ["20.0 A", "16.0 A"], Receptacle)),
        new("peak hp refused",
            $"--vacuum 5hp --tool 12A --supply 120V/60Hz --breaker 15A --cord 8m/14AWG {Transformer}", 2),
        new("UK 13 A",
            $"--vacuum 1400W --tool 2000W --supply 230V/50Hz --breaker B32 --plug UK13 --cord 2m/1.5mm2 {Transformer}", 1,
            // (1400 + 2000) W / 230 V / 0.9.
            new("Load", "the circuit, nameplate", "NO", ["16.43 A", "13.0 A"], National),
            new("Protection", "overload", "NO", ["13 A"], "practice")),
        new("the same, a plug each",
            "--vacuum 1400W --tool 2000W --supply 230V/50Hz --breaker B32 --plug UK13 --vacuum-circuit same "
            + $"--cord 2m/1.5mm2 --cord head:1m/1.5mm2 {Transformer}",
            0,
            new("Load", "tool's plug, nameplate", "ok", ["9.66 A", "13.0 A"], National),
            new("Load", "both plugs, nameplate", "ok", ["16.43 A", "32.0 A"], "practice"),
            new("Relay", "poles", "ok", ["two"], "practice")),
        new("UK 13 A with a cord of 10 A",
            $"--vacuum 700W --tool 1000W/universal --supply 230V/50Hz --breaker B32 --plug UK13 --cord 2m/1mm2 {Transformer}",
            3,
            new Expected("Protection", "overload", "add", ["fuse of 10 A"], National)),
        new("UK 13 A, smaller tool",
            $"--vacuum 1000W --tool 1200W/universal --supply 230V/50Hz --breaker B32 --plug UK13 --cord 2m/1.25mm2 {Transformer}",
            0,
            new("Load", "the circuit, nameplate", "ok", ["10.63 A", "13.0 A"], National),
            new("Load", "the circuit, for long", "mind", ["10.4 A"], "practice"),
            new("Cords", "box", "ok", ["10.63 A", "13 A"], "BS 7671 Table 4F3A; memory"),
            new("Relay", "poles", "ok", ["two"], "practice"),
            new("Protection", "overload", "ok", ["fuse of 13 A"], National)),
        new("AU 10 A on a 20 A circuit",
            $"--vacuum 1000W --tool 900W/universal --supply 230V/50Hz --breaker C20 --plug AU10 --cord 3m/1mm2 {Transformer}", 3,
            // (1000 + 900) W / 230 V / 0.9.
            new("Load", "the circuit, nameplate", "ok", ["9.18 A", "10.0 A"], National),
            new("Cords", "box", "ok", ["9.18 A", "10 A"], "IEC 60335-1 table; read"),
            new("Relay", "poles", "ok", ["two"], "practice"),
            new("Protection", "overload", "add", ["equipment of 10 A"], "practice")),
        new("CH 10 A",
            $"--vacuum 1200W --tool 1400W --supply 230V/50Hz --breaker C13 --plug CH10 --cord 2m/1mm2 {Transformer}", 1,
            new("Load", "the circuit, nameplate", "NO", ["12.56 A", "10.0 A"], National),
            new("Cords", "box", "NO", ["12.56 A", "10 A"], "IEC 60335-1 table; read")),
        new("Japan, 100 V",
            $"--vacuum 6A --tool 6A/universal --supply 100V/50Hz --breaker 20A --cord 2m/1.5mm2 {Transformer}", 3,
            new("Load", "the circuit, nameplate", "ok", ["12.0 A", "15.0 A"], National),
            // 2 x 2 m x 13.3 mohm/m x 1.216 x 12 A.
            new("Cords", "its drop", "ok", ["0.78 V"], "IEC 60228; memory"),
            new("Relay", "poles", "ok", ["two"], "practice"),
            new("Protection", "overload", "add", ["20 A", "15 A", "equipment of 15 A"], "practice")),
        new("Japan, 2 mm² on 15 A",
            $"--vacuum 6A --tool 6A/universal --supply 100V/50Hz --breaker 15A --cord 2m/2mm2 {Transformer}",
            0,
            new("Cords", "box", "ok", ["12.0 A", "17 A"], "JIS C 3306; memory"),
            // 2 x 2 m x 9.79 mohm/m x 1.216 x 12 A.
            new("Cords", "its drop", "ok", ["0.57 V"], "JIS C 3306; memory")),
        new("small rotary tool, one turn",
            $"--vacuum 1000W --tool 40W/universal --supply 230V/50Hz --breaker C16 --plug EU16 --cord 2m/1.5mm2 {Transformer}", 1,
            // 0.4 x 40 W / 230 V / 0.9.
            new Expected(Teach, "this tool", "NO", ["0.077 A", "refuses", "below 0.09"], "tried in the virtual shop")),
        new("the same with two turns",
            "--vacuum 1000W --tool 40W/universal --supply 230V/50Hz --breaker C16 --plug EU16 "
            + $"--cord 2m/1.5mm2 {Transformer} --turns 2",
            0,
            new("Sensor", "gain", "ok", ["47.0 mV/A"], "data sheet 100 A : 50 mA; read"),
            new("Sensor", "clips at", "ok", ["23.8 A peak"], "computed"),
            new(Teach, "this tool", "ok", ["0.077 A", "takes"], "tried in the virtual shop")),
        new("5 A Hall sensor, 12 A saw",
            "--vacuum 8A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A --cord 2m/14AWG --sensor hall-5A", 1,
            // 12 A x root of 2 over 2.5 V / 185 mV/A; the converter's span alone: 1100 mV / 92.5 mV/A.
            new("Sensor", "running", "NO", ["17.0 A peak"], "computed"),
            new("Sensor", "clips at", "ok", ["11.9 A peak", "13.5 A"], "computed")),
        new("no mains wiring, one circuit",
            $"--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --ready-made {Transformer}", 1,
            new Expected("Load", "both plugs, nameplate", "NO", ["22.0 A", "12.0 A"], Receptacle)),
        new("no mains wiring, two circuits",
            $"--vacuum 10A --tool 12A --supply 120V/60Hz --breaker 15A --vacuum-circuit 20A --ready-made {Transformer}", 0,
            new("Load", "vacuum's circuit, nameplate", "ok", ["10.0 A", "12.0 A"], Receptacle),
            new("Switching unit", "or by horsepower", "ok", ["3/4 hp", "13.8 A"], MotorTable),
            new("Protection", "overload", "ok", ["20 A", "15 A", "as it was approved"], "practice")),
        new("no mains wiring, a small tool in Britain",
            "--vacuum 1000W --tool 40W/universal --supply 230V/50Hz --breaker B32 --plug UK13 --ready-made --turns 10 "
            + Transformer,
            0,
            // 0.5 V of 50 mA in 47 ohm, ten turns: 235 mV/A.
            new("Sensor", "gain", "ok", ["235.0 mV/A"], "data sheet 100 A : 50 mA; read"),
            new("Protection", "overload", "ok", ["fuse of 13 A"], National)),
        new("B16 and a hard start",
            $"--vacuum 1000W --tool 2000W/induction --supply 230V/50Hz --breaker B16 --plug EU16 --cord 2m/1.5mm2 {Transformer}",
            1,
            // Magnet from 3 times; 9.66 A x 6 = 58 A is 3.6 times.
            new("Starts", "breaker B16", "ok", ["3 to 5 times", "48 to 80 A"], "IEC 60898-1; memory"),
            new("Starts", "tool alone", "NO", ["58 A", "3.6 times", "may trip"], "computed")),
        new("the same, its kind not said",
            $"--vacuum 1000W --tool 2000W --supply 230V/50Hz --breaker B16 --plug EU16 --cord 2m/1.5mm2 {Transformer}", 0,
            new("Starts", "tool alone", "mind", ["58 A", "may trip", "2000W/universal"], "computed"),
            // 9.66 A + 3.75 x 4.83 A are 27.8 A; some percent more or less by the phase at which the vacuum is switched on.
            new("Starts", "then the vacuum", "ok", ["27 A", "1.7 times", "holds"], "computed")),
        new("C16 holds it",
            $"--vacuum 1000W --tool 2000W/induction --supply 230V/50Hz --breaker C16 --plug EU16 --cord 2m/1.5mm2 {Transformer}",
            0,
            new("Starts", "breaker C16", "ok", ["5 to 10 times", "80 to 160 A"], "IEC 60898-1; memory"),
            new("Starts", "tool alone", "ok", ["58 A", "holds"], "computed")),
    ];
}
