# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
assumed = assumed: { $reason }
result-of = result of
half-width = ± is half the width of the interval
workings-of-account = Refrigerant account
workings-of-circuit = Refrigerant account, circuit { $id }
workings-of-pressure-test = Pressure test { $id }
workings-of-vacuum-test = Vacuum test { $id }
workings-of-readings = Operating readings
workings-of-room = The room against its limits
days-from-to = { $from } to { $to } days
origin-gwp = { $set }: { $shares }
origin-saturation = { $refrigerant }: { $source }
title-net-addition = { $circuit ->
    [none] Net addition
   *[other] Net addition, circuit { $circuit }
}
title-full-charge-co2e = { $circuit ->
    [none] CO₂ equivalent of the full charge
   *[other] CO₂ equivalent of the full charge, circuit { $circuit }
}
title-loss-co2e = { $circuit ->
    [none] CO₂ equivalent of what had been lost
   *[other] CO₂ equivalent of what had been lost, circuit { $circuit }
}
title-lost-in-year = { $circuit ->
    [none] Added in { $year }, in percent of the full charge
   *[other] Added in { $year }, in percent of the full charge, circuit { $circuit }
}
title-missing = { $circuit ->
    [none] Missing in all
   *[other] Missing in all, circuit { $circuit }
}
title-missing-co2e = { $circuit ->
    [none] CO₂ equivalent of what was missing in all
   *[other] CO₂ equivalent of what was missing in all, circuit { $circuit }
}
title-recovered = { $circuit ->
    [none] Recovered for the change of refrigerant
   *[other] Recovered for the change of refrigerant, circuit { $circuit }
}
title-less-than-full = { $circuit ->
    [none] Missing of the full charge
   *[other] Missing of the full charge, circuit { $circuit }
}
title-recovered-co2e = { $circuit ->
    [none] CO₂ equivalent of what was recovered
   *[other] CO₂ equivalent of what was recovered, circuit { $circuit }
}
title-loss-per-year = { $circuit ->
    [none] Loss per year
   *[other] Loss per year, circuit { $circuit }
}
title-leak-rate = { $circuit ->
    [none] Leak rate by { $rules }
   *[other] Leak rate by { $rules }, circuit { $circuit }
}
title-leaks-explained = { $circuit ->
    [none] What the leaks found explain of the loss
   *[other] What the leaks found explain of the loss, circuit { $circuit }
}
title-room-concentration = Concentration in room { $room }
title-quarter-flammable-limit = A quarter of the lower flammable limit of { $refrigerant }
note-apart-from-loss = Movements for installation, season, retrofit or taking out of use are in this sum; they are not counted as loss in the leak rate.
note-uncertainty-written = An uncertainty written with ± is taken with a coverage factor of 2.
note-scale-not-known = The accuracy of a scale is not noted, or no scale is named: for its readings only half the last digit is in the uncertainty.
note-not-weighed = The uncertainty of a mass that was not weighed before and after is not known.
note-from-installation = No charge is noted before this loss: the days are counted from the installation, when the full charge was weighed in. If refrigerant was added in between and not noted, more was lost than this.
note-first-calculation = First calculation under this rule: what was added counts as the loss of 365 days, whatever the calendar says.
note-annualized-at-most = { $days } days passed, and the rule counts at most 365: what was added counts as the loss of one year.
note-annualized = { $days ->
    [one] If the loss went on as it was over this { $days } day, this share of the full charge would be lost in a year. It says nothing about when the loss happened within it.
   *[other] If the loss went on as it was over these { $days } days, this share of the full charge would be lost in a year. It says nothing about when the loss happened within them.
}
note-window = { $since ->
    [verification] The window is the days since a follow-up verification showed all identified leaks repaired. It is not scaled up to a year.
    [rule] The window is the days since the rule's own first day. It is not scaled up to a year.
   *[year] The window is the last 365 days. It is not scaled up to a year.
}
note-not-to-full = The circuit was not charged to full, so that more may have been lost.
note-not-known-full-before = It is not known whether the circuit was full after the addition before.
note-loss-over-days = { $days ->
    [one] Loss over { $days } day, scaled to 365.
   *[other] Loss over { $days } days, scaled to 365.
}
note-destroyed = What was purged and destroyed to 98 % or more is not counted (40 CFR 82.157(k)).
note-beyond-season = More was charged for the season than was taken out for it in the 12 months before. The definition of a seasonal variance as written (40 CFR 82.152) does not cover that; what was put in beyond it is counted here.
note-full-charge-as-noted = The full charge is taken as it is noted: the uncertainty is that of the weighings alone.
note-volumes-summed = V is the sum of the volumes listed.
note-year-not-complete = Not every movement of this year is known to this book.
note-leak-may-have-begun = A leak may have begun at any time since the charge before the loss, unless it was seen earlier. That it kept the size it was measured at is assumed.
note-loss-not-known-well = The loss is not known well enough to say whether other leaks remain: that takes a full charge by weight at both ends.
note-gwp-from-memory = A GWP in this sum is from memory: verify before relying on it.
note-gwp-left-out = A constituent without a listed GWP is left out, as 40 CFR 84.64(c) says.
note-resolution = The uncertainty is that of the digits written, or what stands behind ±; the accuracy of gauge and thermometer is not in it.
note-glide = At this pressure { $refrigerant } boils over a glide of { $glide } K: superheat counts from the dew point, subcooling from the bubble point.
