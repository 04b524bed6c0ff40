"""KiCad's own design rules over a board, its ground filled: check.py FILE prints the report. /usr/bin/python3, KiCad 6."""
import sys
import tempfile

import pcbnew


def filled(path):
    """A board with its ground filled."""
    board = pcbnew.LoadBoard(path)
    pcbnew.ZONE_FILLER(board).Fill(board.Zones())
    return board


def report(board):
    """KiCad's report; without a sentence of it a board was not checked."""
    with tempfile.NamedTemporaryFile("r", suffix=".txt") as file:
        pcbnew.WriteDRCReport(board, file.name, pcbnew.EDA_UNITS_MILLIMETRES, True)
        return file.read()


if __name__ == "__main__":
    print(report(filled(sys.argv[1])))
