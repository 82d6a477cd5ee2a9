# Datum, Anzahl, Aufzählung.

date-day = { $day }. { $month } { $year }
date-day-month = { $day }. { $month }
date-two-days = { $first }. und { $to }
date-days-of-a-month = { $first }. bis { $to }
date-two-days-of-two-months = { $from } und { $to }
date-from-to = { $from } bis { $to }
date-moment = { $day }, { $clock } Uhr
and-list = { $head } und { $last }
# Von zwei an beugen sich die Zahlwörter nicht; für eins steht in jedem Satz eine eigene Form.
spelled-counts = kein|ein|zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn|elf|zwölf
count = { SPELLED($count) }
unit-year = a
unit-day = Tag
unit-days = Tage
unit-standard = Norm

month-january = Januar
month-february = Februar
month-march = März
month-april = April
month-may = Mai
month-june = Juni
month-july = Juli
month-august = August
month-september = September
month-october = Oktober
month-november = November
month-december = Dezember
