# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
assumed = assumed: { $reason }
result-of = result of
half-width = half width of the interval
workings-of-account = Refrigerant account
workings-of-circuit = Refrigerant account, circuit { $id }
workings-of-pressure-test = Pressure test { $id }
workings-of-vacuum-test = Vacuum test { $id }
workings-of-readings = Operating readings
workings-of-room = The room against its limits
