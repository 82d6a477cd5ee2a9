"""Writes the tables of src/refrigerant/data that are computed with CoolProp, and the random points that cargo test checks.

    python generate_refrigerants.py            (in a virtual environment made from requirements.txt; minutes)

In: substances.csv and refrigerants.csv of the same folder, which are kept by hand. Out: nitrogen_z.csv, viscosity.csv,
points.csv, saturation.csv there, and tests/points/*.csv. The same CoolProp gives the same files.
"""

import itertools
import math
import random
from pathlib import Path

import CoolProp
import CoolProp.CoolProp as CP

ROOT = Path(__file__).resolve().parents[2]
DATA = ROOT / "src" / "refrigerant" / "data"
POINTS = ROOT / "tests" / "points"

# Pure substances by their name in CoolProp; R-13B1 is not in it.
FLUIDS = {
    "R-11": "R11", "R-12": "R12", "R-13": "R13", "R-13I1": "R13I1", "R-14": "R14", "R-22": "R22", "R-23": "R23",
    "R-32": "R32", "R-113": "R113", "R-114": "R114", "R-115": "R115", "R-116": "R116", "R-123": "R123", "R-124": "R124",
    "R-125": "R125", "R-134a": "R134a", "R-141b": "R141b", "R-142b": "R142b", "R-143a": "R143a", "R-152a": "R152A",
    "R-170": "Ethane", "R-218": "R218", "R-227ea": "R227EA", "R-236fa": "R236FA", "R-245fa": "R245fa",
    "R-290": "n-Propane", "R-365mfc": "R365MFC", "R-600": "n-Butane", "R-600a": "IsoButane", "R-601": "n-Pentane",
    "R-601a": "Isopentane", "R-717": "Ammonia", "R-718": "Water", "R-744": "CarbonDioxide", "R-1130(E)": "R1130(E)",
    "R-1150": "Ethylene", "R-1224yd(Z)": "R1224YDZ", "R-1233zd(E)": "R1233zd(E)", "R-1234yf": "R1234yf",
    "R-1234ze(E)": "R1234ze(E)", "R-1270": "Propylene", "R-1336mzz(E)": "R1336mzz(E)", "R-1336mzz(Z)": "R1336mzz(Z)",
    "R-C318": "RC318", "R-E170": "DimethylEther",
}
# Blends of which CoolProp holds a model of the viscosity, as a pseudo-pure fluid.
VISCOUS_BLENDS = {"R-404A": "R404A", "R-407C": "R407C", "R-410A": "R410A", "R-507A": "R507A"}
# CoolProp's viscosity of R-12 has no answer at places near -95 degrees Celsius, and a wrong one beside them.
STUMBLING = {"R-12"}
# Gases that a part is tested with, or that come in from outside.
TEST_GASES = {"air": "Air", "argon": "Argon", "helium": "Helium", "hydrogen": "Hydrogen", "nitrogen": "Nitrogen"}
ROOM_TEMPERATURE = 293.15
# What has no normal boiling point: the temperature at which the solid turns to gas under an atmosphere, from memory.
SUBLIMES = {"R-744": 194.69}
# The Handbook's boiling points (bubble, dew in degrees Celsius): given where CoolProp holds no substance or no pair, and the
# guard of the others. A mixture model that strays further from print than this is not used.
FURTHEST_FROM_PRINT = 1.5


ATMOSPHERE = 101325.0
LOWEST_PRESSURE = 500.0
LARGEST_STEP = 3.0


def rows(path):
    lines = path.read_text(encoding="utf-8").splitlines()
    return [line.split(";") for line in lines if line and not line.startswith("#")][1:]


def handbook_boiling():
    cell = lambda text: float(text) + 273.15 if text else None
    return {row[0]: (cell(row[1]), cell(row[2])) for row in rows(POINTS / "handbook_boiling.csv")}


