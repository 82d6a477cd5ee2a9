"""Draws the photographs of the demo book, with the metadata a telephone writes: camera, time, position, orientation.

Usage: python photographs.py [--width 1600] [part of a name ...]
The pictures are drawings; the positions are out at sea and on a lake, the camera does not exist.
"""

import sys
from concurrent.futures import ProcessPoolExecutor
from datetime import datetime
from pathlib import Path

import numpy as np
from PIL import ExifTags, Image, ImageDraw, ImageFont

from rendering import photograph
from shapes import ball, balls, band, bend, block, cone, cut, hexagon, joined, melted, rod
from surfaces import brass, copper, foam, heated, oily, paint, plain, printed, rubber, steel, wall

BOOK = Path(__file__).resolve().parents[3] / "jobs-example"
LARGEST = 240_000
OIL = plain((0.10, 0.055, 0.015), 0.0, 0.05, 0.0)


def room_behind(pipe_height=-1.15, seed=7):
    """A panel wall with an insulated pipe in front of it."""
    return [
        (block((0, 0, -1.95), (40, 30, 0.3)), wall(seed)),
        (rod((-7, pipe_height, -0.95), (7, pipe_height, -0.95), 0.42), rubber()),
        (joined(block((-1.9, pipe_height, -1.2), (0.09, 0.56, 0.6)), block((2.3, pipe_height, -1.2), (0.09, 0.56, 0.6))), steel(12)),
    ]


def bubble_cluster(centre, spread, count, seed, lower=True):
    random = np.random.default_rng(seed)
    centres, radii = [], []
    for _ in range(count):
        angle = random.uniform(0.15, 0.95) * np.pi
        radius = random.uniform(0.010, 0.042) * random.uniform(0.6, 1.3)
        away = spread + random.uniform(-0.01, 0.06)
        sign = -1 if lower else 1
        centres.append((centre[0] + random.normal(0, 0.09), centre[1] + sign * away * np.sin(angle) * 0.9, centre[2] + away * np.cos(angle - 0.6) * 0.8 + 0.08))
        radii.append(radius)
    return balls(centres, radii)


def solenoid(state, seed=1):
    """A flare nut at the inlet of a liquid solenoid valve."""
    place = (-0.12, -0.16, 0.12)
    tube, fitting = copper(seed + 1), brass(seed + 2)
    if state in ("oil", "bubbles"):
        reach = 0.62 if state == "oil" else 0.4
        tube, fitting = oily(tube, (-0.85, -0.1, 0.1), 0.3, seed), oily(fitting, place, reach, seed)
    scene = [
        (joined(rod((-6, 0, 0), (-0.62, 0, 0), 0.16), rod((1.3, 0, 0), (6, 0, 0), 0.16)), tube),
        (joined(hexagon((-0.62, 0, 0), (-0.02, 0, 0), 0.30, 0.012, 0.2 * seed), cone((-0.86, 0, 0), (-0.58, 0, 0), 0.172, 0.25)), fitting),
        (rod((-0.02, 0, 0), (0.46, 0, 0), 0.235, 0.02, 0.055, 0.03), fitting),
        (joined(block((0.86, 0, 0), (0.43, 0.36, 0.34), 0.07), cone((1.25, 0, 0), (1.5, 0, 0), 0.26, 0.19)), brass(9)),
        (rod((0.86, 0.3, 0), (0.86, 0.72, 0), 0.15, 0.02), steel()),
        (joined(block((0.86, 0.98, 0), (0.42, 0.36, 0.36), 0.09), rod((1.2, 0.9, 0.0), (1.55, 0.9, 0.0), 0.12, 0.03)), paint((0.035, 0.04, 0.05), 5, 0.15)),
        (rod((1.5, 0.9, 0), (2.6, 1.6, -0.9), 0.055), rubber(16)),
    ]
    if state == "oil":
        scene.append((melted(ball((-0.30, -0.375, 0.05), 0.05), ball((-0.30, -0.30, 0.05), 0.075), 0.07), OIL))
    if state == "bubbles":
        scene.append((bubble_cluster((-0.02, 0.0, 0.0), 0.27, 240, seed), foam()))
    return scene + room_behind()


