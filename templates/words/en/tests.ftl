# Pressure and vacuum tests: verdicts, reasons, charts, workings.

# Heads and facts of a test.

pressure-test-heading = Pressure test { $test } of { $part }
vacuum-test-heading = Vacuum test { $test } of { $part }
test-part-whole = { $circuit ->
    [none] the whole circuit
   *[other] the whole of circuit { $circuit }
}
test-part-section = { $about ->
    [none] section { $section }
   *[other] { $about } (section { $section })
}{ $circuit ->
    [none] {""}
   *[other] {" "}of circuit { $circuit }
}
test-reading = { $moment }: { $pressure }{ $temperature ->
    [none] {""}
   *[other] , { $temperature }
}
test-gas = Gas
test-start = Start
test-end = End
test-held = Held
test-highest-allowable = Highest allowable
test-gauge = Gauge
test-limit-asked = Limit asked for
test-isolated = Isolated
test-watched = Watched
test-warmest-pipe = Warmest pipe
test-leak-limit = Leak limit

# Results of a test.

result-expected = Expected at the end
result-lost = Lost beyond temperature
result-mean-leak = Mean leak
result-largest-leak = Largest leak left possible
result-as-nitrogen = As nitrogen
result-smallest-shown = Smallest it could have shown
result-mean-rise = Mean rise, leak and moisture together
result-late-rise = Rise of the last third
result-smallest-leak = Smallest leak that it can be
result-as-air = As air coming in
result-water = Water alone can reach

# Charts.

chart-pressure-gauge = Pressure (gauge)
chart-pressure-absolute = Pressure (absolute)
chart-time-since-start = Time since the start
chart-time-since-isolation = Time since isolation
chart-measured = measured
chart-corrected = corrected to the first temperature
chart-alt-corrected = Corrected to the temperature at the start: from { $first } to { $last }.
chart-late-slope = slope of the last third
chart-largest-leak = largest leak left possible, alone
chart-limit = { $by ->
    [none] limit, { $limit }
   *[other] { $by }’s limit, { $limit }
}
chart-alt = { $name } over { $time }: from { $first } at the start to { $last } at the end{ $limit ->
    [none] {""}
   *[other] ; { $limit }
}.

# Uncertainty budget of a pressure test.

budget-title = What makes the pressure lost uncertain
budget-contribution = Contribution
budget-standard-uncertainty = Standard uncertainty, { $unit }
budget-share = Share of variance
budget-from = From
budget-together = All together
budget-root = root of the sum of squares
budget-gauge-start = Gauge at the start
budget-gauge-end = Gauge at the end
budget-thermometer = Thermometer, 0.3 K at each end
budget-lag = Gas behind the pipe, 0.7 K at each end
budget-not-followed = 10 % of the change of temperature not followed
budget-air = Change of the air pressure, 5 hPa at most
budget-scatter = Scatter about the fit, with its autocorrelation
budget-share-followed = Share of the warming that the gas followed, as fitted
budget-step = Step of the gauge
help-temperature = Temperature makes up { $share } of the variance: to show smaller leaks, log a whole day at a steadier temperature{ $finer ->
    [little] ; a finer gauge would gain little
   *[some] {""}
}.
help-scatter = What the fit of the log leaves over makes up { $share } of the variance: to show smaller leaks, shade the pipe and the thermometer, and keep doors and fans as they are{ $finer ->
    [little] ; a finer gauge would gain little
   *[some] {""}
}.
help-gauge = The gauge makes up { $share } of the variance: to show smaller leaks, read a finer gauge, or hold longer.
help-air = The pressure of the air makes up { $share } of the variance: to show smaller leaks, read a barometer at both ends, or an absolute gauge{ $finer ->
    [little] ; a finer gauge would gain little
   *[some] {""}
}.

# What a pressure test shows, in a sentence and in a few words.

hold-nothing-larger = Nothing larger than { $size } was shown.
hold-nothing-larger-short = Nothing larger than { $size }
hold-leak = More pressure was lost than temperature and readings explain: it leaks.
hold-leak-short = Pressure was lost
hold-inconclusive = The test does not decide.
hold-inconclusive-short = Not decided
hold-no-size = The pressure held within its uncertainty; no leak size can be stated without the volume.
hold-no-size-short = Pressure held; no size can be stated
hold-strength = Strength test: it says nothing about small leaks.
hold-strength-short = Strength test only

# Why a pressure test does not decide, and what would settle it.

