"""What the drawn fittings are made of: colour, roughness and dirt at each place.

A surface is `look(points, normals)` that returns colour (n, 3), metalness (n,) and roughness (n,).
"""

import numpy as np


def noise(points, scale, seed):
    """Smooth noise between 0 and 1."""
    place = points * scale + seed * 17.13
    corner = np.floor(place).astype(np.int64)
    share = place - corner
    share = share * share * (3 - 2 * share)
    total = np.zeros(len(points))
    for dx in (0, 1):
        for dy in (0, 1):
            for dz in (0, 1):
                key = (corner[:, 0] + dx) * 374761393 + (corner[:, 1] + dy) * 668265263 + (corner[:, 2] + dz) * 2147483647
                key = (key ^ (key >> 13)) * 1274126177
                value = ((key ^ (key >> 16)) & 0xFFFF) / 65535.0
                weight = np.ones(len(points))
                for axis, step in ((0, dx), (1, dy), (2, dz)):
                    weight *= share[:, axis] if step else 1 - share[:, axis]
                total += weight * value
    return total


def cloud(points, scale, seed):
    return 0.55 * noise(points, scale, seed) + 0.3 * noise(points, scale * 2.3, seed + 1) + 0.15 * noise(points, scale * 5.1, seed + 2)


def mixed(first, second, share):
    return first + (second - first) * np.clip(share, 0, 1)[:, None]


def plain(colour, metal, rough, grime=0.25, scale=3.0, seed=1):
    colour = np.array(colour)

    def look(points, normals):
        dirt = cloud(points, scale, seed)
        shade = mixed(np.broadcast_to(colour, points.shape), np.broadcast_to(colour * 0.45, points.shape), grime * 2 * np.maximum(dirt - 0.4, 0) / 0.6)
        roughness = np.clip(rough + 0.3 * grime * (dirt - 0.5), 0.04, 1)
        return shade, np.full(len(points), float(metal)), roughness

    return look


def copper(seed=2, age=0.5):
    """Tube that has darkened in places and is bright where it has been rubbed."""
    bright, dark = np.array([0.93, 0.55, 0.38]), np.array([0.42, 0.22, 0.14])

    def look(points, normals):
        tarnish = cloud(points, 2.2, seed)
        colour = mixed(np.broadcast_to(bright, points.shape), np.broadcast_to(dark, points.shape), age * 2.2 * (tarnish - 0.25))
        return colour, np.full(len(points), 0.95), np.clip(0.24 + 0.35 * (tarnish - 0.3), 0.1, 0.6)

    return look


def brass(seed=3):
    return plain((0.83, 0.64, 0.32), 0.95, 0.28, 0.3, 4.0, seed)


def steel(seed=4):
    return plain((0.60, 0.61, 0.62), 0.9, 0.35, 0.35, 3.5, seed)


def paint(colour, seed=5, grime=0.3):
    return plain(colour, 0.0, 0.45, grime, 2.5, seed)


def rubber(seed=6):
    """Pipe insulation with its dusty skin."""
    return plain((0.045, 0.045, 0.05), 0.0, 0.75, 0.1, 9.0, seed)


def wall(seed=7, colour=(0.40, 0.42, 0.40)):
    """Coated panel with runs of dirt."""
    clean = np.array(colour)

    def look(points, normals):
        streaks = cloud(points * np.array([1.0, 0.25, 1.0]), 1.6, seed)
        colour = mixed(np.broadcast_to(clean, points.shape), np.broadcast_to(clean * 0.45, points.shape), 1.4 * (streaks - 0.35))
        return colour, np.zeros(len(points)), np.full(len(points), 0.7)

    return look


def oily(base, centre, reach, seed=8, strength=1.0):
    """The base surface wetted with oil around a place, and below it where it has run."""
    centre = np.array(centre)

    def look(points, normals):
        colour, metal, rough = base(points, normals)
        offset = points - centre
        offset = offset * np.array([1.0, 1.0, 1.0])
        offset[:, 1] = np.where(offset[:, 1] < 0, offset[:, 1] * 0.45, offset[:, 1] * 1.2)
        spread = np.sqrt((offset**2).sum(axis=1)) / reach + 0.7 * (cloud(points, 5.0, seed) - 0.5)
        wet = strength * np.clip((1.05 - spread) / 0.3, 0, 1)
        stain = colour * np.array([0.36, 0.27, 0.16]) + np.array([0.012, 0.008, 0.003])
        return mixed(colour, stain, wet), metal * (1 - 0.55 * wet), rough * (1 - wet) + 0.07 * wet

    return look


def heated(base, centre, reach):
    """Copper after a torch: a dark ring that fades through brown."""
    centre = np.array(centre)

    def look(points, normals):
        colour, metal, rough = base(points, normals)
        away = np.sqrt(((points - centre) ** 2).sum(axis=1)) / reach + 0.15 * (cloud(points, 4.0, 21) - 0.5)
        scale = np.exp(-(((away - 0.75) / 0.3) ** 2))
        return mixed(colour, np.broadcast_to([0.16, 0.07, 0.06], points.shape), 0.85 * scale), metal, rough + 0.15 * scale

    return look


def printed(image, origin, right, up, width, height, rough=0.5):
    """A flat picture laid on a surface: a dial or a label."""
    pixels = np.asarray(image.convert("RGB"), dtype=np.float64) / 255
    pixels = pixels**2.2
    origin, right, up = np.array(origin), np.array(right), np.array(up)

    def look(points, normals):
        x = np.clip(((points - origin) @ right) / width + 0.5, 0, 0.9999)
        y = np.clip(0.5 - ((points - origin) @ up) / height, 0, 0.9999)
        colour = pixels[(y * pixels.shape[0]).astype(int), (x * pixels.shape[1]).astype(int)]
        return colour, np.zeros(len(points)), np.full(len(points), rough)

    return look


def foam():
    def look(points, normals):
        return np.broadcast_to([0.86, 0.88, 0.88], points.shape), np.zeros(len(points)), np.full(len(points), 0.06)

    return look
