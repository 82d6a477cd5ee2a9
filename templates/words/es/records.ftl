# El registro para la inspección: introducción, placa, datos y hechos.

records-kind = Registro
records-title = Registro: { $system }, a { $day }
records-present = Que un dato figure solo significa que se anotó; si es cierto y suficiente, han de decirlo quien lo anotó y la inspección.
records-files = Los archivos se citan por su ruta desde la carpeta principal de las notas y su línea. Las notas van adjuntas a este documento como datos, sin sus partes privadas.
records-none-in-force = Para este emplazamiento no se nombran normas vigentes a { $day }, de modo que no se exige ningún dato. Lo que dicen las notas figura abajo de todos modos.
records-undecided = No está decidido si las normas vigentes en este emplazamiento a { $day } se aplican a esta instalación; por eso no se enumera aquí ningún dato exigido. Lo que contienen las notas figura abajo.
records-not-covered = Esta instalación no está sujeta a ninguna de las normas vigentes en este emplazamiento a { $day }, de modo que no se exige ningún dato. Lo que dicen las notas figura abajo de todos modos.
records-all-there = Figuran todos los datos que piden las normas vigentes a { $day }; esto no dice que los controles se hicieran en plazo.
records-missing = Faltan { $missing } de los { $fields } datos que exigen las normas vigentes a { $day }.
records-fields = Datos exigidos: { $fields }; faltan: { $missing }.
records-kept = Los registros se conservan al menos { $years } años ({ $source }).
records-of-system = La instalación
records-of-visit = { $days }, { $purpose }
plant-telephone = Teléfono
plant-serial-number = Número de serie
plant-year-of-making = Año de fabricación
plant-hermetic-label = Etiquetado como sellado herméticamente
plant-detection-system = Sistema de detección de fugas
answer-yes = sí
answer-no = no

# Lo que consta.
record-circuit = { $circuit ->
    [none] la instalación
   *[other] circuito { $circuit }
}
record-due-by = debido a más tardar el { $day }
record-plan-made = plan hecho el { $day }
record-reported = declarado el { $day }
record-leaks-found = { $day }, { $method }, { $leaks ->
    [0] nada encontrado
    [one] 1 fuga encontrada
   *[other] { $leaks } fugas encontradas
}
record-cylinder = botella { $cylinder }
record-destroyed = { $moved }, de lo que se destruyó el { $share }
record-recovered-before = recuperado antes en esta botella
record-moved = { $mass }, { $day }
record-of-gas = { $refrigerant ->
    [none] { $mass }
   *[other] { $mass } de { $refrigerant }
}
record-at = { $day }, { $clock }
record-part = { $part }: { $work }
record-proof = { $at }, { $what }
record-and-then = { $first }; { $next }
record-pressure-test = ensayo de presión { $test }: { $verdict }
record-vacuum-test = ensayo de vacío { $test }, { $limit ->
    [met] límite cumplido
    [not-met] límite no cumplido
   *[other] límite sin decidir
}
record-looked-again = revisado de nuevo el { $day }
record-rate = { $rate } ({ LOWER($method) })

# Hechos.
head-mass-or-result = Masa o resultado
head-noted-at = Anotado en
event-earlier = { $what }, registro anterior
event-by = por { $by }
event-visit = visita: { $purpose }
event-changed = cambio de { $from } a { $to }
event-moved = { $kind }, { $why }
event-with-cylinder = { $mass }, botella { $cylinder }
event-pressure-test = ensayo de presión { $test }
event-vacuum-test = ensayo de vacío { $test }
event-tested = { $circuit ->
    [none] La instalación
   *[other] Circuito { $circuit }
}, tramo { $section }
event-inspection = control de fugas, todo lo visible y accesible
event-search-in-part = búsqueda, no de todo lo visible y accesible
event-search = búsqueda de fugas
event-not-reached = sin alcanzar: { $place } ({ $reason })
event-leak-found = fuga encontrada
event-suspicion = sospecha
event-defect = defecto, no una fuga
event-repair = reparación
event-look = { $method }{ $with ->
    [none] { "" }
   *[other] { " " }{ $with }
}: { $result }
event-check = revisión de la reparación
event-check-again = revisión de una reparación anterior
