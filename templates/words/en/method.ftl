# Method, limits, readings, rooms, the drawn circuit.

checked-air = refrigerant in the air { $amount }
checked-oxygen = oxygen { $amount }
checked-ventilated = ventilated
checked-not-ventilated = not ventilated
checked-locked-off = locked off
checked-not-locked-off = not locked off
checked-ignition = sources of ignition: { $sources }
room-machinery = Room { $room } (machinery room): the limits for occupied rooms do not apply; the local code asks for ventilation and a gas detector.
room-size-wanted = Room { $room }: { $refrigerant } is flammable or toxic and can reach this occupied room, whose size is not noted. Whether its limit would be passed is not known.
room-size-not-noted = Room { $room } (occupied): its size is not noted, so that its limit is not checked.
room-concentration = { $circuit ->
    [none] Room { $room } (occupied): if all of the system came out and mixed evenly, the air would hold { $concentration } of { $refrigerant }.
   *[other] Room { $room } (occupied): if all of circuit { $circuit } came out and mixed evenly, the air would hold { $concentration } of { $refrigerant }.
}
room-no-limit = No limit that was read in its source is held for it, so that none is compared: verify by the local code.
room-limit = { $above ->
    [yes] That is above the limit of { $limit } ({ $source }). Leave at an alarm; detection, ventilation or a smaller charge are for the local code to decide.
   *[no] That is not above the limit of { $limit } ({ $source }).
}
room-quarter = { $above ->
    [yes] It is above a quarter of the lower flammable limit, { $limit }.
   *[no] It is not above a quarter of the lower flammable limit, { $limit }.
}
room-equipped = { $has ->
    [both] As noted, ventilation: { $ventilation }; gas detector: { $detector }.
    [ventilation] As noted, ventilation: { $ventilation }.
   *[detector] As noted, gas detector: { $detector }.
}
safety-class = { $refrigerant } is of safety class { $class }.
safety-can-suffocate = It is not flammable, but it can suffocate, first in low places.
safety-can-burn = It can burn: keep sources of ignition away, ventilate, and use tools and detectors rated for it.
safety-is-toxic = It is toxic: leave the room at an alarm and enter only with breathing protection.
search-title = Searches
search-plant = plant { $state }
search-background = background { $background }
head-for = Lasted
head-method = Method
head-where = Where
head-conditions = Conditions
limit-not-all-visible = The search was not of every visible and accessible part.
limit-of-search = A search shows what its method could find at the places reached, at the pressure of that hour; a smaller leak, or one that comes and goes, may not have shown itself.
limit-of-tests = A pressure or vacuum test shows nothing larger than the size stated, for the part tested and the time it took; it does not show a place, and it does not replace a leak inspection.
work-title = Part by part
work-brazed = { $work } (brazed with nitrogen flowing)
head-part = Part
head-work = Work
used-attendance = { $from } to { $to }
used-last-checked = last checked or calibrated { $day }
used-on-day = { $day }: { $said }
used-detector-responded = { $leak ->
    [none] responded to a reference leak at { $clock }
   *[other] responded to { $leak } at { $clock }
}
used-detector-silent = { $leak ->
    [none] did not respond to a reference leak at { $clock }
   *[other] did not respond to { $leak } at { $clock }
}
reading-title = Readings of the running plant
reading-head = Reading
reading-suction-pressure = Suction pressure
reading-suction-temperature = Suction temperature
reading-discharge-pressure = Discharge pressure
reading-discharge-temperature = Discharge temperature
reading-liquid-pressure = Liquid pressure
reading-liquid-temperature = Liquid temperature
reading-air-on-condenser = Air on the condenser
reading-receiver-level = Receiver level
reading-compressor-current = Compressor current
reading-superheat = Superheat
reading-subcooling = Subcooling
reading-warm-side = Warm side
reading-above-critical = above the critical point: no subcooling
reading-sight-glass = Sight glass
reading-remark = Remark
part-compressor = compressor
part-discharge-line = discharge line
part-condenser = condenser
part-receiver = receiver
part-drier = drier
part-sight-glass = sight glass
part-solenoid-valve = solenoid valve
part-liquid-line = liquid line
part-expansion-device = expansion device
part-evaporator = evaporator
part-suction-line = suction line
schematic-caption = { $circuit ->
    [none] The system, not to scale and not every part; full lines carry the high pressure, broken ones the low. The numbers are those of the points.
   *[other] Circuit { $circuit }, not to scale and not every part; full lines carry the high pressure, broken ones the low. The numbers are those of the points.
}
schematic-not-drawn = { $evaporators ->
    [one] One more evaporator is not drawn.
   *[other] { CAPITAL(SPELLED($evaporators)) } more evaporators are not drawn.
}
schematic-points-not-drawn = { $count ->
    [one] One point is not drawn here: { $numbers }.
   *[other] Points not drawn here: { $numbers }.
}
schematic-loop = { $circuit ->
    [none] The system as a loop: { $parts }.
   *[other] Circuit { $circuit } as a loop: { $parts }.
}
schematic-point = Point { $number } at the { $part }: { $state }.