def coupling(seed=1):
    """The same place with the flare gone: a brazed coupling, and the line clipped."""
    joints = [(-0.75, 0, 0), (-0.05, 0, 0), (1.45, 0, 0)]
    tube = copper(seed, 0.35)
    for joint in joints:
        tube = heated(tube, joint, 0.55)
    silver = plain((0.80, 0.78, 0.70), 0.95, 0.22, 0.2)
    rings = joined(*(band((x - 0.05, 0, 0), (x + 0.05, 0, 0), 0.17, 0.03) for x, _, _ in joints))
    clip = joined(rod((-2.05, 0, 0), (-1.8, 0, 0), 0.23, 0.02), block((-1.925, -0.45, -0.1), (0.125, 0.3, 0.05), 0.02), rod((-1.925, 0.2, 0), (-1.925, 0.34, 0), 0.06))
    return [
        (joined(rod((-6, 0, 0), (0.45, 0, 0), 0.16), rod((-0.75, 0, 0), (-0.05, 0, 0), 0.2, 0.01), rod((1.3, 0, 0), (6, 0, 0), 0.16)), tube),
        (rings, silver),
        (joined(block((0.86, 0, 0), (0.43, 0.36, 0.34), 0.07), cone((1.25, 0, 0), (1.5, 0, 0), 0.26, 0.19), cone((0.2, 0, 0), (0.5, 0, 0), 0.19, 0.26)), brass(9)),
        (rod((0.86, 0.3, 0), (0.86, 0.72, 0), 0.15, 0.02), steel()),
        (joined(block((0.86, 0.98, 0), (0.42, 0.36, 0.36), 0.09), rod((1.2, 0.9, 0.0), (1.55, 0.9, 0.0), 0.12, 0.03)), paint((0.035, 0.04, 0.05), 5, 0.15)),
        (rod((1.5, 0.9, 0), (2.6, 1.6, -0.9), 0.055), rubber(16)),
        (clip, steel(31)),
        (block((-1.925, -0.82, -0.45), (0.7, 0.16, 0.5), 0.03), steel(32)),
    ] + room_behind(-1.45)


def service_valve(capped, oil=True, seed=1):
    """A stop valve on a receiver: spindle bare where its cap is missing."""
    body = brass(seed + 3)
    if oil:
        body = oily(body, (0.0, 0.72, 0.1), 0.48, seed)
    shell = paint((0.05, 0.16, 0.17), 5, 0.45)
    scene = [
        (joined(rod((0, -0.9, 0), (0, 0.35, 0), 0.26, 0.03), block((0, 0, 0), (0.36, 0.34, 0.34), 0.08), hexagon((0, 0.33, 0), (0, 0.58, 0), 0.27), rod((0, 0.55, 0), (0, 0.86, 0), 0.2, 0.02, 0.05, 0.025)), body),
        (joined(hexagon((0.36, 0, 0), (0.8, 0, 0), 0.3), cone((0.78, 0, 0), (1.05, 0, 0), 0.25, 0.172)), brass(seed + 6)),
        (rod((1.0, 0, 0), (6, 0, 0), 0.16), copper(seed + 4)),
        (joined(rod((-6, -1.95, -0.5), (6, -1.95, -0.5), 1.0), rod((0, -1.2, 0), (0, -0.85, 0), 0.34, 0.05)), shell),
        (joined(rod((-0.36, 0.05, 0), (-0.62, 0.05, 0), 0.1, 0.01, 0.04, 0.02), hexagon((-0.60, 0.05, 0), (-0.86, 0.05, 0), 0.13)), brass(seed + 8)),
        (block((0, 0, -2.6), (40, 30, 0.3)), wall(seed, (0.30, 0.31, 0.26))),
    ]
    if capped:
        scene.append((hexagon((0, 0.6, 0), (0, 1.12, 0), 0.28, 0.05), brass(seed + 9)))
    else:
        spindle = joined(rod((0, 0.8, 0), (0, 1.0, 0), 0.1), block((0, 1.1, 0), (0.075, 0.14, 0.075), 0.012))
        scene.append((spindle, oily(steel(seed + 2), (0, 0.9, 0.05), 0.25, seed)))
        scene.append((melted(ball((0.14, 0.46, 0.27), 0.05), ball((0.14, 0.54, 0.25), 0.06), 0.08), OIL))
    return scene


