# La primera página: cabecera, resultado, datos, lo abierto, próximas fechas.

visit = Visita
the-contractor = La empresa
certificate-of-firm = certificado { $number }
certificate-of-person = certificado { $number }
certificate-with-category = certificado { $number }, categoría { $category }
signs-for-contractor = Por la empresa
signs-for-operator = Recibido por el titular
class-flammable = { $class }, inflamable
class-not-flammable = { $class }, no inflamable
plant-operator = Titular
plant-address = Dirección
plant-category = Categoría
plant-in-service-since = En servicio desde
plant-complaint = Avería comunicada
plant-air-outside = Aire exterior
plant-left = Estado al terminar
plant-back-in-normal-operation = De nuevo en servicio

outcome-repaired-proved = { $leaks ->
    [one] Una fuga encontrada y reparada, reparación comprobada.
   *[other] { CAPITAL(SPELLED($leaks)) } fugas encontradas y reparadas, todas las reparaciones comprobadas.
}
outcome-repaired-not-proved = { $leaks ->
    [one] Una fuga encontrada y reparada; la reparación no está comprobada.
   *[other] { CAPITAL(SPELLED($leaks)) } fugas encontradas y reparadas; { $proved ->
        [0] ninguna de las reparaciones está comprobada
        [one] una de las reparaciones está comprobada
       *[other] { SPELLED($proved) } de las reparaciones están comprobadas
    }.
}
outcome-partly-repaired = { CAPITAL(SPELLED($leaks)) } fugas encontradas, { $repaired ->
    [one] una reparada
   *[other] { SPELLED($repaired) } reparadas
}; el resto queda abierto.
outcome-left-open = { $leaks ->
    [one] Una fuga encontrada; queda abierta.
   *[other] { CAPITAL(SPELLED($leaks)) } fugas encontradas; quedan abiertas.
}
outcome-suspects-only = Se sospecha una fuga; no se ha localizado.
outcome-suspects-remain = { $suspects ->
    [one] Queda un punto con sospecha de fuga.
   *[other] Quedan puntos con sospecha de fuga.
}
outcome-not-found-loss-stands = Faltaba refrigerante y no se encontró la fuga.
outcome-nothing-found = Se buscó; no se encontró nada allí donde llegó la búsqueda.
outcome-repair-verified = { $repairs ->
    [one] La reparación anterior se revisó de nuevo; allí no se detectó nada.
   *[other] { CAPITAL(SPELLED($repairs)) } reparaciones anteriores se revisaron de nuevo; allí no se detectó nada.
}
outcome-gas-added = Se añadió refrigerante; la fuga no se buscó ni se reparó.
outcome-changed-from-to = La instalación se cambió de { $old } a { $new }.
outcome-changed = La instalación se cambió a otro refrigerante.
outcome-other = { $purpose }: trabajo realizado.

place-says = { $place }: { $what }
because-holding = { $place } ha tenido fuga { SPELLED($times) } veces; la última reparación lleva aguantando { $days ->
    [one] { $days } día
   *[other] { $days } días
}.
because-lost-since = Desde el { $day } se habían perdido { $least ->
    [yes] al menos { $mass }
   *[no] { $mass }
} de refrigerante { $circuit ->
    [none] de la instalación
   *[other] del circuito «{ $circuit }»
}.
because-missing-since = Faltaban { $least ->
    [yes] al menos { $mass }
   *[no] { $mass }
} de refrigerante en { $circuit ->
    [none] la instalación
   *[other] el circuito «{ $circuit }»
}. La carga anterior a esta pérdida fue el { $day }; no se sabe si la instalación quedó llena entonces.
because-lost = Se habían perdido { $least ->
    [yes] al menos { $mass }
   *[no] { $mass }
} de refrigerante { $circuit ->
    [none] de la instalación
   *[other] del circuito «{ $circuit }»
}.
because-left-open = Sin reparar: { $place }. { $answer }
because-over-trigger = La tasa de fuga { $circuit ->
    [none] de la instalación
   *[other] del circuito { $circuit }
} superó el umbral legal del { $trigger } %; { $repaired ->
    [yes] la reparación se hizo en esta visita, dentro del plazo permitido.
   *[no] el plazo de reparación vence el { $by }.
}
because-no-leak-check = Esto no vale como el control de fugas que exige la ley, porque no se revisaron todas las partes visibles y accesibles.
because-put-back = Se repuso en partes: { $parts }.
put-back-on = { $mass } el { $day }
because-more-partial = Pudo faltar más: no se completó la carga.
because-more-not-noted = Pudo faltar más: no está anotado si se completó la carga.
because-more-not-complete = Pudo perderse más: estas notas no recogen todas las cargas desde entonces.
because-not-reached = { $places ->
    [one] A un punto no se pudo acceder: queda por revisar.
   *[other] A { SPELLED($places) } puntos no se pudo acceder: quedan por revisar.
}

