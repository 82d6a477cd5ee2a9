"""Solids as signed distances, for the drawn photographs of the demo book.

Each function returns `distance(points)`, where points is an array of shape (n, 3) and the answer has shape (n,).
Lengths are in decimetres.
"""

import numpy as np


def vector(*xyz):
    return np.array(xyz, dtype=np.float32)


def length(points):
    return np.sqrt(np.einsum("ij,ij->i", points, points))


def along(points, start, end):
    """Positions along the axis from start to end, the axis length, and what is left across it."""
    axis = end - start
    size = float(np.linalg.norm(axis))
    axis = axis / size
    offset = points - start
    position = offset @ axis
    return position, size, offset - position[:, None] * axis


def frame(start, end):
    axis = (end - start) / np.linalg.norm(end - start)
    other = vector(0, 0, 1) if abs(axis[2]) < 0.9 else vector(1, 0, 0)
    u = np.cross(axis, other)
    u /= np.linalg.norm(u)
    return axis, u, np.cross(axis, u)


def capped(across, position, size, rounding):
    """Distance to a body of revolution or prism, from the distance across and the place along its axis."""
    lengthwise = np.abs(position - size / 2) - size / 2 + rounding
    across = across + rounding
    outside = np.hypot(np.maximum(across, 0), np.maximum(lengthwise, 0))
    return outside + np.minimum(np.maximum(across, lengthwise), 0) - rounding


def rod(start, end, radius, rounding=0.0, pitch=0.0, depth=0.0):
    """A cylinder; with a pitch, ribbed like a thread or fine fins."""
    start, end = vector(*start), vector(*end)

    def distance(points):
        position, size, across = along(points, start, end)
        edge = length(across) - radius
        if pitch:
            edge = (edge + depth * (0.5 + 0.5 * np.cos(position * (2 * np.pi / pitch)))) * 0.8
        return capped(edge, position, size, rounding)

    return distance


def cone(start, end, first, last, rounding=0.01):
    start, end = vector(*start), vector(*end)

    def distance(points):
        position, size, across = along(points, start, end)
        share = np.clip(position / size, 0, 1)
        return capped((length(across) - (first + (last - first) * share)) * 0.85, position, size, rounding)

    return distance


def hexagon(start, end, apothem, rounding=0.012, turn=0.0):
    """A hexagonal prism with turned-off corners, as a nut has them."""
    start, end = vector(*start), vector(*end)
    axis, u, v = frame(start, end)

    def distance(points):
        position, size, across = along(points, start, end)
        x, y = across @ u, across @ v
        flat = np.full(len(points), -np.inf, dtype=np.float32)
        for k in range(3):
            angle = turn + k * np.pi / 3
            flat = np.maximum(flat, np.abs(x * np.cos(angle) + y * np.sin(angle)))
        body = capped(flat - apothem, position, size, rounding)
        corner = length(across) + 0.55 * np.maximum(np.abs(position - size / 2) - size / 2 + 0.06, 0) - apothem * 1.135
        return np.maximum(body, corner * 0.9)

    return distance


def ball(centre, radius):
    centre = vector(*centre)
    return lambda points: length(points - centre) - radius


def block(centre, half, rounding=0.02):
    centre, half = vector(*centre), vector(*half)

    def distance(points):
        gap = np.abs(points - centre) - half + rounding
        return length(np.maximum(gap, 0)) + np.minimum(gap.max(axis=1), 0) - rounding

    return distance


def bend(centre, first, second, radius, bore):
    """Half a ring: from centre + radius*first, through centre + radius*second, to centre - radius*first."""
    centre, first, second = vector(*centre), vector(*first), vector(*second)
    normal = np.cross(first, second)

    def distance(points):
        offset = points - centre
        x, y, z = offset @ first, offset @ second, offset @ normal
        ring = np.hypot(np.hypot(x, y) - radius, z) - bore
        ends = np.sqrt((np.abs(x) - radius) ** 2 + y**2 + z**2) - bore
        return np.where(y >= 0, ring, ends)

    return distance


def band(start, end, radius, thickness):
    """A ring lying on a pipe: the fillet of a brazed joint or a clip."""
    start, end = vector(*start), vector(*end)

    def distance(points):
        position, size, across = along(points, start, end)
        return np.hypot(length(across) - radius, (position - size / 2) * (thickness / (size / 2))) - thickness

    return lambda points: distance(points) * 0.6


def balls(centres, radii):
    """Many small balls, worked out only for points near them."""
    centres, radii = np.asarray(centres, np.float32), np.asarray(radii, np.float32)
    middle = centres.mean(axis=0)
    reach = float((np.linalg.norm(centres - middle, axis=1) + radii).max())

    def distance(points):
        answer = length(points - middle) - reach + 0.05
        near = answer < 0.1
        if near.any():
            gaps = np.linalg.norm(points[near][:, None] - centres[None], axis=2) - radii
            answer[near] = gaps.min(axis=1)
        return answer

    return distance


def joined(*parts):
    def distance(points):
        answer = parts[0](points)
        for part in parts[1:]:
            answer = np.minimum(answer, part(points))
        return answer

    return distance


def melted(first, second, width):
    """Two bodies run together like a drop on a nut."""

    def distance(points):
        a, b = first(points), second(points)
        share = np.clip(0.5 + 0.5 * (b - a) / width, 0, 1)
        return b + (a - b) * share - width * share * (1 - share)

    return distance


def cut(body, hole):
    return lambda points: np.maximum(body(points), -hole(points))