def label(lines, size=(600, 300), ground=(222, 222, 214), ink=(30, 40, 44)):
    image = Image.new("RGB", size, ground)
    draw = ImageDraw.Draw(image)
    draw.rectangle([14, 14, size[0] - 15, size[1] - 15], outline=ink, width=5)
    for row, line in enumerate(lines):
        draw.text((size[0] / 2, 70 + row * 78), line, font=ImageFont.load_default(58), fill=ink, anchor="mm")
    return image


def drier(state, seed=1, colour=(0.03, 0.11, 0.13)):
    """A filter drier in the liquid line, flare nut at its outlet."""
    fitting, shell = brass(seed + 4), paint(colour, seed, 0.35 if state != "new" else 0.08)
    if state in ("oil", "bubbles"):
        fitting = oily(fitting, (1.75, -0.15, 0.1), 0.5, seed)
        shell = oily(shell, (1.35, -0.2, 0.2), 0.45, seed + 2)
    paper = printed(label(["DEMO DRIER", ">>  FLOW  >>", "INVENTED 30"]), (0.0, 0.05, 0.55), (1, 0, 0), (0, 1, 0), 1.3, 0.62)
    scene = [
        (joined(rod((-1.05, 0, 0), (1.05, 0, 0), 0.55, 0.1), cone((1.0, 0, 0), (1.38, 0, 0), 0.46, 0.24), cone((-1.38, 0, 0), (-1.0, 0, 0), 0.24, 0.46)), shell),
        (joined(rod((1.3, 0, 0), (1.62, 0, 0), 0.22, 0.01, 0.05, 0.025), rod((-1.62, 0, 0), (-1.3, 0, 0), 0.22, 0.01, 0.05, 0.025)), fitting),
        (joined(hexagon((1.55, 0, 0), (2.1, 0, 0), 0.3), cone((2.05, 0, 0), (2.35, 0, 0), 0.25, 0.17)), fitting),
        (joined(hexagon((-2.1, 0, 0), (-1.55, 0, 0), 0.3), cone((-2.35, 0, 0), (-2.05, 0, 0), 0.17, 0.25)), brass(seed + 7)),
        (joined(rod((2.2, 0, 0), (7, 0, 0), 0.16), rod((-7, 0, 0), (-2.2, 0, 0), 0.16)), copper(seed)),
        (cut(rod((-0.62, 0, 0), (0.62, 0, 0), 0.556, 0.003), block((0, -0.35, -0.3), (2, 0.62, 0.75))), paper),
    ]
    if state == "oil":
        scene.append((melted(ball((1.42, -0.36, 0.05), 0.05), ball((1.42, -0.28, 0.05), 0.07), 0.06), OIL))
    if state == "bubbles":
        scene.append((bubble_cluster((1.58, 0.02, 0.0), 0.27, 200, seed), foam()))
    return scene + room_behind(-1.5, seed)


def return_bends(state, seed=1):
    """The end plate of an air cooler with its return bends; one joint leaks, or has been brazed again."""
    tube = copper(seed, 0.45)

    def repeated(shape):
        """The shape at every return bend: rows 0.8 apart, every other row set off by half of 1.4."""

        def distance(points):
            row = np.round(points[:, 1] / 0.8)
            shift = np.where(row % 2 == 0, 0.0, 0.7)
            folded = points.copy()
            folded[:, 0] -= shift + 1.4 * np.round((points[:, 0] - shift) / 1.4)
            folded[:, 1] -= row * 0.8
            return shape(folded) * 0.8

        return distance

    bends = repeated(joined(bend((0, 0, 0.28), (1, 0, 0), (0, 0, 1), 0.36, 0.13), rod((-0.36, 0, -0.2), (-0.36, 0, 0.3), 0.13), rod((0.36, 0, -0.2), (0.36, 0, 0.3), 0.13)))
    collars = repeated(joined(band((-0.36, 0, 0.14), (-0.36, 0, 0.26), 0.13, 0.028), band((0.36, 0, 0.14), (0.36, 0, 0.26), 0.13, 0.028)))
    place = (0.36, 0.0, 0.2)
    plate = plain((0.55, 0.57, 0.58), 0.75, 0.5, 0.5, 2.0, seed + 3)
    ring = plain((0.62, 0.54, 0.42), 0.9, 0.3, 0.4)
    if state == "oil":
        tube, plate, ring = oily(tube, place, 0.42, seed), oily(plate, (0.36, -0.3, 0), 0.55, seed), oily(ring, place, 0.42, seed)
    if state == "brazed":
        tube = heated(tube, place, 0.5)
    scene = [(bends, tube), (block((0, 0, -0.12), (6, 6, 0.1)), plate), (collars, ring), (block((0, 0, -1.95), (40, 30, 0.3)), wall(seed))]
    if state == "brazed":
        scene.append((band((0.36, 0, 0.10), (0.36, 0, 0.28), 0.135, 0.045), plain((0.85, 0.82, 0.74), 0.95, 0.16, 0.1)))
    if state == "oil":
        scene.append((bubble_cluster((0.36, 0.02, 0.18), 0.17, 120, seed), foam()))
    return scene


