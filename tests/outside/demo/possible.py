"""Asks of the demo book whether it could have happened: scales, clock, nitrogen, saturation.

Usage: python possible.py [--ledger] [folder of the book]
Exit code 1 if something is impossible. With --ledger the movements are printed with their running sums.
It shares no code with Rimebook: units are read here by a few patterns, and CoolProp gives the properties.
"""

import re
import sys
import tomllib
from datetime import datetime, timedelta
from pathlib import Path

from CoolProp.CoolProp import PropsSI

BOOK = Path(__file__).resolve().parents[3] / "jobs-example"
POUND = 0.45359237
PSI = 6894.757293168
FLUIDS = {"R-22": "R22", "R-404A": "R404A.mix", "R-449A": "R449A.mix", "R-454C": "R454C.mix", "R-507A": "R507A.mix"}
faults = []


def load(path):
    """TOML 1.1 lets a time go without seconds; Python's reader does not yet."""
    if not path.exists():
        return {}
    text = re.sub(r"(\d{4}-\d\d-\d\dT\d\d:\d\d)(?!:)", r"\1:00", path.read_text(encoding="utf-8"))
    return tomllib.loads(text)


def number(text):
    return float(re.match(r"\s*(-?[\d.]+)", text).group(1))


def kilograms(text):
    return number(text) * (POUND if "lb" in text else 1.0)


def kelvin(text):
    return (number(text) + 459.67) / 1.8 if "F" in text else number(text) + 273.15


def pascal(text, atmosphere):
    value = number(text)
    if "psi" in text:
        return value * PSI + (0 if "psia" in text else atmosphere)
    if "mbar" in text:
        return value * 100
    if "bar" in text:
        return value * 1e5 + (0 if text.endswith("a") else atmosphere)
    return value * 101325 / 760000  # micron


def metres(text):
    return number(text) * (0.3048 if "ft" in text else 1.0)


def fault(where, what):
    faults.append(f"{where}: {what}")


def moment(value):
    return value if isinstance(value, datetime) else datetime(value.year, value.month, value.day, 0, 0)


def in_force(system, circuit, day):
    entries = [e for e in system["in-force"] if e.get("circuit", "main") == circuit and e["from"] <= day]
    return max(entries, key=lambda entry: entry["from"])


def cylinders(book, movements, ledger):
    """Every weighing of a cylinder follows from the one before, within the scale's step."""
    for cylinder in book["cylinder"]:
        name, weight = cylinder["id"], None
        steps = [(moment(e["at"]), e["what"], None, kilograms(e["gross"]), name) for e in book["cylinder-event"] if e["cylinder"] == name]
        steps += [(m["at"], m["kind"], kilograms(m["before"]), kilograms(m["after"]), where) for where, m in movements if m.get("cylinder") == name]
        if ledger:
            print(f"\n{name} {cylinder['refrigerant']}, tare {cylinder['tare']}, most {cylinder['most']}, {cylinder['origin']}")
        for at, what, before, after, where in sorted(steps, key=lambda step: step[0]):
            if before is None and what == "returned":
                before = after
            if weight is not None and before is not None and abs(before - weight) > 0.011:
                fault(where, f"{name} weighed {weight:.2f} kg last time, {before:.2f} kg now")
            if not kilograms(cylinder["tare"]) - 0.001 <= after <= kilograms(cylinder["most"]) + 0.001:
                fault(where, f"{name} at {after:.2f} kg is outside tare and most")
            weight = after
            if ledger:
                net = after - kilograms(cylinder["tare"])
                print(f"  {at:%Y-%m-%d %H:%M} {what:16} gross {after:7.2f} kg ({after / POUND:7.2f} lb), net {net:6.2f} kg ({net / POUND:6.2f} lb)  {where}")
        origin = {m["kind"] for _, m in movements if m.get("cylinder") == name}
        if not origin:
            fault(name, "is never used")


