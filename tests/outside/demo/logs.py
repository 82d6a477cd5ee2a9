"""Writes the logs of the demo book: three vacuum rises and one nitrogen hold, as gauges and loggers would have them.

Usage: python logs.py
Shapes of the rises: constant inflow, levelling evaporation, weak outgassing. The hold keeps the nitrogen's density
(CoolProp) and lets its temperature swing through a night.
"""

from datetime import datetime, timedelta
from pathlib import Path

import numpy as np
from CoolProp.CoolProp import PropsSI

BOOK = Path(__file__).resolve().parents[3] / "jobs-example"


def write(name, header, rows):
    path = BOOK / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
    print(f"{name}: {len(rows)} rows")


def wet_rise():
    """Water in 161 L: from 390 micron, levelling near 2800 micron; a reading every 30 s for half an hour."""
    random = np.random.default_rng(11)
    seconds = np.arange(0, 1801, 30)
    micron = 390 + 2420 * (1 - np.exp(-seconds / 400))
    micron = micron * (1 + random.normal(0, 0.003, len(seconds)))
    write(
        "brackwater/flake-ice-1/2025-02-18/rise-1.csv",
        "t_s,p_micron",
        [f"{t},{p:.0f}" for t, p in zip(seconds, micron)],
    )


def leaking_rise():
    """Air drawn in at a steady 24 micron a minute for 25 minutes."""
    random = np.random.default_rng(12)
    minutes = np.arange(0, 25.01, 0.5)
    micron = 310 + 24.0 * minutes + random.normal(0, 1.5, len(minutes))
    write(
        "dunmarrow/process-chiller-1/2026-05-19/rise-1.csv",
        "elapsed [min],vacuum [micron]",
        [f"{t:.1f},{p:.0f}" for t, p in zip(minutes, micron)],
    )


def quiet_rises():
    """Dry and tight after a night of pumping: weak outgassing that dies away."""
    random = np.random.default_rng(13)
    minutes = np.arange(0, 30.01, 0.5)
    pascal = 28.0 + 7.5 * (1 - np.exp(-minutes / 9)) + random.normal(0, 0.08, len(minutes))
    write(
        "brackwater/flake-ice-1/2025-10-13/rise-a.csv",
        "t_min,p_Pa",
        [f"{t:.1f},{p:.1f}" for t, p in zip(minutes, pascal)],
    )
    seconds = np.arange(0, 1801, 30)
    micron = 195 + 62 * (1 - np.exp(-seconds / 500)) + random.normal(0, 0.6, len(seconds))
    write(
        "brackwater/flake-ice-1/2026-06-17/rise-1.csv",
        "t_s,p_micron",
        [f"{t},{p:.0f}" for t, p in zip(seconds, micron)],
    )


def overnight_hold():
    """Nitrogen at 17.60 bar g and 19.2 °C, every 10 minutes for 23.5 hours; nothing leaks."""
    random = np.random.default_rng(14)
    hours = np.arange(0, 23.51, 1 / 6)
    begin = datetime(2025, 10, 13, 17, 30)
    clock = 17.5 + hours

    def hall(clock):
        return 17.8 + 1.6 * np.cos((clock - 16.5) / 24 * 2 * np.pi) - 0.004 * (clock - 17.5)

    pipe = hall(clock)
    gas = hall(clock - 0.4)
    shift = 19.2 - pipe[0]
    pipe, gas = pipe + shift, gas + shift
    barometer = 1.016e5 - 12.0 * hours
    density = PropsSI("D", "P", 17.60e5 + barometer[0], "T", gas[0] + 273.15, "Nitrogen")
    pressure = np.array([PropsSI("P", "D", density, "T", t + 273.15, "Nitrogen") for t in gas]) - barometer
    pressure = pressure / 1e5 + random.normal(0, 0.003, len(hours))
    pipe = pipe + random.normal(0, 0.04, len(hours))
    rows = [
        f"{(begin + timedelta(minutes=10 * k)).strftime('%Y-%m-%dT%H:%M')},{p:.2f},{t:.1f}"
        for k, (p, t) in enumerate(zip(pressure, pipe))
    ]
    write("brackwater/flake-ice-1/2025-10-13/hold-a.csv", "time,p_bar_g,T_C", rows)


if __name__ == "__main__":
    wet_rise()
    leaking_rise()
    quiet_rises()
    overnight_hold()
