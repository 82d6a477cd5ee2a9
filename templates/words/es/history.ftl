# El historial de una instalación o de un emplazamiento: introducción, tablas, gráficos y marcas.

history-kind = Historial
history-title = Historial: { $name }, a { $day }
as-at = a { $day }
history-site-lead = { $cures ->
    [yes] { $systems ->
        [one] Una instalación de este emplazamiento: primero lo que necesita una reparación duradera, después su capítulo.
       *[other] { CAPITAL(SPELLED($systems)) } instalaciones de este emplazamiento: primero lo que necesita una reparación duradera, después un capítulo para cada una.
    }
   *[no] { $systems ->
        [one] Una instalación de este emplazamiento, con su capítulo.
       *[other] { CAPITAL(SPELLED($systems)) } instalaciones de este emplazamiento, con un capítulo para cada una.
    }
}
history-nothing-came-back = Según estas notas, ninguna pieza montada ahora ha tenido fuga más de una vez, y ninguna fuga conocida quedó sin reparar en la última visita.
history-absence = Que no haya registro no significa que no hubiera fuga: un año sin anotación es un año del que no consta nada, no un año sin fuga.
history-looked-at = Un punto revisado sin indicios no mostró nada en esa visita, con el método de esa visita; pudo haber una fuga menor.
history-visits = { $visits ->
    [one] Una visita de estas notas, con los registros anteriores.
   *[other] { CAPITAL(SPELLED($visits)) } visitas de estas notas, con los registros anteriores.
}
history-complete-since = { $circuit ->
    [none] El balance de refrigerante solo está completo desde el { $day }.
   *[other] Circuito { $circuit }: el balance de refrigerante solo está completo desde el { $day }.
}
history-complete-unknown = { $circuit ->
    [none] Las notas no indican desde qué día está completo el balance de refrigerante.
   *[other] Circuito { $circuit }: las notas no indican desde qué día está completo el balance de refrigerante.
}
history-points-note = { $cures ->
    [yes] Primero van los que necesitan una reparación duradera.{ " " }
   *[no] { "" }
}Las fugas son las de la pieza montada ahora; con una pieza nueva la cuenta empieza de cero. Los días van de cada reparación al día en que el punto se halló de nuevo con fuga; los de una reparación que aguanta, hasta la última revisión.
history-cures-note = Un punto necesita una reparación duradera si la pieza montada ahora ha tenido fuga más de una vez, se dejó con fuga o solo se reparó de forma provisional.
history-systems-note = Perdido es lo que se halló en falta en las visitas de estas notas, en todos los años.
history-earlier-note = Tomado de registros anteriores a estas notas o de terceros.
point-not-looked-at-then = no revisado en la última visita

# Cabezas de columna.
head-leaks = Fugas
head-repairs-held = Duración de las reparaciones, días
head-last-looked-at = Última revisión
head-state = Estado
head-system = Instalación
head-visits = Visitas
head-points-leaked = Puntos con fuga
head-lost-co2e = Perdido, t CO₂e
head-last-visit = Última visita
head-its-outcome = Resultado de esa visita
head-what = Qué
head-moved = Masa
head-by = Por
head-told-by = Fuente
head-visit = Visita
head-purpose = Motivo
head-outcome = Resultado
head-year = Año
head-charged = Cargado, { $unit }
head-charged-by-others = Cargado por otros, { $unit }
head-recovered = Recuperado, { $unit }
head-recovered-by-others = Recuperado por otros, { $unit }
head-leaked = Fugado, { $unit }
head-rate = Tasa
head-against-trigger = Frente al umbral
head-tested = Qué se ensayó
head-not-larger = No mayor que
not-known = no consta

# Gráficos y sus tablas.
chart-last-eight = Los ocho últimos; todos figuran en la tabla.
refrigerant-by-year = { $circuit ->
    [none] Refrigerante por año
   *[other] Refrigerante por año, circuito { $circuit }
}
refrigerant-in = Refrigerante, { $unit }
refrigerant-caption = Lleno: cargado. Rayado: cargado por otros o según registros anteriores. Blanco: recuperado. Discontinuo: recuperado por otros.
refrigerant-alt = Barras del refrigerante cargado y recuperado cada año; las cifras figuran en la tabla siguiente.
refrigerant-note = Fugado es lo que las intervenciones tuvieron que añadir porque faltaba, descontado lo que recuperaron; lo que se perdió durante el trabajo no está incluido ni figura en otra columna. * no se conocen todos los movimientos del año.
refrigerant-missing-at-change = En el cambio de refrigerante de { $year } faltaban { $missing } de la carga completa de { $full }; no figura en ninguna columna.
co2e-by-year = { $circuit ->
    [none] CO₂ equivalente perdido por año
   *[other] CO₂ equivalente perdido por año, circuito { $circuit }
}
co2e-in = CO₂ equivalente perdido, t
co2e-alt = Barras del CO₂ equivalente perdido cada año; las cifras figuran en la tabla siguiente.
co2e-note = Contado en el año en que se halló que faltaba.
rate-in = % de la carga completa
rate-trigger = umbral, { $trigger } %
rate-over = por encima del { $trigger } %
rate-not-over = no por encima del { $trigger } %
rate-alt = { $trigger ->
    [none] Barras de la tasa en cada adición; las cifras figuran en la tabla siguiente.
   *[other] Barras de la tasa en cada adición, con el umbral del { $trigger } % como línea; las cifras figuran en la tabla siguiente.
}
rate-without-category = No consta la categoría de la instalación, de modo que no puede indicarse un umbral.
rate-without-rule = Lo que faltaba, llevado a un año como en el informe de esa visita: donde no se llenó del todo, o no se sabe si antes estaba llena, la cifra vale solo como dice ese informe. Ninguna norma fija un umbral para ella.
test-limits = Ensayos de presión: mayor fuga aún posible
test-limits-in = Mayor fuga que queda posible, { $unit }
test-limits-alt = Barras de la mayor fuga que cada ensayo de presión dejó posible; las cifras figuran en la tabla siguiente.
test-limits-note = Los ensayos de un mismo día van de izquierda a derecha en el orden de esta tabla.
test-limit-of = { $circuit ->
    [none] { "" }
   *[other] circuito { $circuit },{ " " }
}{ $section ->
    [none] todos los tramos
   *[other] tramo { $section }
}, ensayo { $test }

# Los puntos en el tiempo, en palabras.
mark-once = { $day }: { $told }
mark-times = { $first } a { $last }: { $told }, { $times } veces
mark-told-by = { $told }, { $by }