def dial(reading, full, unit, step):
    """A gauge face; the pointer stands at the reading."""
    size, middle = 1200, 600
    image = Image.new("RGB", (size, size), (238, 238, 232))
    draw = ImageDraw.Draw(image)

    def at(value, radius):
        angle = np.radians(225 - 270 * value / full)
        return middle + radius * np.cos(angle), middle - radius * np.sin(angle)

    small = step / 5
    for k in range(int(round(full / small)) + 1):
        big = k % 5 == 0
        draw.line([at(k * small, 520), at(k * small, 440 if big else 485)], fill=(20, 24, 28), width=12 if big else 5)
        if big:
            draw.text(at(k * small, 372), f"{k * small:g}", font=ImageFont.load_default(78), fill=(20, 24, 28), anchor="mm")
    draw.text((middle, 840), unit, font=ImageFont.load_default(84), fill=(20, 24, 28), anchor="mm")
    draw.text((middle, 960), "INVENTED GAUGE", font=ImageFont.load_default(40), fill=(90, 94, 98), anchor="mm")
    tip, tail = at(reading, 470), at(reading, -110)
    across = np.array([tip[1] - middle, middle - tip[0]]) / 470 * 15
    draw.polygon([tip, tuple(np.array(tail) + across), tuple(np.array(tail) - across)], fill=(150, 24, 20))
    draw.ellipse([middle - 42, middle - 42, middle + 42, middle + 42], fill=(40, 42, 46))
    return image


def gauge(reading, full, unit, step, seed=1):
    face = printed(dial(reading, full, unit, step), (0, 0, 0.2), (1, 0, 0), (0, 1, 0), 2.0, 2.0, 0.6)
    case = cut(rod((0, 0, -0.35), (0, 0, 0.38), 1.16, 0.08), rod((0, 0, 0.2), (0, 0, 1), 1.0))
    return [
        (case, paint((0.05, 0.05, 0.055), seed, 0.2)),
        (rod((0, 0, 0.0), (0, 0, 0.23), 0.99), face),
        (joined(rod((0, -1.1, 0), (0, -1.7, 0), 0.16), hexagon((0, -1.35, 0), (0, -1.62, 0), 0.24)), brass(seed)),
        (joined(rod((-2.2, -1.95, 0), (1.6, -1.95, 0), 0.32, 0.06), rod((-1.5, -1.95, 0), (-1.5, -1.2, 0), 0.2, 0.03)), brass(seed + 3)),
        (rod((1.5, -1.95, 0), (6, -3.2, 0.6), 0.17), paint((0.45, 0.33, 0.03), 4, 0.2)),
        (joined(rod((-1.5, -1.25, 0), (-1.5, -0.95, 0), 0.34, 0.06)), paint((0.03, 0.08, 0.25), 4, 0.2)),
        (block((0, 0, -2.4), (40, 30, 0.3)), wall(seed + 5)),
    ]


