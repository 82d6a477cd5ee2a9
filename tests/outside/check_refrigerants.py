"""Checks the program's refrigerant figures against CoolProp itself, at random points that change with the day.

    python check_refrigerants.py target/release/rimebook [--seed 20261125] [--each 6]

Saturation is asked of the program (`rimebook refrigerant NAME --at "T K" ... --format json`). Nitrogen and
water vapour have no command of their own: their points are handed to the tests of `coolprop_points` in a folder named by the
environment variable RIMEBOOK_POINTS. Exits with 1 after telling every failure, with 2 where the program cannot be asked.
"""

import argparse
import datetime
import json
import os
import random
import subprocess
import sys
import tempfile
from pathlib import Path

from generate_refrigerants import (
    DATA, ROOT, Fluid, Viscosity, nitrogen_lines, random_point, refrigerants, rows, water_lines,
)

PRESSURE_SHARE = 2e-4
DENSITY_SHARE = 5e-4
KEYS = (
    ("bubble-pressure-pa", PRESSURE_SHARE),
    ("dew-pressure-pa", PRESSURE_SHARE),
    ("liquid-density-kg-m3", DENSITY_SHARE),
    ("vapour-density-kg-m3", DENSITY_SHARE),
)
VISCOSITY_SHARE = 5e-4


def held_tables():
    """Gives the nodes of every checked-in saturation table: only their range and a rough place are used here."""
    tables, current = {}, None
    for name, temperature, bubble, dew, liquid, vapour, _ in rows(DATA / "saturation.csv"):
        current = name or current
        node = tuple(map(float, (temperature, bubble, dew or bubble, liquid, vapour)))
        tables.setdefault(current, []).append(node)
    return tables


def ask(program, designation, temperatures):
    command = [program, "refrigerant", designation, "--format", "json"]
    for temperature in temperatures:
        command += ["--at", f"{temperature:.3f} K"]
    answer = subprocess.run(command, capture_output=True, text=True, encoding="utf-8")
    if answer.returncode != 0:
        print(f"{' '.join(command)}\n{answer.stderr}", file=sys.stderr)
        sys.exit(2)
    found = json.loads(answer.stdout)["at"]
    if len(found) != len(temperatures):
        sys.exit(f"{designation}: {len(temperatures)} temperatures asked, {len(found)} answered")
    return found


def check_saturation(program, chance, each):
    tables, failures, worst, count, viscous = held_tables(), [], 0.0, 0, 0
    for designation, parts in refrigerants():
        if designation not in tables:
            continue
        fluid, viscosity = Fluid(parts), Viscosity(designation, parts)
        points = [random_point(fluid, tables[designation], chance) for _ in range(each)]
        points = [point for point in points if point]
        for point, found in zip(points, ask(program, designation, [point[0] for point in points])):
            checks = list(zip(KEYS, point[1:]))
            model = viscosity.of_vapour(point[0], point[4])
            if model and found.get("vapour-viscosity-pa-s") is not None:
                checks.append((("vapour-viscosity-pa-s", VISCOSITY_SHARE), model))
                viscous += 1
            for (key, share), expected in checks:
                error = abs(found[key] / expected - 1) if found.get(key) is not None else float("inf")
                worst, count = max(worst, error / share), count + 1
                if error > share:
                    failures.append(f"{designation} at {point[0]} K, {key}: {found.get(key)}, CoolProp {expected:.8g}")
    print(f"saturation: {count} figures, {viscous} of them viscosities, the worst at {100 * worst:.0f} % of what is allowed")
    return failures if count and viscous else ["saturation: no point was checked"]


def check_room_viscosity(program):
    """Checks the viscosity at 20 degrees Celsius of every refrigerant and test gas that CoolProp has a model of."""
    failures, count = [], 0
    for designation, parts in refrigerants():
        expected = Viscosity(designation, parts).in_a_room()
        if expected:
            command = [program, "refrigerant", designation, "--format", "json"]
            found = json.loads(subprocess.run(command, capture_output=True, text=True).stdout)["viscosity-pa-s"]
            count += 1
            if not found or abs(found["value"] / expected - 1) > 1e-4:
                failures.append(f"{designation}, viscosity at 20 degrees Celsius: {found}, CoolProp {expected}")
    print(f"viscosity at 20 degrees Celsius: {count} refrigerants")
    return failures if count else ["viscosity: nothing was checked"]


def check_gases(chance):
    """Checks nitrogen's compressibility and the vapour pressure of liquid water through cargo test."""
    files = {
        "nitrogen.csv": ("pressure-pa;temperature-k;z", nitrogen_lines(chance, 2000)),
        "water.csv": ("temperature-k;pressure-pa", water_lines(chance, 500)),
    }
    with tempfile.TemporaryDirectory() as folder:
        for name, (heading, lines) in files.items():
            Path(folder, name).write_text("\n".join((heading, *lines, "")), encoding="utf-8")
        command = ["cargo", "test", "--release", "--test", "main", "at_every_point_of_the_gases"]
        done = subprocess.run(
            command, cwd=ROOT, env={**os.environ, "RIMEBOOK_POINTS": folder}, capture_output=True, text=True
        )
    passed = done.returncode == 0 and "2 passed" in done.stdout
    print(f"nitrogen and water: 2500 points, {'all as close as asked' if passed else 'failed'}")
    return [] if passed else [done.stdout + done.stderr]


def main():
    today = datetime.datetime.now(datetime.timezone.utc).strftime("%Y%m%d")
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("program", type=Path, help="the built program, target/release/rimebook")
    parser.add_argument("--seed", type=int, default=int(today), help="repeats the points of another day")
    parser.add_argument("--each", type=int, default=6, help="points for each refrigerant")
    asked = parser.parse_args()
    if not asked.program.is_file():
        print(f"{asked.program} is not there: build it first, cargo build --release", file=sys.stderr)
        sys.exit(2)
    print(f"seed {asked.seed}")
    chance = random.Random(asked.seed)
    program = str(asked.program.resolve())
    failures = check_saturation(program, chance, asked.each) + check_room_viscosity(program) + check_gases(chance)
    for failure in failures:
        print(failure, file=sys.stderr)
    sys.exit(1 if failures else 0)


if __name__ == "__main__":
    main()
