# Dates, nombres, listes.

date-day = { $day ->
    [1] 1er
   *[other] { $day }
} { $month } { $year }
date-day-month = { $day ->
    [1] 1er
   *[other] { $day }
} { $month }
date-two-days = { $first ->
    [1] 1er
   *[other] { $first }
} et { $to }
date-days-of-a-month = { $first ->
    [1] 1er
   *[other] { $first }
} au { $to }
date-two-days-of-two-months = { $from } et { $to }
date-from-to = { $from } au { $to }
date-moment = { $day }, { $clock }
and-list = { $head } et { $last }
# À partir de deux, les nombres en lettres ne s’accordent pas ; pour un, chaque phrase a sa forme.
spelled-counts = aucun|un|deux|trois|quatre|cinq|six|sept|huit|neuf|dix|onze|douze
count = { SPELLED($count) }
unit-year = an
unit-day = jour
unit-days = jours
unit-standard = norm.

month-january = janvier
month-february = février
month-march = mars
month-april = avril
month-may = mai
month-june = juin
month-july = juillet
month-august = août
month-september = septembre
month-october = octobre
month-november = novembre
month-december = décembre