def flange(state, seed=1):
    """A bolted flange on a large suction line, its insulation cut back."""
    body, tube = plain((0.20, 0.23, 0.24), 0.35, 0.5, 0.5, 2.5, seed), plain((0.30, 0.32, 0.32), 0.3, 0.5, 0.5, 2.0, seed + 1)
    if state == "oil":
        body, tube = oily(body, (0.05, -0.75, 0.5), 0.95, seed), oily(tube, (0.5, -0.6, 0.2), 0.5, seed)
    bolts, shanks = [], []
    for k in range(6):
        angle = np.pi / 6 + k * np.pi / 3
        y, z = 0.82 * np.cos(angle), 0.82 * np.sin(angle)
        bolts += [hexagon((-0.5, y, z), (-0.3, y, z), 0.15, 0.015, k), hexagon((0.3, y, z), (0.5, y, z), 0.15, 0.015, k + 0.4)]
        shanks.append(rod((-0.58, y, z), (0.66, y, z), 0.085, 0.01, 0.05, 0.012))
    scene = [
        (joined(rod((-0.3, 0, 0), (-0.035, 0, 0), 1.1, 0.03), rod((0.035, 0, 0), (0.3, 0, 0), 1.1, 0.03)), body),
        (rod((-0.036, 0, 0), (0.036, 0, 0), 1.04), plain((0.28, 0.10, 0.05) if state != "new" else (0.12, 0.30, 0.22), 0.0, 0.7)),
        (joined(rod((-1.6, 0, 0), (-0.2, 0, 0), 0.52), rod((0.2, 0, 0), (1.5, 0, 0), 0.52), cone((-0.6, 0, 0), (-0.28, 0, 0), 0.52, 0.66), cone((0.28, 0, 0), (0.6, 0, 0), 0.66, 0.52)), tube),
        (joined(*bolts, *shanks), steel(seed + 4) if state == "new" else plain((0.42, 0.36, 0.30), 0.7, 0.5, 0.6)),
        (joined(rod((-7, 0, 0), (-1.15, 0, 0), 0.86, 0.06), rod((1.15, 0, 0), (7, 0, 0), 0.86, 0.06)), rubber(seed)),
        (block((0, 0, -2.3), (40, 30, 0.3)), wall(seed + 2, (0.34, 0.37, 0.40))),
    ]
    if state == "oil":
        scene.append((melted(ball((0.0, -1.2, 0.2), 0.055), ball((0.0, -1.12, 0.2), 0.08), 0.08), OIL))
    return scene


def service_port(state, seed=1):
    """A service port on a line, its cap off; bubbles at the core."""
    port = oily(brass(seed), (0, 0.8, 0.05), 0.3, seed) if state == "bubbles" else brass(seed)
    scene = [
        (rod((-7, -0.2, 0), (7, -0.2, 0), 0.34), copper(seed + 1, 0.6)),
        (joined(rod((0, 0.05, 0), (0, 0.45, 0), 0.15, 0.01), hexagon((0, 0.32, 0), (0, 0.5, 0), 0.2), cut(rod((0, 0.5, 0), (0, 0.92, 0), 0.16, 0.01, 0.045, 0.02), rod((0, 0.7, 0), (0, 1.1, 0), 0.085))), port),
        (band((0, 0.07, 0), (0, 0.2, 0), 0.16, 0.05), plain((0.62, 0.52, 0.40), 0.9, 0.35, 0.4)),
        (rod((0, 0.6, 0), (0, 0.86, 0), 0.02), steel(3)),
    ] + room_behind(-1.6, seed)
    if state == "bubbles":
        scene.append((bubble_cluster((0.0, 0.88, 0.0), 0.06, 70, seed, lower=False), foam()))
    else:
        scene.append((hexagon((0, 0.52, 0), (0, 1.05, 0), 0.2, 0.04), brass(seed + 5)))
    return scene


def insulated_line(seed=1):
    """A suction line that could not be searched: closed-cell insulation under a torn jacket."""
    jacket = plain((0.55, 0.56, 0.57), 0.6, 0.45, 0.5, 1.6, seed)
    ribs = joined(*(rod((x, 0, 0), (x + 0.16, 0, 0), 1.02, 0.05) for x in (-3.1, -1.2, 0.7, 2.6)))
    tear = block((0.1, -0.45, 0.9), (0.55, 0.35, 0.5), 0.1)
    return [
        (joined(cut(rod((-7, 0, 0), (7, 0, 0), 1.0), tear), ribs), jacket),
        (rod((-7, 0, 0), (7, 0, 0), 0.92), oily(plain((0.33, 0.30, 0.22), 0.0, 0.8, 0.6), (0.1, -0.6, 0.7), 0.5, seed)),
        (rod((-7, 1.9, -0.6), (7, 1.9, -0.6), 0.3), copper(seed)),
        (block((0, 0, -2.3), (40, 30, 0.3)), wall(seed + 2, (0.34, 0.37, 0.40))),
    ]


HARBOUR, DAIRY = (38.4172, -9.9031, 6.0), (43.5208, -86.9417, 262.0)

