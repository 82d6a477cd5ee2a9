# The history of a system or a site: its lead, tables, charts and marks.

history-kind = History
history-title = History of { $name }, as at { $day }
as-at = as at { $day }
history-site-lead = { $cures ->
    [yes] { $systems ->
        [one] One system of this site: first what needs a lasting cure, then its chapter.
       *[other] { CAPITAL(SPELLED($systems)) } systems of this site: first what needs a lasting cure, then a chapter for each.
    }
   *[no] { $systems ->
        [one] One system of this site, and its chapter.
       *[other] { CAPITAL(SPELLED($systems)) } systems of this site, with a chapter for each.
    }
}
history-nothing-came-back = By these notes no part that is there now has leaked more than once, and no known leak was left unrepaired at the last visit.
history-absence = The absence of a record is not the absence of a leak: a year without an entry is one of which nothing is noted, not one without a leak.
history-looked-at = A place that was looked at without a sign showed nothing at that visit, by the method of that visit; a smaller leak may have been there.
history-visits = { $visits ->
    [one] One visit in this book, with earlier records.
   *[other] { CAPITAL(SPELLED($visits)) } visits in this book, with earlier records.
}
history-complete-since = { $circuit ->
    [none] The record of refrigerant is complete only since { $day }.
   *[other] Circuit { $circuit }: the record of refrigerant is complete only since { $day }.
}
history-complete-unknown = { $circuit ->
    [none] The notes name no day from which the record of refrigerant is complete.
   *[other] Circuit { $circuit }: the notes name no day from which the record of refrigerant is complete.
}
history-points-note = { $cures ->
    [yes] Those that need a lasting cure come first.{ " " }
   *[no] { "" }
}Leaks are of the part that is there now; a replaced part begins anew. Days are from each repair until the place was found leaking again; of a repair that holds, until it was last looked at.
history-cures-note = A place needs a lasting cure if the part that is there now has leaked more than once, or was left leaking or repaired only for the time being.
history-systems-note = Lost is what visits of this book found missing, in all years.
history-earlier-note = Taken over from records of before this book or of others.
point-not-looked-at-then = not looked at on the last visit

# Heads of columns.
head-leaks = Leaks
head-repairs-held = Repairs held, days
head-last-looked-at = Last looked at
head-state = State
head-system = System
head-visits = Visits
head-points-leaked = Points that leaked
head-lost-co2e = Lost, t CO₂e
head-last-visit = Last visit
head-its-outcome = Its outcome
head-what = What
head-moved = Mass
head-by = By
head-told-by = Source
head-visit = Visit
head-purpose = Purpose
head-outcome = Outcome
head-year = Year
head-charged = Charged, { $unit }
head-charged-by-others = Charged by others, { $unit }
head-recovered = Recovered, { $unit }
head-recovered-by-others = Recovered by others, { $unit }
head-leaked = Leaked, { $unit }
head-rate = Rate
head-against-trigger = Against the trigger
head-tested = What was tested
head-not-larger = Not larger than
not-known = not known

# Charts and their tables.
chart-last-eight = The last eight; all stand in the table.
refrigerant-by-year = { $circuit ->
    [none] Refrigerant by year
   *[other] Refrigerant by year, circuit { $circuit }
}
refrigerant-in = Refrigerant, { $unit }
refrigerant-caption = Filled: charged. Striped: charged by others or in earlier records. White: recovered. Dashed: recovered by others.
refrigerant-alt = Bars of the refrigerant charged and recovered in each year; the numbers stand in the table below.
refrigerant-note = Leaked is what jobs had to add because it was missing, net of what they recovered; what was lost while working is not in it and stands in no column. * not every movement of the year is known.
refrigerant-missing-at-change = At the change of refrigerant in { $year }, { $missing } of the full charge of { $full } did not come out; that stands in no column.
co2e-by-year = { $circuit ->
    [none] CO₂ equivalent lost by year
   *[other] CO₂ equivalent lost by year, circuit { $circuit }
}
co2e-in = CO₂ equivalent lost, t
co2e-alt = Bars of the CO₂ equivalent lost in each year; the numbers stand in the table below.
co2e-note = Counted in the year in which it was found missing.
rate-in = % of the full charge
rate-trigger = trigger, { $trigger } %
rate-over = over { $trigger } %
rate-not-over = not over { $trigger } %
rate-alt = { $trigger ->
    [none] Bars of the rate at each addition; the numbers stand in the table below.
   *[other] Bars of the rate at each addition, with the trigger of { $trigger } % as a line; the numbers stand in the table below.
}
rate-without-category = No category is noted, so that no trigger can be named.
rate-without-rule = What was found missing, per year, as the report of that visit reckons it: where the system was not filled, or not known to be full before, the figure holds only as that report says. No rule sets a trigger for it.
test-limits = Largest leak each pressure test left possible
test-limits-in = Largest leak left possible, { $unit }
test-limits-alt = Bars of the largest leak that each pressure test left possible; the numbers stand in the table below.
test-limits-note = Tests of a day stand from left to right in the order of this table.
test-limit-of = { $circuit ->
    [none] { "" }
   *[other] circuit { $circuit },{ " " }
}{ $section ->
    [none] all sections
   *[other] section { $section }
}, test { $test }

# The points over time in words.
mark-once = { $day }: { $told }
mark-times = { $first } to { $last }: { $told }, { $times } times
mark-told-by = { $told }, { $by }