def refrigerants():
    """Gives (designation, [(substance, mass fraction)]) of every refrigerant held."""
    for row in rows(DATA / "refrigerants.csv"):
        parts = [part.rsplit(" ", 1) for part in row[1].split(" + ")]
        yield row[0], [(substance, float(percent) / 100) for substance, percent in parts]


class Fluid:
    """One refrigerant in CoolProp: the reference equation of state, or the mixture of them at the nominal composition."""

    def __init__(self, parts):
        names = [FLUIDS[substance] for substance, _ in parts]
        self.pure = len(parts) == 1
        self.state = self.plain = CP.AbstractState("HEOS", "&".join(names))
        if not self.pure:
            self.plain.set_mass_fractions([fraction for _, fraction in parts])
            self.state = CP.AbstractState("HEOS", "&".join(names))
            self.state.set_mass_fractions([fraction for _, fraction in parts])
            # With the phase envelope traced, the solver starts near the answer and reaches the critical region.
            try:
                self.state.build_phase_envelope("")
            except ValueError:
                self.state = self.plain
        triple = max(CP.PropsSI("Ttriple", name) for name in names) if self.pure else 0.0
        self.critical = self.critical_point()
        self.lowest = max(triple, 173.15 if self.critical[0] > 320 else 123.15)

    def critical_point(self):
        if self.pure:
            return self.state.T_critical(), self.state.p_critical()
        try:
            found = [point for point in self.plain.all_critical_points() if point.stable and 1e6 < point.p < 2e7]
            point = max(found, key=lambda point: point.T)
            return point.T, point.p
        except ValueError:
            return self.plain.T_reducing(), None

    def saturation(self, temperature, plausible=lambda found: True):
        """Gives bubble pressure, dew pressure (Pa), liquid density, vapour density (kg/m3), or None.

        The first plausible answer counts: near a difficult state one of the two solvers may fall into a false solution.
        """
        for state in (self.state, self.plain):
            try:
                found = self.both_phases(state, temperature)
            except ValueError:
                continue
            if plausible(found):
                return found
        return None

    def both_phases(self, state, temperature):
        state.update(CP.QT_INPUTS, 0, temperature)
        bubble, liquid = state.p(), state.rhomass()
        state.update(CP.QT_INPUTS, 1, temperature)
        dew, vapour = state.p(), state.rhomass()
        if self.pure:
            bubble = dew
        # A solver that fell into the trivial solution gives one phase twice; one that strayed, dew above bubble.
        if not (0 < dew <= bubble * (1 + 1e-6) and vapour * 1.3 < liquid and math.isfinite(bubble)):
            raise ValueError(f"no two phases at {temperature} K")
        return max(bubble, dew), dew, liquid, vapour

    def node(self, temperature, before):
        """Gives the node nearest a temperature where CoolProp finds the two phases, or None; `before`: the nodes so far."""

        def goes_on(place):
            if len(before) < 2:
                return lambda found: True
            (t1, b1, d1, *_), (t2, b2, d2, *_) = before[-2:]
            reach = (1 / place - 1 / t2) / (1 / t2 - 1 / t1)
            expected = [math.log(new) + reach * math.log(new / old) for old, new in ((b1, b2), (d1, d2))]
            return lambda found: all(abs(math.log(found[i]) - expected[i]) < 0.03 for i in (0, 1))

        for nudge in (0, 0.1, -0.1, 0.25, -0.25, 0.4, -0.4):
            # Two decimals are what the file holds: the other columns must belong to them.
            place = round(temperature + nudge, 2)
            found = self.saturation(place, goes_on(place))
            if found:
                return (place, *found)
        return None

    def boiling(self, quality):
        """Gives the boiling temperature at an atmosphere, or None: what has its triple point above that sublimes instead."""
        if self.pure and ATMOSPHERE < CP.PropsSI("ptriple", self.plain.fluid_names()[0]):
            return None
        for state in (self.plain, self.state):
            try:
                state.update(CP.PQ_INPUTS, ATMOSPHERE, quality)
                return state.T()
            except ValueError:
                continue
        return None

    def strays_from(self, printed):
        pairs = zip((self.boiling(0), self.boiling(1)), printed)
        return any(here and there and abs(here - there) > FURTHEST_FROM_PRINT for here, there in pairs)


