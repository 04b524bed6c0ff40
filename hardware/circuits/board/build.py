"""Makes the boards of a floor plan: places the parts, lays the tracks, fills the ground. /usr/bin/python3, KiCad 6.

build.py driver|burden writes NAME.kicad_pcb and NAME.kicad_pro beside this file. Look at a new board before it is committed.
"""
import json
import math
import sys

import pcbnew
from netlist import HERE, plan
from route import PITCH, Router, VIA, width

LIBRARY = "/usr/share/kicad/footprints"
BOARDS = {
    # Size and holes: hardware/enclosure/parameters.scad.
    "driver": dict(
        size=(70, 100), holes=[(x, y) for x in (3.5, 66.5) for y in (3.5, 96.5)], ground="0V",
        antenna=(35.5, 32.5, 53.5, 39.5), console=(54.2, 8.4, 66.2, 21.8), back=(52.2, 91),
        texts=[(19, 4, "UNTRIED  driver board", 1.5), (56, 27, "console: 8 mm", 1), (44.5, 47, "ESP32 board", 1),
               (44.5, 49, "antenna this way ^", 1), (4.5, 8, "T1 1,2", 0.8), (4.5, 23.2, "T2 1,2", 0.8),
               (4.5, 63.8, "K+ K-", 0.8), (4.5, 75.9, "5V 0 0", 0.8), (65.5, 66.6, "H1 0V", 0.8),
               (65.5, 92.6, "S1 0V", 0.8), (64, 25, "V TX RX G", 0.8), (35, 9.2, "B1 5V", 0.8)]),
    "burden": dict(
        size=(32, 16), holes=[], ground=None, antenna=None, console=None, back=(16, 9.2),
        texts=[(16, 14.4, "UNTRIED burden", 1), (3.2, 14.4, "T leads", 0.8), (28.5, 14.4, "to P3, P4", 0.8)]),
}
# What a maker of boards takes for common (common practice, no source), mm; KiCad keeps it beside the board.
RULES = {
    "min_clearance": 0.2, "min_copper_edge_clearance": 0.3, "min_hole_clearance": 0.25, "min_hole_to_hole": 0.3,
    "min_through_hole_diameter": 0.3, "min_track_width": 0.3, "min_via_annular_width": 0.15, "min_via_diameter": 0.6,
}
CLASS = {"clearance": 0.2, "track_width": 0.4, "via_diameter": VIA, "via_drill": 0.4}
MM = pcbnew.FromMM


def at(x, y):
    return pcbnew.wxPoint(MM(x), MM(y))


def place(board, part, nets):
    library, name = part["footprint"].split(":")
    footprint = pcbnew.FootprintLoad(f"{LIBRARY}/{library}.pretty", name)
    footprint.SetReference(part["part"])
    footprint.SetValue(part["value"] or part["part"])
    footprint.SetFPID(pcbnew.LIB_ID(library, name))
    footprint.SetPosition(at(float(part["x"]), float(part["y"])))
    footprint.SetOrientationDegrees(float(part["turn"]))
    board.Add(footprint)
    for pad in footprint.Pads():
        # 8.1 mm between the rows of the isolator, where the library's land pattern has 7.3.
        if part["part"] == "U1":
            side = -1 if int(pad.GetNumber()) <= 8 else 1
            pad.SetSize(pcbnew.wxSize(MM(1.65), MM(0.6)))
            pad.SetPos0(pcbnew.wxPoint(MM(side * 4.875), pad.GetPos0().y))
            pad.SetDrawCoord()
        if pad.GetNumber() in part["nets"]:
            pad.SetNet(nets[part["nets"][pad.GetNumber()]])


