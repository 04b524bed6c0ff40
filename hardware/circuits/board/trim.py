"""Trims what KiCad's schematic editor wrote beside a sheet: trim.py driver|burden.

First, in the editor: File, Plot, SVG; and File, Export, Netlist. Of the netlist only the nets are kept, one a line; of the
drawing all but dates, texts that nobody sees, and decimals.
"""
import re
import sys

from netlist import HERE

name = sys.argv[1]
drawing = HERE / f"{name}.svg"
text = drawing.read_text(encoding="utf-8")
text = re.sub("<text.*?</text>|<title>.*?</title>|<desc>.*?</desc>|<!DOCTYPE.*?>|<g [^>]*>\\s*</g>", "", text, flags=re.S)
text = re.sub(r"\s*\n\s*", " ", re.sub(r"\.\d{6}(?!cm)", "", text))
text = re.sub(r'((?:<path d="[^"]*" /> ?)+)', lambda run: '<path d="' + " ".join(re.findall('"([^"]*)"', run[0])) + '"/>', text)
text = text.replace("> <", ">\n<").replace("?> ", "?>\n")
wide, high = re.search(r'viewBox="0 0 (\d+) (\d+)"', text).groups()
head = text.index(">", text.index("<svg")) + 1
drawing.write_text(f'{text[:head]}\n<rect width="{wide}" height="{high}" fill="#ffffff"/>{text[head:]}\n', encoding="utf-8")

netlist = HERE / f"{name}.net"
text = netlist.read_text(encoding="utf-8")
text = text[text.index("(nets"):].rstrip()[:-1]
text = re.sub(r'\s*\((pintype|pinfunction|code) "[^"]*"\)', "", re.sub(r"\s+", " ", text))
netlist.write_text(text.replace(" (net (name", "\n(net (name").replace(" )", ")").strip() + "\n", encoding="utf-8")
