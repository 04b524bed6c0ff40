"""What joins what on a board: parts.csv of the circuits, by the nets' names of nets.csv and the pads of a floor plan."""
import csv
from pathlib import Path

HERE = Path(__file__).parent
# The footprints that a floor plan names in short.
SHORT = {
    "@R": "Resistor_THT:R_Axial_DIN0207_L6.3mm_D2.5mm_P7.62mm_Horizontal",
    "@C": "Capacitor_THT:C_Disc_D5.0mm_W2.5mm_P5.00mm",
    "@film": "Capacitor_THT:C_Rect_L7.2mm_W5.5mm_P5.00mm_FKS2_FKP2_MKS2_MKP2",
    "@DO-35": "Diode_THT:D_DO-35_SOD27_P7.62mm_Horizontal",
    "@DO-15": "Diode_THT:D_DO-15_P10.16mm_Horizontal",
    "@SOT-23": "Package_TO_SOT_SMD:SOT-23",
    "@TO-92": "Package_TO_SOT_THT:TO-92_Inline_Wide",
    "@U1": "Package_SO:SOIC-16W_7.5x10.3mm_P1.27mm",
    "@2": "TerminalBlock_Phoenix:TerminalBlock_Phoenix_PT-1,5-2-3.5-H_1x02_P3.50mm_Horizontal",
    "@3": "TerminalBlock_Phoenix:TerminalBlock_Phoenix_PT-1,5-3-3.5-H_1x03_P3.50mm_Horizontal",
    "@4": "TerminalBlock_Phoenix:TerminalBlock_Phoenix_PT-1,5-4-3.5-H_1x04_P3.50mm_Horizontal",
}


def rows(path):
    """The rows of a table, each with its columns by name."""
    with open(path, encoding="utf-8") as file:
        return list(csv.DictReader(file))


def net_of(circuit, node, copy, names):
    """The net's name on the board; copy 1 is the second sensor's, whose parts are numbered ten higher."""
    name = names.get((circuit, node)) or names.get(("", node))
    if name:
        return (name.split(" ") * 2)[copy]
    return f"{circuit}{copy + 1 if copy else ''}.{node}" if circuit else node


def elements():
    """Each line of the list by its reference: the nets that it lies between, and its value."""
    names = {(row["circuit"], row["node"]): row["net"] for row in rows(HERE / "nets.csv")}
    found = {}
    for row in rows(HERE.parent / "parts.csv"):
        for copy, reference in enumerate(row["reference"].split(" and ")):
            nets = [net_of(row["circuit"], node, copy, names) for node in row["between"].split(" ")]
            found[reference] = (nets, row["value"])
    return found


def plan(name):
    """A floor plan's parts: each row with 'nets', the net of each pad, and 'value'."""
    listed = elements()
    parts = rows(HERE / f"{name}.csv")
    for part in parts:
        part["nets"] = {}
        part["value"] = ""
        part["footprint"] = SHORT.get(part["footprint"], part["footprint"])
        for element in part["pads"].split(";"):
            reference, pads = element.split("=")
            nets, part["value"] = listed[reference]
            assert len(nets) == len(pads.split(" ")), reference
            part["nets"].update(zip(pads.split(" "), nets))
    return parts
