"""Draws a board's schematic from its sheet's table with KiCad's own symbols: schematic.py driver|burden. KiCad 6.

A unit of the table is 1.27 mm. Within a group the pins of a net are joined by lines; all else has its net's name beside it. A
part "=NAME" is that name alone. A test compares KiCad's netlist of the sheet with the board.
"""
import heapq
import re
import sys
import uuid

from netlist import HERE, plan, rows

SYMBOLS = "/usr/share/kicad/symbols"
RAILS = {"0V", "5V", "3V3"}
TITLES = {"driver": "The driver board", "burden": "Burden and clamps, on the transformer's own leads"}


def isolator():
    """The isolator as a box; KiCad's libraries have none of two channels in the wide package."""
    left = "GND1 NC VCC1 OUTA INB NC GND1 NC".split()
    right = "GND2 NC VCC2 INA OUTB NC NC GND2".split()
    pins = [(f"-12.7 {8.89 - 2.54 * k:.2f} 0", name, k + 1) for k, name in enumerate(left)]
    pins += [(f"12.7 {8.89 - 2.54 * k:.2f} 180", name, 16 - k) for k, name in enumerate(right)]
    font = "(effects (font (size 1.27 1.27)))"
    drawn = "".join(
        f'(pin passive line (at {at}) (length 2.54) (name "{name}" {font}) (number "{number}" {font}))'
        for at, name, number in pins)
    return (
        '(symbol "ISO7721" (in_bom yes) (on_board yes)'
        f'(property "Reference" "U" (id 0) (at 0 12.7 0) {font})(property "Value" "ISO7721" (id 1) (at 0 -12.7 0) {font})'
        '(symbol "ISO7721_0_1" (rectangle (start -10.16 11.43) (end 10.16 -11.43)'
        ' (stroke (width 0.254)) (fill (type background))))'
        f'(symbol "ISO7721_1_1" {drawn}))')


def symbol(name):
    """A symbol's text from KiCad's libraries."""
    library, own = name.split(":")
    if library == "board":
        return isolator()
    text = open(f"{SYMBOLS}/{library}.kicad_sym", encoding="utf-8").read()
    start = text.index(f'\n  (symbol "{own}"') + 1
    depth = 0
    for end in range(start, len(text)):
        depth += {"(": 1, ")": -1}.get(text[end], 0)
        if text[end] == ")" and depth == 0:
            return text[start:end + 1].strip()
    raise ValueError(name)


def pins_of(text, unit):
    """Pins of a unit: number to place and direction from the pin to the body, in units, y up."""
    found = {}
    for part in re.split(r'(?=\(symbol "[^"]+_\d+_\d+")', text)[1:]:
        if re.match(r'\(symbol "[^"]+_(\d+)_', part)[1] in ("0", str(unit)):
            for pin in re.finditer(r'\(pin \w+ \w+ \(at ([-0-9.]+) ([-0-9.]+) (\d+)\).*?\(number "(\d+)"', part, re.S):
                x, y, turn = (float(pin[k]) for k in (1, 2, 3))
                found[pin[4]] = (round(x / 1.27), round(y / 1.27), int(turn))
    return found


def turned(x, y, turn):
    """From a symbol's axes (y up) to the sheet's (y down)."""
    return {"0": (x, -y), "90": (-y, -x), "180": (-x, y), "270": (y, x), "x": (x, y)}[turn]


