# El anexo de cálculos, y lo que dicen los cálculos.

days = { $days ->
    [one] { $days } día
   *[other] { $days } días
}
assumed = supuesto: { $reason }
result-of = resultado de
half-width = ± es la semianchura del intervalo
workings-of-account = Balance de refrigerante
workings-of-circuit = Balance de refrigerante, circuito { $id }
workings-of-pressure-test = Ensayo de presión { $id }
workings-of-vacuum-test = Ensayo de vacío { $id }
workings-of-readings = Lecturas en marcha
workings-of-room = El local y sus límites
days-from-to = de { $from } a { $to } días
origin-gwp = { $set }: { $shares }
origin-saturation = { $refrigerant }: según { $source }
title-net-addition = { $circuit ->
    [none] Adición neta
   *[other] Adición neta, circuito { $circuit }
}
title-full-charge-co2e = { $circuit ->
    [none] Equivalente de CO₂ de la carga completa
   *[other] Equivalente de CO₂ de la carga completa, circuito { $circuit }
}
title-loss-co2e = { $circuit ->
    [none] Equivalente de CO₂ de lo perdido
   *[other] Equivalente de CO₂ de lo perdido, circuito { $circuit }
}
title-lost-in-year = { $circuit ->
    [none] Añadido en { $year }, en porcentaje de la carga completa
   *[other] Añadido en { $year }, en porcentaje de la carga completa, circuito { $circuit }
}
title-missing = { $circuit ->
    [none] Faltaba en total
   *[other] Faltaba en total, circuito { $circuit }
}
title-missing-co2e = { $circuit ->
    [none] Equivalente de CO₂ de lo que faltaba en total
   *[other] Equivalente de CO₂ de lo que faltaba en total, circuito { $circuit }
}
title-recovered = { $circuit ->
    [none] Recuperado para el cambio de refrigerante
   *[other] Recuperado para el cambio de refrigerante, circuito { $circuit }
}
title-less-than-full = { $circuit ->
    [none] Faltaba de la carga completa
   *[other] Faltaba de la carga completa, circuito { $circuit }
}
title-recovered-co2e = { $circuit ->
    [none] Equivalente de CO₂ de lo recuperado
   *[other] Equivalente de CO₂ de lo recuperado, circuito { $circuit }
}
title-loss-per-year = { $circuit ->
    [none] Pérdida al año
   *[other] Pérdida al año, circuito { $circuit }
}
title-leak-rate = { $circuit ->
    [none] Tasa de fuga según { $rules }
   *[other] Tasa de fuga según { $rules }, circuito { $circuit }
}
title-leaks-explained = { $circuit ->
    [none] Lo que las fugas encontradas explican de la pérdida
   *[other] Lo que las fugas encontradas explican de la pérdida, circuito { $circuit }
}
title-room-concentration = Concentración en el local { $room }
title-quarter-flammable-limit = Un cuarto del límite inferior de inflamabilidad de { $refrigerant }
note-apart-from-loss = Los movimientos por primera carga, temporada, cambio de refrigerante o retirada de servicio están en esta suma; en la tasa de fuga no cuentan como pérdida.
note-uncertainty-written = Una incertidumbre escrita con ± se toma con un factor de cobertura de 2.
note-scale-not-known = No está anotada la exactitud de una báscula, o no se nombra ninguna: para sus lecturas en la incertidumbre solo entra la mitad de la última cifra.
note-not-weighed = No se conoce la incertidumbre de una masa que no se pesó antes y después.
note-from-installation = No hay ninguna carga anotada antes de esta pérdida: los días se cuentan desde el montaje, cuando se pesó la carga completa. Si entretanto se añadió refrigerante sin anotarlo, se perdió más que esto.
note-first-calculation = Primer cálculo según esta norma: lo añadido cuenta como la pérdida de 365 días, diga lo que diga el calendario.
note-annualized-at-most = Pasaron { $days } días y la norma cuenta 365 como máximo: lo añadido cuenta como la pérdida de un año.
note-annualized = { $days ->
    [one] Si la pérdida siguiera como en este { $days } día, esta parte de la carga completa se perdería en un año. No dice cuándo ocurrió la pérdida dentro de él.
   *[other] Si la pérdida siguiera como en estos { $days } días, esta parte de la carga completa se perdería en un año. No dice cuándo ocurrió la pérdida dentro de ellos.
}
note-window = { $since ->
    [verification] El periodo son los días desde que una verificación de seguimiento mostró reparadas todas las fugas identificadas. No se extrapola a un año.
    [rule] El periodo son los días desde el primer día de la propia norma. No se extrapola a un año.
   *[year] El periodo son los últimos 365 días. No se extrapola a un año.
}
note-not-to-full = El circuito no se cargó por completo, por lo que pudo perderse más.
note-not-known-full-before = No se sabe si el circuito estaba lleno tras la adición anterior.
note-loss-over-days = { $days ->
    [one] Pérdida en { $days } día, llevada a 365.
   *[other] Pérdida en { $days } días, llevada a 365.
}
note-destroyed = Lo purgado y destruido al 98 % o más no se cuenta (40 CFR 82.157(k)).
note-beyond-season = Se cargó para la temporada más de lo que se había retirado para ella en los 12 meses anteriores. La definición de variación estacional tal como está escrita (40 CFR 82.152) no cubre eso; lo que se añadió de más se cuenta aquí.
note-full-charge-as-noted = La carga completa se toma como está anotada: la incertidumbre es solo la de las pesadas.
note-volumes-summed = V es la suma de los volúmenes indicados.
note-year-not-complete = Estas notas no recogen todos los movimientos de este año.
note-leak-may-have-begun = Una fuga pudo empezar en cualquier momento desde la carga anterior a la pérdida, salvo que se viera antes. Se supone que mantuvo el tamaño con que se midió.
note-loss-not-known-well = La pérdida no se conoce lo bastante bien para decir si quedan otras fugas: hace falta una carga completa por peso al principio y al final.
note-gwp-from-memory = Un PCG (GWP) de esta suma se cita de memoria: verifíquese antes de confiar en él.
note-gwp-left-out = Se deja fuera un componente sin PCG (GWP) publicado, como dice 40 CFR 84.64(c).
note-resolution = La incertidumbre es la de las cifras escritas, o lo que sigue a ±; no incluye la exactitud del manómetro ni del termómetro.
note-glide = A esta presión { $refrigerant } hierve con un deslizamiento de { $glide } K: el recalentamiento se cuenta desde el punto de rocío, el subenfriamiento desde el punto de burbuja.