def cubic(nodes, x):
    """The cubic through four (x, y): the same that the program uses, here to find nodes that stray."""
    return sum(
        y * math.prod((x - other) / (node - other) for other, _ in nodes if other != node) for node, y in nodes
    )


def table(fluid):
    """Gives the saturation nodes (temperature, bubble, dew, liquid, vapour), closer together towards the critical point."""
    found = []
    temperature, top = fluid.lowest, (0.99 if fluid.critical[1] else 0.98) * fluid.critical[0]
    while True:
        node = fluid.node(temperature, found)
        if node and node[2] >= LOWEST_PRESSURE:
            found.append(node)
        if temperature >= top:
            break
        step = min(LARGEST_STEP, max(0.5, 0.08 * (fluid.critical[0] - temperature)))
        temperature = min(temperature + step, top)
    return contiguous(without_strays(sorted(set(found))))


def without_strays(nodes):
    """Leaves out nodes that lie off the curve of their neighbours by more than 0.05 % in a pressure."""
    kept = list(nodes)
    index = 2
    while index < len(kept) - 2:
        around = [kept[index + offset] for offset in (-2, -1, 1, 2)]
        here = kept[index]
        strays = any(
            abs(math.log(here[column]) - cubic([(1 / n[0], math.log(n[column])) for n in around], 1 / here[0])) > 5e-4
            for column in (1, 2)
        )
        if strays:
            del kept[index]
        else:
            index += 1
    return kept


def contiguous(nodes):
    """Ends the table before the first gap that is too wide to bridge."""
    for index in range(1, len(nodes)):
        if nodes[index][0] - nodes[index - 1][0] > 2.2 * LARGEST_STEP:
            return nodes[:index] if index > len(nodes) / 2 else contiguous(nodes[index:])
    return nodes


class Viscosity:
    """CoolProp's model of the viscosity of one fluid, in Pa s; every answer may be None."""

    def __init__(self, designation, parts):
        name = FLUIDS.get(parts[0][0]) if len(parts) == 1 else VISCOUS_BLENDS.get(designation)
        self.state = name and CP.AbstractState("HEOS", name)

    def at(self, inputs, first, second):
        try:
            self.state.update(inputs, first, second)
            found = self.state.viscosity()
        except (AttributeError, ValueError):
            return None
        return found if 1e-6 < found < 1e-4 else None

    def of_vapour(self, temperature, density):
        return self.at(CP.DmassT_INPUTS, density, temperature)

    def thin(self):
        """As a thin gas at 20 degrees Celsius: what a mixing rule for low pressure starts from."""
        return self.of_vapour(ROOM_TEMPERATURE, 1e-6)

    def in_a_room(self):
        """At 20 degrees Celsius and an atmosphere; of what is no gas there, and where that finds nothing, as a thin gas."""
        return self.at(CP.PT_INPUTS, ATMOSPHERE, ROOM_TEMPERATURE) or self.thin()


def nitrogen_z(pressure, temperature):
    return CP.PropsSI("Z", "T", temperature, "P", pressure, "Nitrogen")



def write(path, heading, lines):
    path.parent.mkdir(exist_ok=True)
    path.write_text(heading + "".join(f"{line}\n" for line in lines), encoding="utf-8", newline="\n")


MADE_BY = f"CoolProp {CoolProp.__version__} by tests/outside/generate_refrigerants.py"


def write_nitrogen():
    pressures = [0.5e5, 1e5, 2.5e5, *(bar * 1e5 for bar in range(5, 61, 5))]
    temperatures = [233.15 + 5 * step for step in range(23)]
    lines = ["temperature-k;" + ";".join(f"{pressure:.0f}" for pressure in pressures)]
    for temperature in temperatures:
        factors = (f"{nitrogen_z(pressure, temperature):.8f}" for pressure in pressures)
        lines.append(f"{temperature:.2f};" + ";".join(factors))
    write(
        DATA / "nitrogen_z.csv",
        f"# Compressibility of nitrogen, {MADE_BY}.\n# First row: absolute pressures in Pa; then a temperature in K and its row.\n",
        lines,
    )