# Lo que va en negrita en la frase: se inserta en la frase que sigue.
leaked-times = ha tenido fuga { SPELLED($times) } veces
leaking-again = { $place } { $strong } ({ $found }). La última reparación{ $by ->
    [none] { "" }
    [others] { " " }(hecha por otros)
   *[other] { " " }(hecha por { $by })
} aguantó { $days ->
    [one] { $days } día
   *[other] { $days } días
} como máximo{ $seen ->
    [none] { "" }
   *[other] ; el { $seen } se vio por última vez que aguantaba
}.
found-still-leaking = seguía con fuga
still-leaking = { $place } { $strong }, { $days ->
    [one] { $days } día
   *[other] { $days } días
} después de encontrarse por primera vez el { $found }; no se había reparado.

open-not-reached = { CAPITAL($place) }: queda por revisar ({ $reason }).
answer-of = Respuesta ({ $by }): { $answer }
customer = cliente
waiting-cost = { $running ->
    [yes] { $since ->
        [none] Al ritmo de pérdida registrado hasta ahora
       *[other] Si todo se perdió desde el { $since }
    }, seguirían escapando { $least ->
        [yes] al menos
       *[no] aproximadamente
    } { $mass } al año { $circuit ->
        [none] de la instalación
       *[other] del circuito «{ $circuit }»
    }{ $co2e ->
        [none] { "" }
       *[other] { " " }({ $co2e })
    }, y la instalación iría perdiendo capacidad.
   *[no] { $since ->
        [none] Al ritmo de pérdida registrado hasta ahora
       *[other] Si todo se perdió desde el { $since }
    }, seguirían escapando { $least ->
        [yes] al menos
       *[no] aproximadamente
    } { $mass } al año { $circuit ->
        [none] de la instalación
       *[other] del circuito «{ $circuit }»
    }{ $co2e ->
        [none] { "" }
       *[other] { " " }({ $co2e })
    } en cuanto la instalación volviera a funcionar.
}

fact-next = Próxima fecha
fact-overdue = Plazo vencido
fact-then = Después: { SMALL($next) }
fact-earlier-repairs = Reparaciones anteriores
fact-earlier-repairs-checked = { $repairs ->
    [one] Una revisada de nuevo, no se detectó nada
   *[other] { CAPITAL(SPELLED($repairs)) } revisadas de nuevo, no se detectó nada
}
fact-repaired-places = { $places ->
    [one] Punto reparado
   *[other] { CAPITAL(SPELLED($places)) } puntos reparados
}
fact-not-checked-again = No revisado de nuevo con detector ni con solución jabonosa
fact-checked-again = Revisado de nuevo, no se detectó nada
fact-all-checked-again = Todos revisados de nuevo, no se detectó nada
fact-some-checked-again = { $checked } de { $repaired } revisados de nuevo, no se detectó nada
fact-detector-proved = detector comprobado con { $leak }
fact-section-tested = Tramo { $section }, ensayado
fact-circuits-tested = { $count ->
    [0] Circuito entero, ensayado
    [1] Circuito { $circuits }, ensayado
   *[other] Circuitos { $circuits }, ensayados
}
fact-gas = gas
fact-test = { $gas } a { $pressure } durante { $duration }{ $later ->
    [yes] ; hecho antes de una reparación posterior
   *[no] { "" }
}
fact-coarse-test = ensayo poco fino: no excluye una fuga del tamaño encontrado
fact-nitrogen-a-day = { $mass } de nitrógeno al día
fact-air-a-day = { $mass } de aire al día
fact-whole-under-vacuum = circuito entero al vacío: nada mayor que { $rate }
fact-air-came-in = Ha entrado aire
fact-vacuum-test = al vacío durante { $duration }
fact-none-added = Nada añadido
fact-charged = Carga: { $mass }
fact-taken-out = { $mass } de { $refrigerant } recuperados{ $missing ->
    [none] { "" }
   *[other] ; faltaban { $missing }
}
fact-after-retrofit = tras el cambio de refrigerante
fact-refrigerant = Refrigerante
fact-lost = { $least ->
    [yes] Pérdida: al menos { $mass }
   *[no] Pérdida: { $mass }
}
fact-put-back = Reposición: { $mass }
fact-missing-in-all = faltaban en total { $least ->
    [yes] al menos { $mass }
   *[no] { $mass }
}{ $co2e ->
    [none] { "" }
   *[other] , { $co2e }
}
head-line-circuit = circuito { $circuit }: { $parts }