class Sheet:
    def __init__(self, name):
        self.name = name
        self.out = []
        self.solid = set()
        self.pins = {}
        self.wires = {}
        self.nets = {}

    def add(self, text):
        self.out.append(f"  {text}")

    def place(self, row, part, text):
        x, y = int(row["x"]), int(row["y"])
        mm = f"{x * 1.27:.2f} {y * 1.27:.2f}"
        kind = row["symbol"]
        mirror = " (mirror x)" if row["turn"] == "x" else ""
        turn = "0" if row["turn"] == "x" else row["turn"]
        # Where the reference stands, and the value: beside what stands upright, above and below what lies.
        upright = (turn in ("0", "180") and kind in ("Device:R", "Device:C", "Device:C_Polarized")) or (
            turn in ("90", "270") and kind in ("Device:D", "Device:D_TVS", "Device:D_Zener"))
        spots = ((2, -1), (2, 1)) if upright else ((0, -3), (0, 3))
        for beginning, high in (("Connector_Generic:Conn_01x19", 20), ("Connector", 4), ("board", 10), ("Comparator", 5)):
            if kind.startswith(beginning):
                spots = ((0, -high), (0, high))
                break
        if kind == "Diode:BAT54S":
            spots = ((3, 0 if turn == "270" else 4), (0, 0))
        if ":Q_" in kind:
            spots = ((5, -1), (5, 1))
        just = f" (justify {'right' if turn in ('90', '180') else 'left'})" if spots[0][0] else ""
        # A text turns with its symbol.
        angle = "90" if turn in ("90", "270") else "0"
        value = part["value"] or kind.split(":")[1]
        shown = "" if part["value"] else " hide"
        name_at, value_at = (f"{(x + dx) * 1.27:.2f} {(y + dy) * 1.27:.2f} {angle}" for dx, dy in spots)
        self.add(
            f'(symbol (lib_id "{kind}") (at {mm} {turn}){mirror} (unit {row["unit"]})'
            f' (in_bom yes) (on_board yes) (uuid {uuid.uuid4()})\n'
            f'    (property "Reference" "{part["part"]}" (id 0) (at {name_at})'
            f' (effects (font (size 1.27 1.27)){just}))\n'
            f'    (property "Value" "{value}" (id 1) (at {value_at})'
            f' (effects (font (size 1.27 1.27)){just}{shown}))\n'
            f'    (property "Footprint" "" (id 2) (at {mm} 0) (effects (font (size 1.27 1.27)) hide))\n  )')
        placed = {}
        for number, (px, py, direction) in pins_of(text, row["unit"]).items():
            dx, dy = turned(px, py, row["turn"])
            ux, uy = {0: (1, 0), 90: (0, 1), 180: (-1, 0), 270: (0, -1)}[direction]
            ix, iy = turned(ux, uy, row["turn"])
            placed[number] = (x + dx, y + dy, -ix, -iy)
            for k in range(1, 4):
                self.solid.add((x + dx + ix * k, y + dy + iy * k))
        xs = [p[0] for p in placed.values()]
        ys = [p[1] for p in placed.values()]
        inset = 0 if len(placed) > 2 else 1
        for i in range(min(xs) + (inset if min(xs) != max(xs) else -1), max(xs) + (0 if min(xs) != max(xs) else 2)):
            for j in range(min(ys) + (inset if min(ys) != max(ys) else -1), max(ys) + (0 if min(ys) != max(ys) else 2)):
                self.solid.add((i, j))
        return placed

    def label(self, net, x, y, dx, dy):
        angle = {(1, 0): 0, (-1, 0): 180, (0, -1): 90, (0, 1): 270}[(dx, dy)]
        self.add(
            f'(global_label "{net}" (shape passive) (at {x * 1.27:.2f} {y * 1.27:.2f} {angle}) (fields_autoplaced)'
            f' (effects (font (size 1.27 1.27)) (justify {"left" if angle in (0, 90) else "right"})) (uuid {uuid.uuid4()}))')
        for k in range(1, len(net) + 3):
            self.solid.add((x + dx * k, y + dy * k))

    def wire(self, key, pins):
        """Joins pins by lines that cross others' only straight, and touch no other pin."""
        mine, left = {pins[0]}, set(pins[1:])
        lines = []
        others = {point: net for net, points in self.wires.items() if net != key for point in points}
        while left:
            path = self.way(mine, left, others)
            assert path, f"no way for {key}"
            lines.append(path)
            mine.update(path)
            left.discard(path[-1])
        self.wires[key] = {}
        ends = {}
        for path in lines:
            bends = [b for a, b, c in zip(path, path[1:], path[2:]) if (b[0] - a[0], b[1] - a[1]) != (c[0] - b[0], c[1] - b[1])]
            corner = [path[0], *bends, path[-1]]
            for a, b in zip(corner, corner[1:]):
                self.add(
                    f'(wire (pts (xy {a[0] * 1.27:.2f} {a[1] * 1.27:.2f}) (xy {b[0] * 1.27:.2f} {b[1] * 1.27:.2f}))'
                    f' (stroke (width 0) (type default) (color 0 0 0 0)) (uuid {uuid.uuid4()}))')
            for a, b in zip(path, path[1:]):
                flat = a[1] == b[1]
                for point in (a, b):
                    self.wires[key].setdefault(point, set()).add(flat)
                    ends.setdefault(point, set()).update({a, b} - {point})
            for point in corner:
                self.wires[key][point].update({True, False})
        for (x, y), around in ends.items():
            if len(around) > 2:
                self.add(
                    f"(junction (at {x * 1.27:.2f} {y * 1.27:.2f}) (diameter 0) (color 0 0 0 0) (uuid {uuid.uuid4()}))")

    def way(self, sources, targets, others):
        heap = [(0, point, (0, 0), None) for point in sources]
        heapq.heapify(heap)
        came = {}
        while heap:
            cost, point, step, before = heapq.heappop(heap)
            if (point, step) in came:
                continue
            came[(point, step)] = before
            if point in targets:
                path = [point]
                while before:
                    path.append(before[0])
                    before = came[before]
                return path[::-1]
            for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                to = (point[0] + dx, point[1] + dy)
                if (-dx, -dy) == step or not (2 < to[0] < 320 and 2 < to[1] < 225):
                    continue
                if to not in targets and (to in self.solid or to in self.pins):
                    continue
                # Over another's line only straight on.
                if point in others and step != (dx, dy):
                    continue
                if to in others and self.wires[others[to]][to] != {dx == 0}:
                    continue
                price = 1 + (5 if step not in ((0, 0), (dx, dy)) else 0) + (6 if to in others else 0)
                heapq.heappush(heap, (cost + price, to, (dx, dy), (point, step)))
        return None


