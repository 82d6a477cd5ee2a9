# Dates in American English; all else is as in English.

date-day = { $month } { $day }, { $year }
date-day-month = { $month } { $day }
date-two-days = { $month } { $first } and { $day }, { $year }
date-days-of-a-month = { $month } { $first } to { $day }, { $year }
