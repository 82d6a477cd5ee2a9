"""Reads and fits a log with numpy, beside `cargo bench --bench log` on the same file.

    RIMEBOOK_LOG=log.csv cargo bench --no-default-features --bench log
    python tests/outside/log_numpy.py log.csv

Prints seconds for reading and for the fit (ideal gas; the columns of the program's own fit otherwise), and the
peak of memory. Needs only numpy. It shares no code with src/.
"""

import resource
import sys
import time

import numpy

start = time.perf_counter()
data = numpy.loadtxt(sys.argv[1], delimiter=",", skiprows=1)
read = time.perf_counter()
seconds, pressure, temperature = data[:, 0], data[:, 1] * 1e5 + 101325.0, data[:, 2] + 273.15
ratio = temperature / temperature[0]
share = seconds / seconds[-1]
columns = numpy.column_stack(
    [ratio, -ratio * share, temperature - temperature.mean(), numpy.gradient(temperature, seconds)]
)
found = numpy.linalg.lstsq(columns, pressure, rcond=None)[0]
fitted = time.perf_counter()
peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
print(f"rows {len(seconds)}  lost {found[1]:.0f} Pa")
print(f"read {read - start:.2f} s  fit {fitted - read:.2f} s  peak {peak:.0f} MB")
