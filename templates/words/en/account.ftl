# The refrigerant account and the leak rates.

account-net = { $circuit ->
    [none] Net
   *[other] Net, circuit { $circuit }
}
account-loss-per-year = { $circuit ->
    [none] Loss per year
   *[other] Loss per year, circuit { $circuit }
}
account-missing = { $circuit ->
    [none] Missing in all
   *[other] Missing in all, circuit { $circuit }
}
account-at-least = { $least ->
    [yes] at least { $figure }
   *[no] { $figure }
}
account-recovered = { $circuit ->
    [none] { $refrigerant } recovered
   *[other] { $refrigerant } recovered, circuit { $circuit }
}
account-less-than-full = { $circuit ->
    [none] Missing of the full charge
   *[other] Missing of the full charge, circuit { $circuit }
}
account-recovered-co2e = { $circuit ->
    [none] CO₂ equivalent of what was recovered
   *[other] CO₂ equivalent of what was recovered, circuit { $circuit }
}
account-of-full-charge = { $least ->
    [yes] at least { $share }
   *[no] { $share }
} of the full charge{ $since ->
    [none] { "" }
   *[other] , if all of it was lost since { $since }
}
account-charged-to = { $movement }, { $full ->
    [yes] { $to }
   *[no] not to full
}
account-sum = net
account-movements = { $circuit ->
    [none] Movements
   *[other] Circuit { $circuit }
}
account-signs = In is positive, out is negative. What was recovered and charged back is no loss.
account-nothing-moved = No refrigerant was moved.
account-recovered-before = recovered before
account-cylinders = Cylinders
account-gross = Scale readings of cylinder and gas together.
account-circuit = { $circuit ->
    [none] The system
   *[other] Circuit { $circuit }
}
account-earlier-record = earlier record
account-this-book = this book
account-added-before = Refrigerant added before (charged less recovered)
account-added-note = What was lost while working is in it; the net of an account leaves that out. A change of refrigerant is not counted.
account-complete-since = Complete only since { $day }.
head-when = When
head-movement = Movement
head-why = Why
head-cylinder = Cylinder
head-mass = Mass, { $unit }
head-refrigerant = Refrigerant
head-origin-or-destination = Origin or destination
head-before = Before, { $unit }
head-after = After, { $unit }
head-circuit = Circuit
head-from-record = From
head-added = Added, { $unit }
