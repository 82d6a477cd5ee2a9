"""Checks finished reports from outside: what the PDF claims, how it is tagged, what it carries.

Usage: check_pdf.py FILE.pdf ...

Runs the PyPI package `pdfua` (the machine-checkable part of PDF/UA-1) and reads the file with
`pikepdf`. No validator for the whole of PDF/A could be found in the registries this project uses;
conformance to PDF/A-3a rests on the checks of the typesetter. Exits 1 if any file fails.
"""

import json
import re
import sys

import pdfua
import pikepdf

# What a photograph's metadata looks like inside a JPEG: none of it may reach the customer.
METADATA = [b"Exif\x00", b"http://ns.adobe.com/xap", b"ICC_PROFILE", b"Photoshop 3.0", b"GPS"]
NAMESPACES = {
    "pdfaid": "http://www.aiim.org/pdfa/ns/id/",
    "pdfuaid": "http://www.aiim.org/pdfua/ns/id/",
}


def claims(pdf):
    """Yields each standard that the metadata does not claim."""
    with pdf.open_metadata() as metadata:
        for key, wanted in [("pdfaid:part", "3"), ("pdfaid:conformance", "A"), ("pdfuaid:part", "1")]:
            prefix, name = key.split(":")
            value = metadata.get("{%s}%s" % (NAMESPACES[prefix], name))
            if value != wanted:
                yield f"metadata: {key} is {value!r}, wanted {wanted!r}"
    if not pdf.Root.get("/MarkInfo", {}).get("/Marked", False):
        yield "not marked as tagged"
    if "/Lang" not in pdf.Root:
        yield "no language"


def elements(node):
    """Walks the structure tree; each element is visited once."""
    if isinstance(node, pikepdf.Array):
        for child in node:
            yield from elements(child)
    elif isinstance(node, pikepdf.Dictionary):
        if "/S" in node:
            yield node
        if "/K" in node:
            yield from elements(node["/K"])


def structure(pdf):
    """Yields each fault of figures, formulas, headings and tables."""
    tree = pdf.Root.get("/StructTreeRoot")
    if tree is None:
        yield "no structure tree"
        return
    level = 0
    for element in elements(tree):
        kind = str(element["/S"])
        if kind in ("/Figure", "/Formula") and not str(element.get("/Alt", "")).strip():
            yield f"{kind[1:]} without alternative text"
        heading = re.fullmatch(r"/H([1-6])", kind)
        if heading:
            if int(heading[1]) > level + 1:
                yield f"heading level jumps from {level} to {heading[1]}"
            level = int(heading[1])
        if kind == "/Table" and not any(str(e["/S"]) == "/TH" for e in elements(element)):
            yield "table without a head"


def attachments(pdf):
    """Yields each fault of the data attached."""
    files = list(pdf.Root.get("/AF", []))
    if len(files) != 1:
        yield f"{len(files)} files attached, wanted 1"
    for file in files:
        if file.get("/AFRelationship") != "/Source":
            yield f"attachment: relationship is {file.get('/AFRelationship')}"
        stream = file["/EF"]["/F"]
        if str(stream.get("/Subtype")) != "/application/json":
            yield f"attachment: type is {stream.get('/Subtype')}"
        if not str(file.get("/Desc", "")):
            yield "attachment: no description"
        try:
            json.loads(stream.read_bytes())
        except ValueError as error:
            yield f"attachment: {error}"


def metadata_left(pdf):
    """Yields each trace of metadata in the pictures."""
    for item in pdf.objects:
        if isinstance(item, pikepdf.Stream) and item.get("/Subtype") == "/Image":
            raw = item.read_raw_bytes()
            for mark in METADATA:
                # Three letters can turn up by chance in coded pixels; in a head they cannot.
                if mark in (raw[:65536] if len(mark) > 3 else raw[:2048]):
                    yield f"picture holds {mark!r}"


def check(path):
    """Lists what is wrong with one file."""
    report = pdfua.validate(path)
    faults = [f"pdfua {f.rule_id} {f.severity.name}: {f.message}" for f in report.findings]
    with pikepdf.open(path) as pdf:
        for part in (claims, structure, attachments, metadata_left):
            faults += part(pdf)
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
