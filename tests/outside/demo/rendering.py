"""Draws a scene of solids as a photograph: sphere tracing, one lamp, a soft room in the reflections, shallow focus."""

import numpy as np
from PIL import Image, ImageFilter

from shapes import length

LAMP = np.array([-0.45, 0.75, 0.75]) / np.linalg.norm([-0.45, 0.75, 0.75])
CHUNK = 40_000
FAR = 14.0


def nearest(solids, points):
    best = solids[0][0](points)
    which = np.zeros(len(points), dtype=np.int32)
    for number, (distance, _) in enumerate(solids[1:], 1):
        gap = distance(points)
        closer = gap < best
        best = np.where(closer, gap, best)
        which[closer] = number
    return best, which


def march(solids, origins, rays, steps, reach):
    """Distance travelled along each ray, infinite where nothing is met."""
    travelled = np.full(len(rays), 0.0, dtype=np.float32)
    active = np.arange(len(rays))
    answer = np.full(len(rays), np.inf, dtype=np.float32)
    for _ in range(steps):
        gap, _ = nearest(solids, origins[active] + travelled[active, None] * rays[active])
        met = gap < 0.0006 + 0.0004 * travelled[active]
        answer[active[met]] = travelled[active[met]]
        travelled[active] += gap
        active = active[~met & (travelled[active] < reach)]
        if not len(active):
            break
    return answer


def normals_at(solids, points):
    total = np.zeros_like(points)
    for sign in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
        sign = np.array(sign, dtype=np.float32)
        total += sign * nearest(solids, points + 0.0015 * sign)[0][:, None]
    return total / np.maximum(length(total), 1e-9)[:, None]


def room(directions, rough):
    """Light that comes from a direction: pale ceiling with two tubes, a door, a dark floor."""
    x, y, z = directions.T
    blur = 0.05 + 0.5 * rough
    light = 0.16 + 0.30 * np.clip(0.5 + 0.5 * y / (0.6 + rough), 0, 1)
    tube = np.exp(-(((x + 0.35 * z - 0.15) / (0.10 + blur)) ** 2)) + 0.8 * np.exp(-(((x - 0.2 * z + 0.75) / (0.09 + blur)) ** 2))
    light = light + 1.9 * tube * np.clip((y - 0.1) / (0.35 + blur), 0, 1) / (1 + 3 * rough)
    door = np.exp(-(((x - 0.75) / (0.22 + blur)) ** 2) - ((y - 0.1) / (0.5 + blur)) ** 2)
    colour = light[:, None] * np.array([1.0, 0.985, 0.95])
    return colour + (0.85 * door / (1 + 2 * rough))[:, None] * np.array([0.8, 0.93, 1.1])


def shade(solids, points, rays, random):
    normals = normals_at(solids, points)
    which = nearest(solids, points)[1]
    colour, metal = np.zeros((len(points), 3)), np.zeros(len(points))
    rough = np.zeros(len(points))
    for number, (_, look) in enumerate(solids):
        mine = which == number
        if mine.any():
            colour[mine], metal[mine], rough[mine] = look(points[mine].astype(np.float64), normals[mine])
    open_sky = np.ones(len(points))
    for k, step in enumerate((0.03, 0.08, 0.18, 0.34)):
        gap = nearest(solids, points + normals * np.float32(step))[0]
        open_sky -= 0.42 / (1.5**k) * np.clip(1 - gap / step, 0, 1)
    open_sky = np.clip(open_sky, 0.1, 1)
    lamp = LAMP.astype(np.float32)
    # The lamp has a size: each place sees it a little elsewhere, which softens the shadows.
    toward = lamp + random.normal(0, 0.045, points.shape).astype(np.float32)
    blocked = np.isfinite(march(solids, points + normals * np.float32(0.008), toward / length(toward)[:, None], 50, 5.0))
    lit = np.clip(normals @ lamp, 0, 1) * np.where(blocked, 0.0, 1.0)
    mirror = rays - 2 * np.einsum("ij,ij->i", rays, normals)[:, None] * normals
    facing = np.clip(-np.einsum("ij,ij->i", rays, normals), 0, 1)
    base = 0.04 * (1 - metal)[:, None] + colour * metal[:, None]
    gloss = base + (np.maximum(1 - rough[:, None], base) - base) * ((1 - facing) ** 5)[:, None]
    half = lamp - rays
    half = half / length(half)[:, None]
    spread = np.maximum(rough, 0.05) ** 2
    cosine = np.clip(np.einsum("ij,ij->i", normals, half), 0, 1)
    spark = spread**2 / (np.pi * (cosine**2 * (spread**2 - 1) + 1) ** 2)
    sky = 0.34 + 0.22 * normals[:, 1]
    diffuse = colour * (1 - metal)[:, None] * (1.0 * lit + sky * open_sky)[:, None]
    # What a mirror meets nearby is taken as dark, the less so the rougher it is.
    spread_out = mirror + random.normal(0, 1, mirror.shape) * (0.02 + 0.25 * rough)[:, None]
    spread_out = (spread_out / length(spread_out)[:, None]).astype(np.float32)
    met = np.isfinite(march(solids, points + normals * np.float32(0.01), spread_out, 24, 1.6))
    around = room(mirror, rough) * np.where(met, 0.35 + 0.5 * np.clip(rough, 0, 1), 1.0)[:, None]
    return diffuse + gloss * (around * (0.35 + 0.65 * open_sky)[:, None] + (0.25 * np.minimum(spark, 12) * lit)[:, None])


