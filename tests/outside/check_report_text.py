"""Checks from outside that the reports print the figures that `check` gives, and nothing private.

Usage: check_report_text.py CHECK.json BOOK REPORTS

CHECK.json is what `rimebook check BOOK --format json` prints, BOOK the folder of the notes, REPORTS the
folder of their PDFs. Each visit must have one PDF, named after its place in the book, in which each figure's
title stands, its value after an equals sign as often as figures have that value, and each input's value. The
text is read with poppler's `pdftotext` (its dump by tags loses what follows a no-break space), attachments and
metadata with `pikepdf`. What is private is found by searching the raw notes for the word, not by reading them
as Rimebook does. Exits 1 if anything is wrong.
"""

import json
import re
import subprocess
import sys
import tomllib
import unicodedata
from collections import Counter
from pathlib import Path

import pikepdf

# So many words in a row tell a private sentence from a chance likeness.
RUN = 4


def compact(text):
    """Takes out whatever typesetting adds: spaces, line ends, hyphens, letter forms."""
    text = unicodedata.normalize("NFKC", text)
    return re.sub(r"[\s\u00ad\u200b-\u200d\u2010\u2011\u2060\ufeff-]+", "", text)


def page_text(pdf):
    """Gives the text of a PDF as it stands on the pages."""
    return subprocess.run(["pdftotext", "-enc", "UTF-8", pdf, "-"], check=True, capture_output=True).stdout.decode()


def carried(pdf):
    """Gives all that a PDF carries beside its pages: attachments and metadata."""
    with pikepdf.open(pdf) as document:
        parts = [file.get_file().read_bytes().decode() for file in document.attachments.values()]
        parts += [str(value) for value in document.docinfo.values()]
        with document.open_metadata() as metadata:
            parts.append(str(metadata))
    return "\n".join(parts)


def figures(visit, page):
    """Yields each figure whose title, value or inputs are not on the pages."""
    results = Counter(figure["printed"] for figure in visit["figures"])
    for result, times in results.items():
        words = unicodedata.normalize("NFKC", result).split()
        pattern = r"=\s*" + r"\s*".join(map(re.escape, words)) + r"(?!\S)"
        found = len(re.findall(pattern, unicodedata.normalize("NFKC", page)))
        if found < times:
            yield f"'= {result}' stands {found} times, figures that have it: {times}"
    page = compact(page)
    for figure in visit["figures"]:
        if compact(figure["title"]) not in page:
            yield f"{figure['id']}: its title is not printed: {figure['title']}"
        for one in figure["inputs"]:
            if compact(one["printed"]) not in page:
                yield f"{figure['id']}: {one['symbol']} = {one['printed']!r} is not printed"


def private_in_table(table):
    """Yields every private text of a TOML table, however deep."""
    for key, value in table.items():
        if key == "private":
            yield from [value] if isinstance(value, str) else [str(item) for item in value]
        for inner in value if isinstance(value, list) else [value]:
            if isinstance(inner, dict):
                yield from private_in_table(inner)


def private_texts(book):
    """Yields each private text of the notes with its file."""
    for path in sorted(book.rglob("*.toml")):
        # TOML 1.1 lets a time go without seconds; Python's reader does not yet.
        text = re.sub(r"(\d{4}-\d\d-\d\dT\d\d:\d\d)(?!:)", r"\1:00", path.read_text(encoding="utf-8"))
        for private in private_in_table(tomllib.loads(text)):
            yield path, private
    for path in sorted(book.rglob("findings.md")):
        for line in path.read_text(encoding="utf-8").splitlines():
            private = re.match(r"\s*-\s+private:\s*(.+)", line)
            if private:
                yield path, private[1]


def runs(text):
    """Gives every run of some words of a text, or all of it if it is shorter."""
    words = re.findall(r"\w+", unicodedata.normalize("NFKC", text).lower())
    return {"".join(words[i : i + RUN]) for i in range(max(1, len(words) - RUN + 1))}


def bare(text):
    """Gives the letters and digits of a text, and nothing between them."""
    return "".join(re.findall(r"\w+", unicodedata.normalize("NFKC", text).lower()))


def pdf_of(visit, reports):
    """Gives the one PDF of a visit, named after its site, system and day."""
    found = sorted(reports.rglob(visit.replace("/", "_") + ".pdf"))
    if len(found) != 1:
        raise LookupError(f"{len(found)} PDFs are named after it, wanted 1")
    return found[0]


def check(visit, private, reports):
    """Lists what is wrong with the report of one visit."""
    try:
        pdf = pdf_of(visit["visit"], reports)
    except LookupError as fault:
        return [str(fault)]
    page = page_text(pdf)
    faults = list(figures(visit, page))
    everything = [bare(part) for part in (page, carried(pdf))]
    for path, words in private:
        if any(words_in_a_row in part for words_in_a_row in runs(words) for part in everything):
            faults.append(f"private words of {path} are in it: {words!r}")
    return faults


def main(told, book, reports):
    """Checks every visit and prints a line for each fault."""
    visits = json.loads(Path(told).read_text(encoding="utf-8"))["visits"]
    private = list(private_texts(Path(book)))
    failed = 0
    for visit in visits:
        faults = check(visit, private, Path(reports))
        failed += bool(faults)
        print(f"{visit['visit']}: {'failed' if faults else 'fine'}, {len(visit['figures'])} figures")
        for fault in faults:
            print(f"  {fault}")
    count = sum(len(visit["figures"]) for visit in visits)
    print(f"{len(visits)} reports, {count} figures, {len(private)} private texts, {failed} reports failed")
    # A check of nothing shows nothing.
    return 1 if failed or not count or not private else 0


if __name__ == "__main__":
    if len(sys.argv) != 4:
        sys.exit(__doc__)
    sys.exit(main(*sys.argv[1:]))
