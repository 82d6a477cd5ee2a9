# Situación de la instalación según las normas vigentes, y lo que piden.

because = { $rule }, { $source }
because-own-date = fecha fijada por el técnico; { $rule }, { $source }
check-every = { $source }: cada { $months } meses
inspections-until = { $source }: { $quarterly ->
    [yes] cada tres meses, hasta que cuatro trimestres seguidos no superen el umbral
   *[no] después cada año, hasta que la tasa de fuga haya permanecido un año en el umbral o por debajo
}
not-before-hours = no antes de { $hours } h de funcionamiento
report-loss = Declarar la pérdida del { $percent } % de la carga completa en { $year }
class-with-50-lb = { $class } con 50 lb o más (82.157(a))
legal-coverage = { $count ->
    [0] La instalación
    [1] Circuito { $circuits }
   *[other] Circuitos { $circuits }
}: { $standing ->
    [covered] { $count ->
        [0] sujeta a la norma
        [1] sujeto a la norma
       *[other] sujetos a la norma
    }
    [undecided] caso dudoso
   *[other] { $count ->
        [0] no sujeta a la norma
        [1] no sujeto a la norma
       *[other] no sujetos a la norma
    }
}; { $why }.
legal-charge = Carga completa { $charge }{ $count ->
    [0] .
    [1] .
   *[other] { " " }cada uno.
}
legal-rate-own-way = La norma cuenta a su manera, con sus propios días y con lo que se perdió al trabajar; por eso puede diferir de la pérdida al año del balance.
legal-rate-without-category = { $circuit ->
    [none] La instalación
   *[other] Circuito { $circuit }
}: tasa de fuga { $rate }; no hay categoría anotada, de modo que no puede indicarse ningún umbral.
legal-rate-not-over = { $circuit ->
    [none] La instalación
   *[other] Circuito { $circuit }
}: tasa de fuga { $rate } ({ $method ->
    [annualizing] método de anualización
   *[rolling] método de la media móvil
}); umbral { $trigger } % para { $category }: no superado.
legal-rate-over = { $circuit ->
    [none] La instalación
   *[other] Circuito { $circuit }
}: tasa de fuga { $rate } ({ $method ->
    [annualizing] método de anualización
   *[rolling] método de la media móvil
}); umbral { $trigger } % para { $category }: superado, lo que exige reparar en { $days } días desde la adición, o en { $shutdown } con parada de un proceso industrial ({ $source }); { $extensions }.
legal-check-every = Control de fugas cada { $months } meses.
legal-detection-there = Un sistema de detección de fugas es obligatorio y está instalado; se comprueba cada 12 meses.
legal-detection-missing = Un sistema de detección de fugas es obligatorio; no hay ninguno anotado.
legal-automatic-detection = Se pide un sistema automático de detección de fugas si la instalación entró en servicio en 2017 o después: { $source }, verificar.
legal-duty-done = { $when ->
    [since] { $what }, abierto desde el { $by }: hecho el { $day }.
    [late] { $what }, con plazo hasta el { $by }: hecho con retraso, el { $day }.
   *[in-time] { $what }, con plazo hasta el { $by }: hecho el { $day }.
}
legal-records-kept = Los registros se conservan { $years } años ({ $source }).
next-none = Según estas notas no consta ningún plazo legal; acuerde uno con la empresa.
next-open-since = pendiente desde el { $day }
next-was-due = con plazo vencido el { $day }
next-by = a más tardar el { $day }
next-what = { $count ->
    [0] { $what }
    [1] { $what } (circuito { $circuits })
   *[other] { $what } (circuitos { $circuits })
}
next-searched-in-part = Se ha buscado desde entonces, pero según las notas no en todas las partes visibles y accesibles, que es lo que exige un control de fugas
covered-84-not-said = 15 lb o más de una sustancia regulada, o de un sustituto con PCG superior a 53 (84.106(a)); la climatización residencial y comercial ligera queda excluida, y las notas no dicen si esta lo es
