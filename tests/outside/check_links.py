#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Links between numbers, key and footnotes in the eyes of qpdf, poppler and an XML reader: check_links.py LEAST PDF SVG...

Every link that leads to a name leads to a place poppler finds under that name, and no place is without a link; in the SVG every
`<a>` leads to one id. There are at least LEAST such links in the PDF.
"""
import re
import subprocess
import sys
import xml.etree.ElementTree as tree
from collections import Counter


def fail(message):
    sys.exit(message)


def output_of(*command):
    # qpdf warns by its exit code; what it wrote counts.
    return subprocess.run(command, capture_output=True, check=False).stdout.decode("latin-1")


def check_pdf(path, least):
    plain = output_of("qpdf", "--qdf", "--object-streams=disable", path, "-")
    wanted = []
    for found in re.finditer(r"<<[^<>]*/Subtype /Link[^<>]*>>", plain):
        words = found.group(0)
        left, bottom, right, top = (float(n) for n in re.search(r"/Rect \[([^]]*)\]", words).group(1).split())
        if not (left < right and bottom < top):
            fail(f"{path}: a link of no size: {words}")
        name = re.search(r"/Dest \(([^)]*)\)", words)
        wanted += [name.group(1)] if name else []
    places = re.findall(r'"([^"]+)"$', output_of("pdfinfo", "-dests", path), re.MULTILINE)
    if len(wanted) < least:
        fail(f"{path}: {len(wanted)} links lead to a name, not {least}")
    if set(wanted) != set(places):
        fail(f"{path}: links lead to {sorted(wanted)}, places are {sorted(places)}")
    if len(places) != len(set(places)):
        fail(f"{path}: a name stands for two places")


def check_svg(path):
    svg = "{http://www.w3.org/2000/svg}"
    root = tree.parse(path).getroot()
    ids = Counter(element.get("id") for element in root.iter() if element.get("id"))
    twice = [name for name, count in ids.items() if count > 1]
    if twice:
        fail(f"{path}: ids that stand twice: {twice}")
    links = [element.get("href") for element in root.iter(svg + "a")]
    dead = [link for link in links if link is None or link[:1] != "#" or ids[link[1:]] != 1]
    if dead:
        fail(f"{path}: links to no id: {dead}")
    for element in root.iter(svg + "a"):
        if any(inner is not element for inner in element.iter(svg + "a")):
            fail(f"{path}: a link within a link")
    return len(links)


check_pdf(sys.argv[2], int(sys.argv[1]))
links = sum(check_svg(path) for path in sys.argv[3:])
if links < int(sys.argv[1]):
    fail(f"{sys.argv[3:]}: {links} links, not {sys.argv[1]}")
