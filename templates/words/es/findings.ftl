# Hallazgos y puntos: datos, pruebas, estados.

circuit-named = { $circuit ->
    [none] La instalación
   *[other] Circuito { $circuit }
}
finding-where = Dónde
finding-kind = Tipo
finding-evidence = Certeza
finding-size = Tamaño
finding-cause = Causa
finding-repair = Reparación
finding-proof = Comprobación
evidence-grade = { $grade }: { $meaning }
proof-look = { $time }, { $method }: { $result }
proof-test = ensayo { $name }: { $verdict }{ $coarse ->
    [yes] { " " }(menos fino que esta fuga)
   *[no] { "" }
}
proof-search = búsqueda { $name }
size-none = sin determinar
size-estimated = { $size }, estimado
size-how = { $measured ->
    [yes] medido
   *[no] estimado
}{ $by ->
    [none] { "" }
   *[other] { " " }({ $by })
}{ $pressure ->
    [none] { "" }
   *[other] { " " }a { $pressure }
}
everything-registered = todo lo registrado

point-holds = reparado, aguanta, { $days ->
    [one] { $days } día
   *[other] { $days } días
}
point-not-reached = no alcanzado
point-suspect-not-reached = sospecha, no alcanzado
point-still-leaking = seguía con fuga, { $days ->
    [one] { $days } día
   *[other] { $days } días
} después de encontrarse
point-leaking-again = de nuevo con fuga en el mismo punto: { $days ->
    [one] { $days } día
   *[other] { $days } días
} después de una reparación hecha por { $by ->
    [none] nosotros
    [others] otros
   *[other] { $by }
}; ha tenido fuga { SPELLED($times) } veces
point-repaired-holding = reparado, aguanta, { $days ->
    [one] { $days } día
   *[other] { $days } días
}{ $section-only ->
    [yes] , solo por un ensayo de su tramo
   *[no] { "" }
}
point-not-retested = reparado, sin revisar de nuevo desde hace { $days ->
    [one] { $days } día
   *[other] { $days } días
}
point-replaced = pieza sustituida el { $day }
point-replaced-holding = pieza sustituida el { $day }; nada hallado desde entonces{ $section-only ->
    [yes] , solo por un ensayo de su tramo
   *[no] { "" }
}
point-replaced-not-looked-at = pieza sustituida el { $day }; sin revisar desde entonces
point-left-open = queda abierto{ $suspect ->
    [yes] { " " }como sospecha
   *[no] { "" }
}, { $days ->
    [one] { $days } día
   *[other] { $days } días
}{ $looked ->
    [yes] ; esta vez no se detectó nada
   *[no] { "" }
}

leaked-points = Puntos que han tenido fuga
leaked-point = Punto
leaked-when = Fugas
leaked-repairs-held = Duración de las reparaciones
leaked-at-this-visit = En esta visita
leaked-note = Se considera que una reparación aguantó hasta que la fuga se encontró de nuevo, es decir, ese tiempo como máximo. Con una pieza sustituida, la cuenta empieza de nuevo.
leaked-on = { $day } ({ $repair ->
    [none] no reparado
    [others] reparado por otros
    [replaced] pieza sustituida
    [temporary] reparado provisionalmente
   *[done] { $repaired ->
        [none] reparado
       *[other] reparado el { $repaired }
    }
}{ $old ->
    [yes] ; esa pieza se sustituyó después
   *[no] { "" }
})
days-held = { $days ->
    [one] { $days } día
   *[other] { $days } días
}

leaks-explain = Las fugas encontradas{ $circuit ->
    [none] { "" }
   *[other] { " " }en el circuito «{ $circuit }»
} explican { $least ->
    [none] como máximo { $most }
   *[other] entre { $least } y { $most }
} de la pérdida de { $lost }.
leaks-explain-all = Las fugas encontradas{ $circuit ->
    [none] { "" }
   *[other] { " " }en el circuito «{ $circuit }»
} pueden explicar toda la pérdida de { $lost }{ $least ->
    [none] { "" }
   *[other] , y explican al menos { $least }
}.
leaks-explain-others-remain = Las fugas encontradas{ $circuit ->
    [none] { "" }
   *[other] { " " }en el circuito «{ $circuit }»
} explican { $least ->
    [none] como máximo { $most }
   *[other] entre { $least } y { $most }
} de la pérdida de { $lost }: quedan otras, o una de ellas era mayor antes.
leaks-explain-more-than-lost = Con los tamaños medidos, las fugas encontradas{ $circuit ->
    [none] { "" }
   *[other] { " " }en el circuito «{ $circuit }»
} habrían dejado escapar { $least ->
    [none] como máximo { $most }
   *[other] entre { $least } y { $most }
}, más que la pérdida de { $lost }: no han perdido tanto todo el tiempo.
leaks-not-sized = { $leaks ->
    [one] La fuga encontrada no se midió: no se sabe cuánto de la pérdida explica.
   *[other] No todas las fugas encontradas se midieron: no se sabe cuánto de la pérdida explican.
}
