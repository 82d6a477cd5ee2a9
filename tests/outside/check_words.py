"""Looks at where every word of finished reports stands: inside the margins, and none over another.

Usage: check_words.py FILE.pdf ...

Reads the boxes of words that `pdftotext -bbox` (poppler) gives. Sides are 22 mm wide; a word may stand
out by two points, as a comma at the end of a line does. Two words are called overlapping if the middle halves of their boxes cover more than
a quarter of the smaller one. A number drawn twice on a photograph, for its white outline, is one word.
Exits 1 if any word is out of place.
"""

import re
import subprocess
import sys
from html import unescape

SIDE = 22 / 25.4 * 72
PAGE = re.compile(r'<page width="([\d.]+)" height="([\d.]+)">(.*?)</page>', re.S)
WORD = re.compile(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>', re.S)


def pages(path):
    """Yields width, height and words of each page; a word is a box and its text."""
    out = subprocess.run(["pdftotext", "-bbox", path, "-"], check=True, capture_output=True)
    for width, height, body in PAGE.findall(out.stdout.decode("utf-8")):
        words = [(tuple(map(float, word[:4])), unescape(word[4])) for word in WORD.findall(body)]
        yield float(width), float(height), words


def middle(box):
    """The middle half of the height, and all of the width but a point."""
    left, top, right, bottom = box
    quarter = (bottom - top) / 4
    return left + 0.5, top + quarter, right - 0.5, bottom - quarter


def covered(one, other):
    """The share of the smaller of two boxes that the other covers."""
    width = min(one[2], other[2]) - max(one[0], other[0])
    height = min(one[3], other[3]) - max(one[1], other[1])
    if width <= 0 or height <= 0:
        return 0
    return width * height / min((b[2] - b[0]) * (b[3] - b[1]) for b in (one, other))


def overlapping(words):
    """Yields each pair of words that stand over one another."""
    boxes = sorted((middle(box), text) for box, text in words if box[2] - box[0] > 1.5)
    for place, (box, text) in enumerate(boxes):
        for other, more in boxes[place + 1 :]:
            if other[0] >= box[2]:
                break
            twice = text == more and max(abs(a - b) for a, b in zip(box, other)) < 0.5
            if not twice and covered(box, other) > 0.25:
                yield text, more


def check(path):
    """Lists what is wrong with one file."""
    faults = []
    count = 0
    for number, (width, height, words) in enumerate(pages(path), 1):
        count += len(words)
        for (left, top, right, bottom), text in words:
            if left < SIDE - 2 or right > width - SIDE + 2 or top < 0 or bottom > height:
                faults.append(f"page {number}: `{text}` stands out of the margins")
        faults += [f"page {number}: `{one}` and `{two}` overlap" for one, two in overlapping(words)]
    if count == 0:
        faults.append("no words")
    return faults


def main(paths):
    """Checks each file and prints a line for each fault."""
    failed = False
    for path in paths:
        faults = check(path)
        failed |= bool(faults)
        print(f"{path}: {'failed' if faults else 'fine'}")
        for fault in faults:
            print(f"  {fault}")
    if not paths:
        print(__doc__)
    return 1 if failed or not paths else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
