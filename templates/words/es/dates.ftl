# Fechas, cantidades, listas.

date-day = { $day } de { $month } de { $year }
date-day-month = { $day } de { $month }
date-two-days = { $first } y { $to }
date-days-of-a-month = { $first } al { $to }
date-two-days-of-two-months = { $from } y { $to }
date-from-to = { $from } al { $to }
date-moment = { $day }, { $clock }
and-list = { $head } y { $last }
# Del dos al doce, en letras. Uno concuerda en género: cada frase lo dice por sí misma, y las tablas ponen cifras.
spelled-counts = ningún|un|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce
count = { $count }
unit-year = año
unit-day = día
unit-days = días
unit-standard = norm.

month-january = enero
month-february = febrero
month-march = marzo
month-april = abril
month-may = mayo
month-june = junio
month-july = julio
month-august = agosto
month-september = septiembre
month-october = octubre
month-november = noviembre
month-december = diciembre
