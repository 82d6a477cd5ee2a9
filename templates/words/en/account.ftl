# The refrigerant account and the leak rates.

account-net = { $circuit ->
    [none] Net
   *[other] Net, circuit { $circuit }
}
account-loss-per-year = { $circuit ->
    [none] Loss per year
   *[other] Loss per year, circuit { $circuit }
}
account-of-full-charge = { $share } of the full charge
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
account-added-before = Refrigerant added before, net of each job
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
