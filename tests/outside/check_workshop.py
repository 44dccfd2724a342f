#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""The workshop's sheets measured by other people's programs: check_workshop.py PLATEWRIGHT SHEET

A tile of A4 and of letter paper drawn by poppler is right within 0.2 mm over 200 mm both ways; the pieces open as DXF
without a fault (ezdxf), and their areas by another geometry library (shapely, on GEOS) are those that the materials are
counted from; pieces laid out on cloth keep clear of one another (shapely).
"""
import itertools
import json
import math
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf.recover
from shapely.geometry import Polygon

DPI = 600
problems = 0


# Pieces of lace, linen and leather.
OTHER_STUFF = ("mark", "lining", "pocket bag", "fob bag", "button facing", "buttonhole facing", "canvas", "foot strap",
               "garter")


def expect(holds, what):
    """Tells what does not hold."""
    global problems
    if not holds:
        print(what, file=sys.stderr)
        problems += 1


class Picture:
    """A page as poppler draws it, asked in mm from its upper left corner."""

    def __init__(self, path):
        _, size, _, self.dots = Path(path).read_bytes().split(b"\n", 3)
        self.width, self.height = (int(number) for number in size.split())

    def is_dark(self, level, at, band_from, band_to):
        """Whether the row (or, not `level`, the column) of dots is dark across the band."""
        if level:
            dots = self.dots[at * self.width + band_from:at * self.width + band_to]
        else:
            dots = self.dots[band_from * self.width + at:band_to * self.width + at:self.width]
        return max(dots) < 128

    def line(self, level, near, band_from, band_to):
        """Where, within 3 mm of `near`, a line runs right across the band from `band_from` to `band_to`, in mm."""
        dot = 25.4 / DPI
        band = round(band_from / dot), round(band_to / dot)
        found = [at for at in range(round((near - 3) / dot), round((near + 3) / dot)) if self.is_dark(level, at, *band)]
        return (found[0] + found[-1] + 1) / 2 * dot if found else float("nan")


def page_with_square(pdf, pages):
    """The number of the tile that carries the square."""
    for page in range(1, pages + 1):
        text = subprocess.run(["pdftotext", "-f", str(page), "-l", str(page), pdf, "-"], check=True, capture_output=True,
                              text=True).stdout
        if "Measure both sides of the square" in text:
            return page
    return 0


def check_length(paper, what, measured, true):
    """A tenth of a per cent: 0.2 mm over 200 mm."""
    expect(abs(measured - true) <= true / 1000, f"on {paper}, {what} of {true:.1f} mm measures {measured:.2f} mm")


def check_tile(program, sheet, folder, paper, width, height):
    """The square of 100 mm, and the crosses at which tiles are laid on one another, both ways."""
    pdf = f"{folder}/sheet.pdf"
    subprocess.run([program, "draw", sheet, "-o", pdf, "--paper", paper], check=True, capture_output=True)
    info = subprocess.run(["pdfinfo", pdf], check=True, capture_output=True, text=True).stdout
    pages = int(next(line.split()[1] for line in info.splitlines() if line.startswith("Pages:")))
    page = page_with_square(pdf, pages)
    expect(page > 0, f"on {paper} no tile carries the square to check the printer by")
    if page == 0:
        return
    subprocess.run(["pdftoppm", "-r", str(DPI), "-f", str(page), "-l", str(page), "-gray", "-singlefile", pdf,
                    f"{folder}/tile"], check=True)
    tile = Picture(f"{folder}/tile.pgm")
    # The square begins 18 mm from the left and upper edges of the paper; the crosses' arms are 8 mm long.
    for level, way in ((True, "height"), (False, "width")):
        first, second = (tile.line(level, near, 70, 90) for near in (18, 118))
        check_length(paper, f"the {way} of the square", second - first, 100)
    for level, way, size, foot in ((True, "height", height, 6), (False, "width", width, 0)):
        near = 15, size - 15 - foot
        first, second = (tile.line(level, at, 11.5, 14) for at in near)
        check_length(paper, f"the {way} of the tile from cross to cross", second - first, near[1] - near[0])


def check_dxf(program, sheet, folder):
    """No fault, millimetres, and the same areas as in the list of materials."""
    dxf = f"{folder}/pieces.dxf"
    subprocess.run([program, "pieces", sheet, "-o", dxf], check=True, capture_output=True)
    drawing, audit = ezdxf.recover.readfile(dxf)
    expect(drawing.dxfversion == "AC1009", f"the drawing is of release {drawing.dxfversion}")
    expect(not audit.errors and not audit.fixes, "the drawing has faults")
    layers = {layer.dxf.name for layer in drawing.layers}
    kinds = {"CUT", "FOLD", "POCKET", "BUTTONHOLE", "BUTTON", "NOTCH", "GRAIN", "LETTERS", "WORDS"}
    expect(kinds <= layers, f"the layers are {sorted(layers)}")
    texts = [(words.dxf.align_point, words.dxf.text) for words in drawing.modelspace().query("TEXT[layer=='WORDS']")]
    squares = [line for line in drawing.modelspace().query("POLYLINE[layer=='WORDS']") if line.is_closed]
    sides = {round(math.dist(a, b), 3) for square in squares for a, b in itertools.pairwise(square.points())}
    expect(sides == {100}, f"the square to check the cutter by has sides of {sorted(sides)}")
    cloth = 0
    for line in drawing.modelspace().query("POLYLINE"):
        if not line.is_closed or line.dxf.layer != "CUT":
            continue
        corners = [(p[0], p[1]) for p in line.points()]
        steps = [math.dist(a, b) for a, b in itertools.pairwise(corners + corners[:1])]
        expect(min(steps) > 0.009, f"an outline has a step of {min(steps):.4f} mm")
        shape = Polygon(corners)
        expect(shape.is_valid, "an outline crosses itself")
        left, low, right, high = shape.bounds
        words = [text for at, text in texts if left <= at[0] <= right and low <= at[1] <= high]
        expect(len(words) > 1, "a piece says nothing of itself")
        number = int(words[1].split()[1].rstrip(","))
        fold = 2 if "fold" in words[1] else 1
        if not any(other in words[0] for other in OTHER_STUFF):
            cloth += shape.area * number * fold / 1e6
    listed = json.loads(subprocess.run([program, "materials", sheet, "--format", "json"], check=True, capture_output=True,
                                       text=True).stdout)
    counted = sum(line["finished_m2"] for line in listed if line["garment"] == "man" and line["material"] == "cloth")
    expect(abs(cloth - counted) < 0.005, f"the pieces are {cloth:.4f} m2, the materials count {counted:.4f} m2")


def check_laying(program, sheet):
    """No piece lies on another or beyond the cloth, and as many lie there as are cut."""
    listed = json.loads(subprocess.run([program, "materials", sheet, "--format", "json"], check=True, capture_output=True,
                                       text=True).stdout)
    laid = [line for line in listed if "laid" in line]
    expect(len(laid) > 2, "no cloth tells how its pieces lie")
    for line in laid:
        name = f"{line['garment']}, {line['material']} {line['what']}"
        lay = line["laid"]
        shapes = [Polygon(piece["outline_mm"]) for piece in lay["pieces"]]
        expect(len(shapes) == int(line["sum"].split()[0]), f"{name}: {len(shapes)} pieces lie on the cloth; {line['sum']}")
        for i, shape in enumerate(shapes):
            left, top, right, bottom = shape.bounds
            expect(left >= -0.1 and top >= -0.1 and right <= lay["width_mm"] + 0.1 and bottom <= lay["length_mm"] + 0.1,
                   f"{name}: {lay['pieces'][i]['piece']} lies beyond the cloth")
            near = min((shape.distance(other) for other in shapes[:i]), default=10)
            expect(near >= 9.5, f"{name}: {lay['pieces'][i]['piece']} lies {near:.1f} mm from the next")
        covered = sum(shape.area for shape in shapes) / 1e6
        # The sheet has no seam allowance: what lies there is what is finished.
        expect(abs(covered - line["finished_m2"]) < 0.005 or "marks" in line["sum"],
               f"{name}: {covered:.4f} m2 lie on the cloth, {line['finished_m2']:.4f} m2 are finished")
        share = round(covered / (lay["width_mm"] * lay["length_mm"]) * 1e8)
        expect(f"{share} %" in line["sum"], f"{name}: {share} % of the cloth is covered; {line['sum']}")


def main():
    """One sheet, without seam allowance, so that the largest outline of a piece is the finished one."""
    program, sheet = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as folder:
        check_tile(program, sheet, folder, "A4", 210, 297)
        check_tile(program, sheet, folder, "letter", 215.9, 279.4)
        check_dxf(program, sheet, folder)
        check_laying(program, sheet)
    print(f"workshop: {problems} problems")
    return 1 if problems else 0


sys.exit(main())