def photograph(solids, eye, target, width=1600, height=1200, lens=2.0, focus=None, seed=1):
    """Renders the scene; returns an sRGB image."""
    eye, target = np.array(eye, dtype=np.float64), np.array(target, dtype=np.float64)
    forward = (target - eye) / np.linalg.norm(target - eye)
    right = np.cross(forward, [0, 1, 0])
    right /= np.linalg.norm(right)
    up = np.cross(right, forward)
    random = np.random.default_rng(seed)
    rows, columns = np.mgrid[0:height, 0:width]
    total = width * height
    frame, depth = np.zeros((total, 3)), np.full(total, FAR)
    x = (columns.ravel() + 0.5 - width / 2) / (height / 2)
    y = (height / 2 - rows.ravel() - 0.5) / (height / 2)
    for begin in range(0, total, CHUNK):
        part = slice(begin, min(begin + CHUNK, total))
        rays = x[part, None] * right + y[part, None] * up + lens * forward
        rays = (rays / np.linalg.norm(rays, axis=1)[:, None]).astype(np.float32)
        origins = np.broadcast_to(eye.astype(np.float32), rays.shape)
        away = march(solids, origins, rays, 140, FAR)
        met = np.isfinite(away)
        shown = np.tile([0.05, 0.05, 0.05], (len(rays), 1))
        if met.any():
            points = origins[met] + away[met, None] * rays[met]
            shown[met] = shade(solids, points, rays[met], random)
        frame[part] = shown
        depth[part] = np.where(met, away, FAR)
    return developed(frame.reshape(height, width, 3), depth.reshape(height, width), x, y, focus or float(np.linalg.norm(target - eye)), random)


def developed(frame, depth, x, y, focus, random):
    """Out-of-focus blur, falling off to the corners, film curve and a little grain."""
    height, width = depth.shape
    scale = height / 1200
    frame = frame * (1 - 0.11 * (x**2 + y**2)).reshape(height, width, 1)
    curve = np.clip(frame * 0.86, 0, None)
    curve = curve * (2.51 * curve + 0.03) / (curve * (2.43 * curve + 0.59) + 0.14)
    coded = np.clip(np.clip(curve, 0, 1) ** (1 / 2.2), 0, 1)
    sharp = Image.fromarray((coded * 255 + 0.5).astype(np.uint8))
    blurred = np.abs(1 / depth - 1 / focus) * focus * 14 * scale
    layers = [0.7 * scale, 2.5 * scale, 6.0 * scale, 12.0 * scale]
    stack = [np.asarray(sharp.filter(ImageFilter.GaussianBlur(radius)), dtype=np.float64) for radius in layers]
    answer = stack[0]
    for inner, outer, picture in zip(layers, layers[1:], stack[1:]):
        share = np.clip((blurred - inner) / (outer - inner), 0, 1)[:, :, None]
        answer = answer + (picture - answer) * share
    answer = answer + random.normal(0, 1.1, answer.shape[:2])[:, :, None] + random.normal(0, 0.5, answer.shape)
    return Image.fromarray(np.clip(answer + 0.5, 0, 255).astype(np.uint8))