def name_parts(board):
    """References in the bodies, or beside them where pads or other parts are in the way."""
    taken = [pad.GetBoundingBox() for pad in board.GetPads()]
    for footprint in board.GetFootprints():
        reference = footprint.Reference()
        reference.SetVisible(not footprint.GetReference().startswith("H"))
        reference.SetTextSize(pcbnew.wxSize(MM(0.8), MM(0.8)))
        reference.SetTextThickness(MM(0.13))
        reference.SetTextAngle(0)
        reference.SetKeepUpright(True)
        body = footprint.GetBoundingBox(False, False)
        others = taken + [one.GetBoundingBox(False, False) for one in board.GetFootprints() if one != footprint]
        middle = body.Centre()
        places = ((x * 0.3, y * 0.3) for x in range(-25, 26) for y in range(-25, 26))
        for dx, dy in sorted(places, key=lambda place: math.hypot(*place)):
            reference.SetPosition(pcbnew.wxPoint(middle.x + MM(dx), middle.y + MM(dy)))
            box = reference.GetBoundingBox()
            box.Inflate(MM(0.1))
            within = body.Contains(box) and not str(footprint.GetFPID().GetLibItemName()).startswith(("CP_", "TO-220"))
            if not any(box.Intersects(pad) for pad in (taken if within else others)):
                break
        taken.append(reference.GetBoundingBox())


def line(board, points, layer):
    for a, b in zip(points, points[1:]):
        shape = pcbnew.PCB_SHAPE(board)
        shape.SetShape(pcbnew.SHAPE_T_SEGMENT)
        shape.SetStart(at(*a))
        shape.SetEnd(at(*b))
        shape.SetLayer(layer)
        shape.SetWidth(MM(0.15))
        board.Add(shape)


def text(board, x, y, words, size, layer=pcbnew.F_SilkS):
    item = pcbnew.PCB_TEXT(board)
    item.SetText(words)
    item.SetPosition(at(x, y))
    item.SetTextSize(pcbnew.wxSize(MM(size), MM(size)))
    item.SetTextThickness(MM(0.15))
    item.SetLayer(layer)
    item.SetMirrored(layer == pcbnew.B_SilkS)
    board.Add(item)


def rectangle(x0, y0, x1, y1):
    return [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]


def zone(board, corners, net=None, priority=0):
    """Ground on both faces, or without a net a place where no copper may be."""
    area = pcbnew.ZONE(board)
    layers = pcbnew.LSET()
    layers.AddLayer(pcbnew.F_Cu)
    layers.AddLayer(pcbnew.B_Cu)
    area.SetLayerSet(layers)
    outline = area.Outline()
    outline.NewOutline()
    for x, y in corners:
        outline.Append(MM(x), MM(y))
    if net is None:
        area.SetIsRuleArea(True)
        area.SetDoNotAllowCopperPour(True)
        area.SetDoNotAllowTracks(True)
        area.SetDoNotAllowVias(True)
        area.SetDoNotAllowPads(False)
        area.SetDoNotAllowFootprints(False)
    else:
        area.SetNet(net)
        area.SetLocalClearance(MM(0.3))
        area.SetMinThickness(MM(0.25))
        area.SetThermalReliefGap(MM(0.3))
        area.SetThermalReliefSpokeWidth(MM(0.5))
        area.SetIslandRemovalMode(pcbnew.ISLAND_REMOVAL_MODE_ALWAYS)
    board.Add(area)


def is_console(net):
    return net.startswith("J3.")


def may_be_copper(kind):
    """Away from the edge, the screws' heads, the antenna, and 8 mm from the console's side."""
    def free(net, x, y, _layer):
        half = width(net) / 2
        if min(x, y, kind["size"][0] - x, kind["size"][1] - y) < 0.5 + half:
            return False
        if any(math.hypot(x - hx, y - hy) < 3.3 + half for hx, hy in kind["holes"]):
            return False
        if kind["antenna"] and inside(kind["antenna"], x, y, half + 0.05):
            return False
        if kind["console"]:
            if is_console(net):
                return inside(kind["console"], x, y, -half)
            return not inside(kind["console"], x, y, 8.05 + half)
        return True
    return free


def inside(box, x, y, margin):
    return box[0] - margin < x < box[2] + margin and box[1] - margin < y < box[3] + margin


def pads_of(board):
    found = []
    for pad in board.GetPads():
        box = pad.GetBoundingBox()
        layers = [k for k, layer in enumerate((pcbnew.F_Cu, pcbnew.B_Cu)) if pad.IsOnLayer(layer)]
        centre = pad.GetPosition()
        found.append((
            pad.GetNetname(), pcbnew.ToMM(centre.x), pcbnew.ToMM(centre.y),
            pcbnew.ToMM(box.GetWidth()) / 2, pcbnew.ToMM(box.GetHeight()) / 2,
            pad.GetShape() == pcbnew.PAD_SHAPE_CIRCLE, layers))
    return found