def nitrogen_lines(chance, number):
    """Lines of random states of nitrogen in the range of the table, straight from CoolProp."""
    for _ in range(number):
        pressure, temperature = round(chance.uniform(0.5e5, 60e5), 1), round(chance.uniform(233.15, 343.15), 3)
        yield f"{pressure:.1f};{temperature:.3f};{nitrogen_z(pressure, temperature):.9f}"


def water_lines(chance, number):
    """Lines of random vapour pressures of liquid water (IAPWS-95), straight from CoolProp."""
    for _ in range(number):
        temperature = round(chance.uniform(273.16, 373.15), 3)
        yield f"{temperature:.3f};{CP.PropsSI('P', 'T', temperature, 'Q', 0, 'Water'):.8g}"


def point_line(designation, fluid, printed):
    """A line of points.csv: normal boiling point and dew point, critical point."""
    cell = lambda value, form: "" if value is None else format(value, form)
    if fluid is None:
        source = "handbook" if printed[0] else ""
        return f"{designation};{cell(printed[0], '.2f')};{cell(printed[1], '.2f')};{source};;;"
    solid = SUBLIMES.get(designation)
    bubble, dew = (solid, solid) if solid else (fluid.boiling(0), fluid.boiling(1))
    source = "memory-high" if solid else "coolprop"
    temperature, pressure = fluid.critical
    known = pressure is not None
    return ";".join((
        designation, cell(bubble, ".3f"), cell(dew, ".3f"), source if bubble or dew else "",
        cell(temperature if known else None, ".2f"), cell(pressure, ".0f"), "coolprop" if known else "",
    ))


def viscosity_lines():
    """Lines of viscosity.csv: molar mass only of the test gases, since a refrigerant's follows from its composition."""
    cell = lambda value: "" if value is None else f"{1e6 * value:.5g}"
    for name, fluid in TEST_GASES.items():
        state = Viscosity(name, [])
        state.state = CP.AbstractState("HEOS", fluid)
        yield f"{name};{1e3 * CP.PropsSI('M', fluid):.6g};{cell(state.in_a_room())};{cell(state.thin())}"
    for designation, parts in refrigerants():
        viscosity = Viscosity(designation, parts)
        if viscosity.in_a_room():
            yield f"{designation};;{cell(viscosity.in_a_room())};{cell(viscosity.thin())}"


def table_lines(designation, fluid, nodes, viscosity):
    """Lines of saturation.csv; the dew pressure of a pure substance is its bubble pressure and is left out.

    The viscosity is left out where the model does not reach over the whole table.
    """
    thick = [viscosity.of_vapour(node[0], node[4]) for node in nodes]
    held = all(thick) and designation not in STUMBLING
    for index, (temperature, bubble, dew, liquid, vapour) in enumerate(nodes):
        name = designation if index == 0 else ""
        dew = "" if fluid.pure else f"{min(float(f'{dew:.7g}'), float(f'{bubble:.7g}')):.7g}"
        micro = f"{1e6 * thick[index]:.6g}" if held else ""
        yield f"{name};{temperature:.2f};{bubble:.7g};{dew};{liquid:.6g};{vapour:.6g};{micro}"


def random_point(fluid, nodes, chance):
    """Gives a random state inside the table, straight from CoolProp, or None where its solver finds none.

    An answer more than 1 % off the table is a false solution of the solver, not an error of the table: it is not kept. What
    the checks ask for is fifty times closer.
    """
    temperature = round(chance.uniform(nodes[0][0], nodes[-1][0]), 3)
    start = min(max(sum(node[0] < temperature for node in nodes) - 2, 0), len(nodes) - 4)
    around = nodes[start : start + 4]

    def plausible(found):
        expected = [cubic([(1 / n[0], math.log(n[column])) for n in around], 1 / temperature) for column in (1, 2)]
        return all(abs(math.log(found[i]) - expected[i]) < 0.01 for i in (0, 1))

    found = fluid.saturation(temperature, plausible)
    return found and (temperature, *found)