def draw(name):
    sheet = Sheet(name)
    parts = {part["part"]: part for part in plan(name)}
    table = rows(HERE / f"{name}-sheet.csv")
    texts = {row["symbol"]: symbol(row["symbol"]) for row in table if row["symbol"]}
    joined, named = {}, []
    for row in table:
        x, y = int(row["x"]), int(row["y"])
        if row["part"].startswith("="):
            net = row["part"][1:]
            dx, dy = {"0": (1, 0), "180": (-1, 0)}[row["turn"]]
            joined.setdefault((row["group"], net), []).append((x, y))
            sheet.pins[(x, y)] = net
            sheet.label(net, x, y, dx, dy)
            continue
        part = parts[row["part"]]
        for number, (px, py, dx, dy) in sheet.place(row, part, texts[row["symbol"]]).items():
            net = part["nets"].get(number)
            sheet.pins[(px, py)] = net
            if not net:
                sheet.add(f"(no_connect (at {px * 1.27:.2f} {py * 1.27:.2f}) (uuid {uuid.uuid4()}))")
            elif row["group"] and net not in RAILS:
                joined.setdefault((row["group"], net), []).append((px, py))
            else:
                named.append((net, px, py, dx, dy))
    for label in named:
        sheet.label(*label)
    for key, pins in sorted(joined.items(), key=lambda item: -len(item[1])):
        assert len(pins) > 1, key
        sheet.wire(key, pins)
    library = "\n".join("    " + re.sub(r'^\(symbol "', f'(symbol "{kind.split(":")[0]}:', text) for kind, text in texts.items())
    body = "\n".join(sheet.out)
    paper = "A3" if name == "driver" else "A4"
    (HERE / f"{name}.kicad_sch").write_text(
        f'(kicad_sch (version 20211123) (generator eeschema)\n  (uuid {uuid.uuid4()})\n  (paper "{paper}")\n'
        f'  (title_block (title "{TITLES[name]}") (comment 1 "UNTRIED: nobody has built it"))\n'
        f"  (lib_symbols\n{library}\n  )\n{body}\n"
        '  (sheet_instances (path "/" (page "1")))\n  (symbol_instances\n'
        + "".join(
            f'    (path "/{number}" (reference "{reference}") (unit {unit}) (value "{value}") (footprint ""))\n'
            for number, unit, reference, value in re.findall(
                r'\(unit (\d+)\).*?\(uuid ([^)]+)\)\n.*?"Reference" "([^"]+)".*?"Value" "([^"]+)"', body, re.S)
            for number, unit in [(unit, number)])
        + "  )\n)\n", encoding="utf-8")


draw(sys.argv[1])