def attended(visit, at, slack=0):
    return any(a["from"] - timedelta(minutes=slack) <= at <= a["to"] for a in visit["attendance"])


def clock(where, visit, readings, movements):
    """Nothing happens while nobody is there, and nothing faster than the machines can do it."""
    for group, keys in (("safety-check", ("at",)), ("work", ("at",)), ("advice", ("at",))):
        for entry in visit.get(group, []):
            for key in keys:
                if key in entry and not attended(visit, entry[key]):
                    fault(where, f"{group} at {entry[key]} with nobody there")
    times = [(m["at"], m["kind"]) for m in movements]
    for group in ("detector-check", "search", "operating"):
        for entry in readings.get(group, []):
            for key in ("at", "started", "ended"):
                if key in entry:
                    times.append((entry[key], group))
    for test in readings.get("pressure-test", []) + readings.get("vacuum-test", []):
        for reading in ("start", "end"):
            if reading in test:
                times.append((test[reading]["at"], test["id"]))
        if "isolated" in test:
            times.append((test["isolated"], test["id"]))
    for at, what in times:
        if not attended(visit, at):
            fault(where, f"{what} at {at} with nobody there")
    persons = {}
    for entry in visit["attendance"]:
        persons.setdefault(entry["by"], []).append(entry)
    for movement in movements:
        if movement["kind"] not in ("charged", "recovered"):
            continue
        mass = abs(kilograms(movement["after"]) - kilograms(movement["before"]))
        if movement["kind"] == "charged":
            others = [at for at, _ in times]
        else:
            # Two recovery machines may run side by side.
            others = [at for at, what in times if what in ("detector-check", "search", "operating")]
        before = [at for at in [*others, *(a["from"] for a in visit["attendance"])] if at < movement["at"]]
        if not before:
            continue  # told above
        minutes = (movement["at"] - max(before)).total_seconds() / 60
        # Liquid charging about 1.2 kg/min, recovery about 0.5 kg/min at best (common practice).
        if minutes < mass / (1.2 if movement["kind"] == "charged" else 0.5):
            fault(where, f"{mass:.1f} kg {movement['kind']} within {minutes:.0f} min")
    for vacuum in readings.get("vacuum-test", []):
        for pressure in readings.get("pressure-test", []):
            same = vacuum.get("circuit") == pressure.get("circuit")
            end = pressure["end"]["at"] if "end" in pressure else None
            if same and end and not vacuum["isolated"] - end >= timedelta(minutes=35):
                fault(where, f"{vacuum['id']} is too soon after {pressure['id']}")


def nitrogen(where, test, air):
    if "start" not in test or test["gas"] != "nitrogen":
        return
    start, end = test["start"], test["end"]
    first, last = pascal(start["pressure"], air), pascal(end["pressure"], air)
    density = PropsSI("D", "P", first, "T", kelvin(start["temperature"]), "Nitrogen")
    expected = PropsSI("P", "D", density, "T", kelvin(end["temperature"]), "Nitrogen")
    if abs(expected - last) > 0.03e5:
        fault(where, f"{test['id']} ends {(last - expected) / 1e5:+.3f} bar from what the nitrogen does")


def saturation(where, reading, fluid, air, ledger):
    suction, liquid = pascal(reading["suction-pressure"], air), pascal(reading["liquid-pressure"], air)
    dew, bubble = PropsSI("T", "P", suction, "Q", 1, fluid), PropsSI("T", "P", liquid, "Q", 0, fluid)
    superheat, subcooling = kelvin(reading["suction-temperature"]) - dew, bubble - kelvin(reading["liquid-temperature"])
    short = reading.get("sight-glass", "clear") != "clear"
    if not (8 <= superheat <= 20 if short else 5 <= superheat <= 10) or not (0 <= subcooling <= 3 if short else 2.5 <= subcooling <= 5):
        fault(where, f"superheat {superheat:.1f} K, subcooling {subcooling:.1f} K at {reading['at']}")
    warmer = bubble - kelvin(reading["ambient"])
    if not 8 <= warmer <= 40:
        fault(where, f"condensing {warmer:.1f} K above the air at {reading['at']}")
    if ledger:
        print(f"  {where} {reading['at']:%m-%d %H:%M} {reading.get('circuit', '')} dew {dew - 273.15:.1f} °C, superheat {superheat:.1f} K, subcooling {subcooling:.1f} K")