# name, scene, eye, target, when, position, orientation tag
PICTURES = [
    ("brackwater/flake-ice-1/2025-02-18/photos/solenoid-inlet-before.jpg", lambda: solenoid("oil", 1), (-1.1, 0.75, 3.1), (-0.05, 0.08, 0), "2025-02-18T09:12:41", HARBOUR, 1),
    ("brackwater/flake-ice-1/2025-02-18/photos/solenoid-inlet-after.jpg", lambda: solenoid("clean", 1), (-0.9, 0.85, 3.2), (-0.05, 0.08, 0), "2025-02-18T15:08:20", HARBOUR, 1),
    ("brackwater/flake-ice-1/2025-02-18/photos/drier-outlet-before.jpg", lambda: drier("oil", 2), (1.9, 0.9, 4.2), (0.75, 0.0, 0), "2025-02-18T10:24:05", HARBOUR, 1),
    ("brackwater/flake-ice-1/2025-02-18/photos/drier-outlet-after.jpg", lambda: drier("new", 3, (0.05, 0.22, 0.10)), (1.7, 1.0, 4.3), (0.7, 0.0, 0), "2025-02-19T18:20:37", HARBOUR, 1),
    ("brackwater/flake-ice-1/2025-02-18/photos/receiver-valve-no-cap.jpg", lambda: service_valve(False, True, 1), (-1.5, 1.7, 3.7), (0.05, 0.28, 0), "2025-02-18T10:38:52", HARBOUR, 6),
    ("brackwater/flake-ice-1/2025-02-18/photos/overnight-start.jpg", lambda: gauge(17.5, 40, "bar", 5, 2), (0.7, 0.5, 5.2), (0.05, -0.35, 0), "2025-02-18T17:31:10", HARBOUR, 1),
    ("brackwater/flake-ice-1/2026-02-03/photos/solenoid-inlet-bubbles.jpg", lambda: solenoid("bubbles", 4), (-0.9, 0.35, 2.6), (-0.1, 0.02, 0), "2026-02-03T10:02:33", HARBOUR, 6),
    ("brackwater/flake-ice-1/2026-06-17/photos/solenoid-inlet-before.jpg", lambda: solenoid("oil", 5), (-1.3, 0.55, 2.9), (-0.05, 0.05, 0), "2026-06-17T08:58:16", HARBOUR, 1),
    ("brackwater/flake-ice-1/2026-06-17/photos/solenoid-inlet-after.jpg", lambda: coupling(3), (-1.5, 0.95, 4.0), (-0.4, 0.02, 0), "2026-06-17T14:41:02", HARBOUR, 1),
    ("brackwater/cold-store-1/2026-04-21/photos/u-bends-before.jpg", lambda: return_bends("oil", 2), (-1.1, 0.9, 3.2), (0.15, -0.05, 0.1), "2026-04-21T09:31:48", HARBOUR, 3),
    ("brackwater/cold-store-1/2026-04-21/photos/u-bends-after.jpg", lambda: return_bends("brazed", 2), (-0.9, 1.0, 3.1), (0.15, -0.02, 0.1), "2026-04-21T13:02:15", HARBOUR, 1),
    ("brackwater/cold-store-1/2026-04-21/photos/liquid-valve-no-cap.jpg", lambda: service_valve(False, True, 5), (1.4, 1.6, 3.6), (0.05, 0.3, 0), "2026-04-21T10:04:09", HARBOUR, 1),
    ("brackwater/cold-store-1/2026-04-21/photos/liquid-valve-capped.jpg", lambda: service_valve(True, False, 5), (1.3, 1.6, 3.7), (0.05, 0.3, 0), "2026-04-21T13:20:44", HARBOUR, 1),
    ("dunmarrow/process-chiller-1/2025-07-15/photos/suction-insulation.jpg", lambda: insulated_line(2), (-0.9, 0.9, 5.0), (0.0, -0.05, 0), "2025-07-15T10:47:30", DAIRY, 1),
    ("dunmarrow/process-chiller-1/2026-02-24/photos/suction-flange-oil.jpg", lambda: flange("oil", 3), (-1.7, 0.7, 4.3), (0.0, -0.12, 0), "2026-02-24T10:51:57", DAIRY, 1),
    ("dunmarrow/process-chiller-1/2026-05-19/photos/suction-flange-new-gasket.jpg", lambda: flange("new", 4), (-1.5, 0.9, 4.4), (0.0, -0.08, 0), "2026-05-19T11:17:22", DAIRY, 1),
    ("dunmarrow/process-chiller-1/2026-05-19/photos/suction-port-bubbles.jpg", lambda: service_port("bubbles", 2), (-0.7, 1.35, 2.5), (0.02, 0.55, 0), "2026-05-19T16:34:03", DAIRY, 1),
    ("dunmarrow/ice-bank-1/2025-06-10/photos/drier-outlet-bubbles.jpg", lambda: drier("bubbles", 6, (0.16, 0.10, 0.03)), (2.1, 0.5, 3.4), (1.2, -0.02, 0), "2025-06-10T09:20:11", DAIRY, 1),
    ("dunmarrow/ice-bank-1/2025-06-10/photos/drier-outlet-after.jpg", lambda: drier("new", 7, (0.20, 0.19, 0.17)), (2.0, 0.8, 3.8), (1.0, 0.0, 0), "2025-06-10T14:40:56", DAIRY, 1),
]