hold-reason-no-temperature = The temperature was not read at both ends, so that a change of pressure cannot be told from warming or cooling. To settle it: read the pipe's temperature with each pressure, or log it.
hold-reason-nitrogen-only = The correction for temperature is made for nitrogen only.
hold-reason-outside-table = The readings lie outside the table of nitrogen (0.5 to 60 bar absolute, −40 to 70 °C).
hold-reason-log-short = The log is shorter than 23 hours: only its first and last rows are worked out, the rows between are drawn.
hold-reason-log-unfit = The log has too few rows, or rows outside the table of nitrogen, for a fit: only its first and last rows are worked out.
hold-reason-unsteady = The test was shorter than 23 hours and its start and end temperatures differ by more than 2 K: the gas may lag behind the pipe by more than a leak would show.
hold-settle-unsteady = To settle it: read again when the pipe is within 2 K of its temperature at the start, or log pressure and temperature for 23 hours or more.
hold-reason-rose = The pressure rose by more than the readings explain; check the thermometer's place, and whether a valve let gas in.
hold-reason-no-volume = The volume under test is not noted, so that no leak size can be stated; add it to the register or to the test.
hold-reason-coarse = What it could have shown is coarser than the limit asked for. To settle it: hold longer, at a steadier temperature, or test a smaller section.
hold-reason-near = The loss lies too near the limit asked for to call it either way. To settle it: repeat the test for longer, or go over the joints with bubbles or a detector.

# Workings of a pressure test: titles and notes.

hold-expected-title = Pressure expected at the end of the test
hold-change-title = Pressure lost beyond what temperature explains
hold-leak-title = Mean leak over the test
hold-limit-title = Largest leak that this test leaves possible
hold-smallest-title = Smallest leak that this test could have shown
hold-limit-mass-title = The same leak as mass of nitrogen at the pressure of the test
hold-note-hydrogen = Five percent of hydrogen in the nitrogen is left out of Z.
hold-note-gauge-cancels = A constant error of the gauge cancels, since both readings are of the same gauge.
hold-note-smaller = A smaller leak cannot be told from none by this test.
hold-note-gaps = The log has gaps of more than an hour; what happened in them is not seen.
hold-note-temperature-still = The temperature hardly moved, so that the log does not tell how the gas follows it; it is taken to follow.

# Whether the limit of a vacuum test was met.

vacuum-limit-met = Stayed below { $limit } for { $within }{ $by ->
    [none] {""}
   *[other] {" "}({ $by }’s limit)
}: limit met.
vacuum-limit-not-met = Did not stay below { $limit } for { $within }{ $by ->
    [none] {""}
   *[other] {" "}({ $by }’s limit)
}: limit not met.
vacuum-limit-too-short = Watched for { $watched } only; { $within } are asked for{ $by ->
    [none] {""}
   *[other] {" "}({ $by }’s limit)
}.
vacuum-no-limit = No limit of pressure is noted.

# What a vacuum test shows about a leak, and what would settle it.

vacuum-nothing-larger = Nothing larger than { $upper } was shown.
vacuum-nothing-larger-above-hold = Nothing larger than { $upper } was shown, but the vacuum was not kept: moisture, gas out of the oil, or not pumped deep enough.
vacuum-leak = It rises in a straight line, as air coming in does: between { $lower } and { $upper }.
vacuum-moisture = { $upper ->
    [none] It levels off, as moisture and gas out of the oil do; without the volume no leak size can be given. Dry and repeat.
   *[other] It levels off, as moisture and gas out of the oil do; a leak up to { $upper } may hide in it. Dry and repeat.
}
vacuum-levels-above-water = { $upper ->
    [none] It levels off above what water can reach at this temperature: not water alone, but refrigerant out of the oil, or air.
   *[other] It levels off above what water can reach at this temperature: not water alone, but refrigerant out of the oil, or air; a leak up to { $upper } may hide in it.
}
vacuum-bending = The test does not decide: it rises slower and slower, and gas given off cannot be told from a leak of up to { $upper }.
vacuum-uneven = The test does not decide: it rises now faster, now slower, which a steady leak does not do; up to { $upper } remains possible.
vacuum-coarse = The test does not decide: up to { $upper } remains possible, more than the limit asked for.
vacuum-no-size = It does not level off; without the volume no leak size can be given.
vacuum-acceptance-only = About a leak it shows no more than that.
vacuum-settle-second-fact = A rise by itself does not prove a leak. What would settle it: a pressure test with nitrogen and bubbles, or pumping for an hour more and a second rise; if the last third rises as fast again, it is air coming in, if slower, it is gas given off.
vacuum-settle-dry = What would settle it: break the vacuum with dry nitrogen, change the drier, pump again until it holds, and repeat the rise. A wet system hides a leak, so this is no clearance.
vacuum-settle-above-water = What would settle it: pump again with the oil warm, repeat the rise, and prove the joints under pressure with nitrogen and bubbles.
vacuum-settle-uneven = What would settle it: pump again, keep valves, hoses and temperature as they are, and repeat the rise. A pressure test with nitrogen shows a leak that comes and goes if it is open at that time.
vacuum-settle-coarse = What would settle it: a longer rise, a finer gauge, or a smaller part of the circuit; or a pressure test with nitrogen and bubbles.
vacuum-settle-no-size = What would settle it: note the volume under test, or prove the joints under pressure with nitrogen and bubbles.
vacuum-no-place = A vacuum test shows no place of a leak.