def main(root, ledger):
    book = load(root / "rimebook.toml")
    everything = []
    busy = {}
    for site_file in sorted(root.glob("*/site.toml")):
        site = load(site_file)
        air = 101325 * (1 - 2.25577e-5 * metres(site["altitude"])) ** 5.25588
        for system_file in sorted(site_file.parent.glob("*/system.toml")):
            system = load(system_file)
            circuits = [c["id"] for c in system["circuit"]]
            held = {c: 0.0 for c in circuits}
            if ledger:
                print(f"\n== {system['name']}")
            for folder in sorted(p for p in system_file.parent.iterdir() if p.is_dir()):
                where = str(folder.relative_to(root))
                visit, readings = load(folder / "visit.toml"), load(folder / "readings.toml")
                movements = load(folder / "refrigerant.toml").get("movement", [])
                everything += [(where, m) for m in movements]
                here = pascal(visit["barometer"], 0) if "barometer" in visit else air
                clock(where, visit, readings, movements)
                for entry in visit["attendance"]:
                    for other_from, other_to, other in busy.get(entry["by"], []):
                        if entry["from"] < other_to and other_from < entry["to"]:
                            fault(where, f"{entry['by']} is also at {other}")
                    busy.setdefault(entry["by"], []).append((entry["from"], entry["to"], where))
                for test in readings.get("pressure-test", []):
                    nitrogen(where, test, here)
                    plates = [s["most"] for c in system["circuit"] if c["id"] == test.get("circuit", circuits[0]) for s in c["sections"] if test.get("section") in (None, s["id"])]
                    if "start" in test and max(pascal(test[k]["pressure"], 0) for k in ("start", "end")) > min(pascal(p, 0) for p in plates):
                        fault(where, f"{test['id']} is above the plate")
                for reading in readings.get("operating", []):
                    force = in_force(system, reading.get("circuit", circuits[0]), reading["at"].date())
                    saturation(where, reading, FLUIDS[force["refrigerant"]], here, ledger)
                for movement in movements:
                    circuit = movement.get("circuit", circuits[0])
                    force = in_force(system, circuit, movement["at"].date())
                    gas = movement.get("refrigerant") or next(c["refrigerant"] for c in book["cylinder"] if c["id"] == movement["cylinder"])
                    if gas != force["refrigerant"]:
                        fault(where, f"{gas} in a circuit on {force['refrigerant']}")
                    mass = kilograms(movement["mass"]) if "mass" in movement else abs(kilograms(movement["after"]) - kilograms(movement["before"]))
                    sign = 1 if movement["kind"] == "charged" else -1
                    held[circuit] += sign * mass
                    if ledger:
                        print(f"  {movement['at']:%Y-%m-%d %H:%M} {circuit} {movement['kind']:16} {sign * mass:+7.2f} kg ({sign * mass / POUND:+7.2f} lb), sum of the book {held[circuit]:+7.2f} kg ({held[circuit] / POUND:+7.2f} lb)")
    cylinders(book, everything, ledger)
    for line in faults:
        print("impossible:", line)
    print(f"{len(faults)} impossible things in the demo book")
    return 1 if faults else 0


if __name__ == "__main__":
    folders = [Path(argument) for argument in sys.argv[1:] if argument != "--ledger"]
    sys.exit(main(folders[0] if folders else BOOK, "--ledger" in sys.argv))
