# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
assumed = assumed: { $reason }
result-of = result of
half-width = half width of the interval