# Why a vacuum test shows no more.

vacuum-reason-above-water = The pressure passed what water alone can reach at the warmest part: air or refrigerant came in as well.
vacuum-reason-water-unchecked = Neither the warmest pipe nor the air was read, so that it was not checked whether water can reach this pressure.
vacuum-reason-no-volume = The volume under test is not noted, so that no leak size can be stated.
vacuum-reason-no-leak-limit = No leak limit is noted, so that the rise is held against none.
vacuum-reason-inward = { $refrigerant } boils below the pressure of the air in the cold parts of this system, so that a leak there draws air in while it runs, as in this test.
vacuum-reason-two-readings = Two readings and no log, so that the test shows only whether the limit was met: a leak, moisture and gas from the oil rise alike between two readings.
vacuum-reason-moving-temperature = The temperature moved by { $moved }, more than { $most }, so that the test shows only whether the limit was met: a rise at moving temperature shows the warmth and not the leak.
vacuum-reason-no-temperature = No temperature was logged: that it was steady is taken for granted.
vacuum-reason-short = The log is shorter than 20 minutes, so that the test shows only whether the limit was met.
vacuum-reason-few-rows = The log has fewer than 30 rows, so that the test shows only whether the limit was met.
vacuum-reason-uneven = A third of the log's time has too few rows, so that the test shows only whether the limit was met.
vacuum-reason-not-vacuum = The log goes above a tenth of an atmosphere, where a leak no longer flows in evenly, so that the test shows only whether the limit was met.
vacuum-reason-constant = The gauge showed the same value in every row, as one that is stuck or closed off does, so that the test shows only whether the limit was met.
vacuum-reason-stopped = The rise stopped from one row to the next, as at the top of a gauge's range, so that the test shows only whether the limit was met.
vacuum-reason-fell = The pressure fell, by the pump, by cooling, by a drifting gauge or into the oil, so that the test shows only whether the limit was met.

# Workings of a vacuum test: titles and notes.

vacuum-rise-title = Mean rise of the vacuum
vacuum-late-title = Rise of the last third, leak and outgassing together
vacuum-whole-title = Rise of the whole log along a straight line
vacuum-mass-title = The same leak as mass of air coming in, over a year of 365 days
vacuum-note-upper = Not in it: an error of the gauge in proportion to its reading, a leak that comes and goes, and gas taken up again by cooling oil or walls.
vacuum-note-rise = Moisture and outgassing raise the pressure like a leak does: within the uncertainty of volume and gauge, which is not worked out here, a leak alone is not larger than this, unless the system cooled during the test.
water-title = Highest pressure that water alone can reach
water-note-air = The warmest pipe was not read: taken at the temperature of the air.

# What the limit of a test means in service.

service-note-between = Viscous and molecular flow are the two ends: what the opening would let out lies between them; where, the test cannot tell.
service-note-molecular-only = Viscous flow cannot be worked out, since the viscosity of one of the gases is not held.
service-note-inwards = Not above the air outside: here a leak would let air in, not refrigerant out.
service-pressure-title = Pressure of { $refrigerant } in service
service-viscous-title = That limit in service, as vapour of { $refrigerant }, viscous flow
service-molecular-title = That limit in service, as vapour of { $refrigerant }, molecular flow
service-saturation = saturation of { $refrigerant }, CoolProp 8.0.0
service-note-no-saturation = No saturation pressure is held at 40 °C (at 20 °C on a low side), as above the critical point: the plate's highest allowable pressure stands for service.
service-note-vapour = As vapour. A leak below the level of the liquid lets out more, which is not worked out here.
service-note-year = A year has 365 days, and the pressure is taken as the same all year.
molar-mass-of = { $mass } ({ $gas })
viscosity-of = { $viscosity } ({ $gas })
