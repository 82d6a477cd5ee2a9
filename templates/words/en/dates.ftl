# Dates, counts and lists.

date-day = { $day } { $month } { $year }
date-day-month = { $day } { $month }
date-two-days = { $first } and { $to }
date-days-of-a-month = { $first } to { $to }
date-two-days-of-two-months = { $from } and { $to }
date-from-to = { $from } to { $to }
date-moment = { $day }, { $clock }
and-list = { $head } and { $last }
spelled-counts = no|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve
count = { SPELLED($count) }
unit-year = yr
unit-day = day
unit-days = days
unit-standard = std

month-january = January
month-february = February
month-march = March
month-april = April
month-may = May
month-june = June
month-july = July
month-august = August
month-september = September
month-october = October
month-november = November
month-december = December
