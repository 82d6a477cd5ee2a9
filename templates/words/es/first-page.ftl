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
plant-back-in-normal-operation = De nuevo en funcionamiento normal

outcome-repaired-proved = { $leaks ->
    [one] Una fuga encontrada y reparada, reparación comprobada.
   *[other] { $leaks } fugas encontradas y reparadas, todas las reparaciones comprobadas.
}
outcome-repaired-not-proved = { $leaks ->
    [one] Una fuga encontrada y reparada; la reparación no está comprobada.
   *[other] { $leaks } fugas encontradas y reparadas; { $proved ->
        [0] ninguna de las reparaciones está comprobada
        [one] una de las reparaciones está comprobada
       *[other] { $proved } de las reparaciones están comprobadas
    }.
}
outcome-partly-repaired = { $leaks } fugas encontradas, { $repaired ->
    [one] una reparada
   *[other] { $repaired } reparadas
}; el resto queda abierto.
outcome-left-open = { $leaks ->
    [one] Una fuga encontrada; queda abierta.
   *[other] { $leaks } fugas encontradas; quedan abiertas.
}
outcome-suspects-only = Se sospecha una fuga; no se ha localizado.
outcome-suspects-remain = { $suspects ->
    [one] Queda un punto sospechoso.
   *[other] Quedan puntos sospechosos.
}
outcome-not-found-loss-stands = Se había perdido refrigerante y no se encontró su fuga.
outcome-nothing-found = Se buscó; no se encontró nada allí donde llegó la búsqueda.
outcome-repair-verified = { $repairs ->
    [one] La reparación anterior se revisó de nuevo; allí no se detectó nada.
   *[other] { $repairs } reparaciones anteriores se revisaron de nuevo; allí no se detectó nada.
}
outcome-gas-added = Se añadió refrigerante; la fuga no se buscó ni se reparó.
outcome-changed-from-to = La instalación se cambió de { $old } a { $new }.
outcome-changed = La instalación se cambió a otro refrigerante.
outcome-other = { $purpose }: trabajo realizado.

place-says = { $place }: { $what }
because-holding = { $place } ha tenido fuga { $times } veces; la última reparación lleva aguantando { $days ->
    [one] { $days } día
   *[other] { $days } días
}.
because-lost-since = Desde el { $day } se habían perdido { $mass } de refrigerante { $circuit ->
    [none] de la instalación
   *[other] del circuito { $circuit }
}.
because-missing-since = Faltaban { $mass } de refrigerante en { $circuit ->
    [none] la instalación
   *[other] el circuito { $circuit }
}; la última carga fue el { $day } y no se sabe si fue completa.
because-lost = Se habían perdido { $mass } de refrigerante { $circuit ->
    [none] de la instalación
   *[other] del circuito { $circuit }
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
because-not-reached = { $places ->
    [one] No se pudo llegar a un lugar, que queda por revisar.
   *[other] No se pudo llegar a { $places } lugares, que quedan por revisar.
}

# Lo que va en negrita en la frase: se inserta en la frase que sigue.
leaked-times = ha tenido fuga { $times } veces
leaking-again = { $place } { $strong }: { $found }. La última reparación{ $by ->
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
    [yes] Al ritmo de pérdida registrado hasta ahora, seguirían escapando unos { $mass } al año { $circuit ->
        [none] de la instalación
       *[other] del circuito { $circuit }
    }{ $co2e ->
        [none] { "" }
       *[other] { " " }({ $co2e })
    }, y la instalación pierde capacidad poco a poco.
   *[no] Al ritmo de pérdida registrado hasta ahora, seguirían escapando unos { $mass } al año { $circuit ->
        [none] de la instalación
       *[other] del circuito { $circuit }
    }{ $co2e ->
        [none] { "" }
       *[other] { " " }({ $co2e })
    } en cuanto vuelva a funcionar.
}

fact-next = Próxima fecha
fact-overdue = Vencido
fact-then = Después: { $next }
fact-earlier-repairs = Reparaciones anteriores
fact-earlier-repairs-checked = { $repairs ->
    [one] { $repairs } revisada de nuevo, no se detectó nada
   *[other] { $repairs } revisadas de nuevo, no se detectó nada
}
fact-repaired-places = { $places ->
    [one] Punto reparado
   *[other] { $places } puntos reparados
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
fact-charged = { $mass } cargados
fact-after-retrofit = tras el cambio de refrigerante
fact-refrigerant = Refrigerante
fact-lost = { $mass } perdidos
head-line-circuit = circuito { $circuit }: { $parts }