def draw_tracks(board, router, nets):
    def track(net, a, b, layer):
        item = pcbnew.PCB_TRACK(board)
        item.SetStart(at(*a))
        item.SetEnd(at(*b))
        item.SetWidth(MM(width(net)))
        item.SetLayer((pcbnew.F_Cu, pcbnew.B_Cu)[layer])
        item.SetNet(nets[net])
        board.Add(item)

    def point(node):
        layer, i, j = router.place(node)
        return layer, (i * PITCH, j * PITCH)

    reached = {}
    for net, paths in router.paths.items():
        vias = set()
        for path in paths:
            start = 0
            for k in range(1, len(path)):
                (la, a), (lb, b) = point(path[k - 1]), point(path[k])
                if la != lb and a not in vias:
                    vias.add(a)
                    via = pcbnew.PCB_VIA(board)
                    via.SetPosition(at(*a))
                    via.SetDrill(MM(0.4))
                    via.SetWidth(MM(VIA))
                    via.SetNet(nets[net])
                    board.Add(via)
                # A straight run is one track.
                ends = k == len(path) - 1 or path[k + 1] - path[k] != path[k] - path[k - 1]
                if ends:
                    if la == lb:
                        track(net, point(path[start])[1], b, la)
                    start = k
            for node in (path[0], path[-1]):
                reached.setdefault(net, set()).add(node)
    for pad in router.pads:
        nodes = set(router.access(pad)) & reached[pad[0]] if pad[0] in reached else set()
        for node in nodes:
            layer, place_ = point(node)
            if math.hypot(place_[0] - pad[1], place_[1] - pad[2]) > 0.01:
                track(pad[0], place_, (pad[1], pad[2]), layer)


def write_rules(path):
    settings = json.loads(path.read_text(encoding="utf-8"))
    settings["board"]["design_settings"]["rules"].update(RULES)
    settings["net_settings"]["classes"][0].update(CLASS)
    path.write_text(json.dumps(settings, indent=2) + "\n", encoding="utf-8")


def build(name):
    kind = BOARDS[name]
    path = str(HERE / f"{name}.kicad_pcb")
    board = pcbnew.NewBoard(path)
    parts = plan(name)
    nets = {}
    for net in sorted({net for part in parts for net in part["nets"].values()}):
        nets[net] = pcbnew.NETINFO_ITEM(board, net)
        board.Add(nets[net])
    for part in parts:
        place(board, part, nets)
    for k, (x, y) in enumerate(kind["holes"], 1):
        hole = dict(part=f"H{k}", footprint="MountingHole:MountingHole_3.2mm_M3", x=x, y=y, turn=0, nets={}, value="")
        place(board, hole, nets)
    name_parts(board)
    corners = rectangle(0, 0, *kind["size"])
    line(board, corners + corners[:1], pcbnew.Edge_Cuts)
    for words in kind["texts"]:
        text(board, *words)
    text(board, *kind["back"], "UNTRIED", 1.2, pcbnew.B_SilkS)

    router = Router(kind["size"], pads_of(board), may_be_copper(kind), kind["ground"])
    left = router.route(25)
    draw_tracks(board, router, nets)
    if kind["antenna"]:
        zone(board, rectangle(*kind["antenna"]))
    if kind["console"]:
        x0, y0, _, y1 = kind["console"]
        line(board, [(x0 - 4.05, 0.5), (x0 - 4.05, 8)], pcbnew.F_SilkS)
        line(board, [(x0 - 4.05, 20), (x0 - 4.05, y1 + 4), (69.5, y1 + 4)], pcbnew.F_SilkS)
        width_, height = kind["size"]
        zone(board, [(0.5, 0.5), (x0 - 8.1, 0.5), (x0 - 8.1, y1 + 8.1), (width_ - 0.5, y1 + 8.1),
                     (width_ - 0.5, height - 0.5), (0.5, height - 0.5)], nets[kind["ground"]])
    # Saved without the ground's fill, which is 33,000 lines: KiCad's B key makes it, and so do check.py and make-files.
    pcbnew.SaveBoard(path, board)
    write_rules(HERE / f"{name}.kicad_pro")
    if left:
        sys.exit(f"{name}: these nets want the same place: {' '.join(left)}")


build(sys.argv[1])