# How the pixels lie in the file for each orientation tag.
STORED = {1: None, 3: Image.Transpose.ROTATE_180, 6: Image.Transpose.ROTATE_90}


def degrees(value):
    value = abs(value)
    whole = int(value)
    minutes = int((value - whole) * 60)
    return (float(whole), float(minutes), round(((value - whole) * 60 - minutes) * 60, 2))


def metadata(when, position, orientation):
    """What a telephone would write beside the picture; all of it must stay out of a report."""
    moment = datetime.fromisoformat(when).strftime("%Y:%m:%d %H:%M:%S")
    latitude, longitude, altitude = position
    exif = Image.Exif()
    exif[ExifTags.Base.Make] = "Invented Camera Works"
    exif[ExifTags.Base.Model] = "Demo 7"
    exif[ExifTags.Base.Software] = "drawn for the demo book"
    exif[ExifTags.Base.Artist] = "DEMO-OWNER-NAME"
    exif[ExifTags.Base.DateTime] = moment
    exif[ExifTags.Base.Orientation] = orientation
    detail = exif.get_ifd(ExifTags.IFD.Exif)
    detail[ExifTags.Base.DateTimeOriginal] = moment
    detail[ExifTags.Base.ExposureTime] = 1 / 60
    detail[ExifTags.Base.FNumber] = 1.8
    detail[ExifTags.Base.ISOSpeedRatings] = 320
    detail[ExifTags.Base.FocalLength] = 5.4
    detail[ExifTags.Base.BodySerialNumber] = "DEMO-SERIAL-000417"
    place = exif.get_ifd(ExifTags.IFD.GPSInfo)
    place[ExifTags.GPS.GPSVersionID] = b"\x02\x03\x00\x00"
    place[ExifTags.GPS.GPSLatitudeRef] = "N" if latitude >= 0 else "S"
    place[ExifTags.GPS.GPSLatitude] = degrees(latitude)
    place[ExifTags.GPS.GPSLongitudeRef] = "E" if longitude >= 0 else "W"
    place[ExifTags.GPS.GPSLongitude] = degrees(longitude)
    place[ExifTags.GPS.GPSAltitude] = altitude
    return exif


def draw(number, width):
    name, scene, eye, target, when, position, orientation = PICTURES[number]
    # A picture held upright is higher than wide; the file stores it lying down.
    upright = orientation == 6
    size = (width * 3 // 4, width) if upright else (width, width * 3 // 4)
    image = photograph(scene(), eye, target, *size, seed=number)
    if STORED[orientation] is not None:
        image = image.transpose(STORED[orientation])
    path = BOOK / name
    path.parent.mkdir(parents=True, exist_ok=True)
    for quality in range(88, 40, -4):
        image.save(path, quality=quality, optimize=True, exif=metadata(when, position, orientation))
        if path.stat().st_size < LARGEST:
            break
    return f"{name}: {path.stat().st_size} bytes at quality {quality}"


def main(arguments):
    width = 1600
    if "--width" in arguments:
        place = arguments.index("--width")
        width = int(arguments[place + 1])
        del arguments[place : place + 2]
    chosen = [k for k, picture in enumerate(PICTURES) if not arguments or any(part in picture[0] for part in arguments)]
    with ProcessPoolExecutor(2) as pool:
        for line in pool.map(draw, chosen, [width] * len(chosen)):
            print(line, flush=True)


if __name__ == "__main__":
    main(sys.argv[1:])