def random_lines(designation, fluid, nodes, number, chance, viscosity):
    points = filter(None, (random_point(fluid, nodes, chance) for _ in range(20 * number)))
    for temperature, bubble, dew, liquid, vapour in itertools.islice(points, number):
        micro = viscosity.of_vapour(temperature, vapour)
        micro = f"{1e6 * micro:.7g}" if micro else ""
        yield f"{designation};{temperature:.3f};{bubble:.8g};{dew:.8g};{liquid:.7g};{vapour:.7g};{micro}"


def main():
    chance = random.Random(20261125)
    write_nitrogen()
    write(POINTS / "nitrogen.csv", f"# Random points, {MADE_BY}.\npressure-pa;temperature-k;z\n", nitrogen_lines(chance, 400))
    write(POINTS / "water.csv", f"# Random points, {MADE_BY}.\ntemperature-k;pressure-pa\n", water_lines(random.Random(20261126), 100))
    write(
        DATA / "viscosity.csv",
        f"# Viscosity at 20 degrees Celsius, {MADE_BY}: at 101 325 Pa (of what is liquid there: as a thin gas), and as a thin gas.\n"
        "# What CoolProp holds no model of is not in the list.\n"
        "name;molar-kg-per-kmol;micro-pa-s;thin-micro-pa-s\n",
        viscosity_lines(),
    )
    points, saturation, checks = [], [], []
    print_of = handbook_boiling()
    for designation, parts in refrigerants():
        printed = print_of.get(designation, (None, None))
        try:
            fluid = Fluid(parts)
        except (KeyError, ValueError):
            print(f"{designation}: not in CoolProp")
            points.append(point_line(designation, None, printed))
            continue
        if fluid.strays_from(printed):
            print(f"{designation}: CoolProp's mixture strays from print, not used")
            points.append(point_line(designation, None, printed))
            continue
        nodes = table(fluid)
        points.append(point_line(designation, fluid, printed))
        viscosity = Viscosity(designation, parts)
        saturation += table_lines(designation, fluid, nodes, viscosity)
        checks += random_lines(designation, fluid, nodes, 12, chance, viscosity)
        reach = nodes[-1][0] / fluid.critical[0]
        print(f"{designation}: {len(nodes)} nodes, {nodes[0][0]:.1f} to {nodes[-1][0]:.1f} K, {reach:.3f} of critical", flush=True)
    write(
        DATA / "points.csv",
        f"# Normal boiling point (bubble, dew) at 101 325 Pa and critical point, {MADE_BY};\n"
        "# what CoolProp does not hold is the ASHRAE Handbook's.\n"
        "designation;bubble-k;dew-k;boiling-source;critical-k;critical-pa;critical-source\n",
        points,
    )
    write(
        DATA / "saturation.csv",
        f"# Saturation, {MADE_BY}: reference equations of state, blends as mixtures at nominal composition.\n"
        "# An empty designation is that of the line before; an empty dew pressure is the bubble pressure (pure substance).\n"
        "# An empty viscosity: CoolProp holds no model of it, or none that reaches over the table.\n"
        "designation;temperature-k;bubble-pa;dew-pa;liquid-kg-per-m3;vapour-kg-per-m3;vapour-micro-pa-s\n",
        saturation,
    )
    write(
        POINTS / "saturation.csv",
        f"# Random points, {MADE_BY}.\n"
        "designation;temperature-k;bubble-pa;dew-pa;liquid-kg-per-m3;vapour-kg-per-m3;vapour-micro-pa-s\n",
        checks,
    )


if __name__ == "__main__":
    main()
