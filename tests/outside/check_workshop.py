#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""The workshop's sheets measured by other people's programs: check_workshop.py PLATEWRIGHT SHEET

A tile drawn by poppler is right within 0.2 mm over 200 mm; the pieces open as DXF without a fault (ezdxf), and their areas
by another geometry library (shapely, on GEOS) are those that the materials are counted from.
"""
import json
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf.recover
from shapely.geometry import Polygon

DPI = 600
problems = 0


def expect(holds, what):
    """Tells what does not hold."""
    global problems
    if not holds:
        print(what, file=sys.stderr)
        problems += 1


def dark_rows(picture, width, column_from, column_to):
    """The rows of a grey picture that are dark across all of these columns."""
    rows = []
    for row in range(len(picture) // width):
        line = picture[row * width + column_from:row * width + column_to]
        if max(line) < 128:
            rows.append(row)
    return rows


def runs(rows):
    """The middle of each run of neighbouring rows."""
    found = []
    for row in rows:
        if found and row == found[-1][1] + 1:
            found[-1][1] = row
        else:
            found.append([row, row])
    return [(a + b) / 2 for a, b in found]


def page_with_square(pdf, pages):
    """The number of the tile that carries the square."""
    for page in range(1, pages + 1):
        text = subprocess.run(["pdftotext", "-f", str(page), "-l", str(page), pdf, "-"], check=True, capture_output=True,
                              text=True).stdout
        if "Measure both sides of the square" in text:
            return page
    return 0


def check_tile(program, sheet, folder):
    """Square of 100 mm, and the 200 mm from twice its side, on paper as poppler draws it."""
    pdf = f"{folder}/sheet.pdf"
    subprocess.run([program, "draw", sheet, "-o", pdf], check=True, capture_output=True)
    info = subprocess.run(["pdfinfo", pdf], check=True, capture_output=True, text=True).stdout
    pages = int(next(line.split()[1] for line in info.splitlines() if line.startswith("Pages:")))
    page = page_with_square(pdf, pages)
    expect(page > 0, "no tile carries the square to check the printer by")
    if page == 0:
        return
    subprocess.run(["pdftoppm", "-r", str(DPI), "-f", str(page), "-l", str(page), "-gray", "-singlefile", pdf,
                    f"{folder}/tile"], check=True)
    data = Path(f"{folder}/tile.pgm").read_bytes()
    _, size, _, picture = data.split(b"\n", 3)
    width = int(size.split()[0])
    mm = DPI / 25.4
    # The square begins 11 mm from the left edge of the paper; its lines above and below are dark from 30 to 50 mm.
    lines = runs(dark_rows(picture, width, round(30 * mm), round(50 * mm)))
    gaps = [(b - a) / mm for a in lines for b in lines if b > a]
    nearest = min(gaps, key=lambda gap: abs(gap - 100), default=0)
    expect(abs(nearest - 100) <= 0.1, f"the square of 100 mm measures {nearest:.2f} mm on the tile")


def check_dxf(program, sheet, folder):
    """No fault, millimetres, and the same areas as in the list of materials."""
    dxf = f"{folder}/pieces.dxf"
    subprocess.run([program, "pieces", sheet, "-o", dxf], check=True, capture_output=True)
    drawing, audit = ezdxf.recover.readfile(dxf)
    expect(drawing.dxfversion == "AC1009", f"the drawing is of release {drawing.dxfversion}")
    expect(not audit.errors and not audit.fixes, "the drawing has faults")
    layers = {layer.dxf.name for layer in drawing.layers}
    expect({"CUT", "MARK", "WORDS"} <= layers, f"the layers are {sorted(layers)}")
    texts = [(words.dxf.align_point, words.dxf.text) for words in drawing.modelspace().query("TEXT")]
    cloth = 0
    for line in drawing.modelspace().query("POLYLINE"):
        if not line.is_closed or line.dxf.layer != "CUT":
            continue
        shape = Polygon([(p[0], p[1]) for p in line.points()])
        expect(shape.is_valid, "an outline crosses itself")
        left, low, right, high = shape.bounds
        words = [text for at, text in texts if left <= at[0] <= right and low <= at[1] <= high]
        expect(len(words) > 1, "a piece says nothing of itself")
        number = int(words[1].split()[1].rstrip(","))
        fold = 2 if "fold" in words[1] else 1
        if "mark" not in words[0]:
            cloth += shape.area * number * fold / 1e6
    listed = json.loads(subprocess.run([program, "materials", sheet, "--format", "json"], check=True, capture_output=True,
                                       text=True).stdout)
    counted = sum(line["finished_m2"] for line in listed if line["garment"] == "man" and line["material"] == "cloth")
    expect(abs(cloth - counted) < 0.005, f"the pieces are {cloth:.4f} m2, the materials count {counted:.4f} m2")


def main():
    """One sheet, without seam allowance, so that the largest outline of a piece is the finished one."""
    program, sheet = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as folder:
        check_tile(program, sheet, folder)
        check_dxf(program, sheet, folder)
    print(f"workshop: {problems} problems")
    return 1 if problems else 0


sys.exit(main())
