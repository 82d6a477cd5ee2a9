"""Reads the calendar of `rimebook due` with the PyPI package icalendar and looks at every event.

    pip install icalendar
    python tests/outside/check_calendar.py target/release/rimebook jobs-example
"""

import datetime
import subprocess
import sys

import icalendar


def main(program: str, book: str) -> None:
    line = [program, "due", book, "--on", "2026-05-25", "--within", "400 days"]
    run = subprocess.run(line + ["--format", "calendar"], capture_output=True)
    assert run.returncode == 3, run
    assert b"\n" not in run.stdout.replace(b"\r\n", b""), "lines end in CRLF"
    assert all(len(part) <= 75 for part in run.stdout.split(b"\r\n")), "75 octets"
    calendar = icalendar.Calendar.from_ical(run.stdout)
    assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
    events = list(calendar.walk("VEVENT"))
    assert events and not any(event.errors for event in events)
    names = set()
    for event in events:
        start, end = event.decoded("DTSTART"), event.decoded("DTEND")
        assert type(start) is datetime.date, "a whole day"
        assert end - start == datetime.timedelta(days=1)
        assert event.decoded("DTSTAMP").tzinfo is not None
        assert event["SUMMARY"] and event["LOCATION"] and event["DESCRIPTION"]
        names.add(str(event["UID"]))
    assert len(names) == len(events), "each event has its own name"
    starts = [event.decoded("DTSTART") for event in events]
    assert starts == sorted(starts), "soonest first"
    print(f"{len(events)} events read")


if __name__ == "__main__":
    main(*sys.argv[1:3])
