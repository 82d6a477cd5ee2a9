# Advertencias que lleva la página: cada una empieza en minúscula y acaba sin punto, que pone la página.
# Debajo de cada una, por qué importa; su inglés es `matters` en src/caution.

caution-background-hides-leak = se confió en un detector de fugas en aire que ya contenía refrigerante
phrase-the-detector-takes-the-gas-in-the-air-for-its-zero-or-alarms-ever = El detector toma por cero el gas del aire, o suena en todas partes: una fuga pequeña no destaca.
caution-brazed-without-purge = esta unión se soldó sin barrido de nitrógeno
phrase-scale-forms-inside-the-hot-pipe-comes-loose-and-blocks-driers-str = Dentro del tubo caliente se forma cascarilla, que se suelta y obstruye filtros deshidratadores, tamices y válvulas.
caution-bubbles-before-detector = en «{ $finding }» se buscó { $method ->
    [electronic] con el detector electrónico
    [tracer] con gas trazador
   *[other] con la lámpara haloide
} después de la solución jabonosa
phrase-solution-closes-small-leaks-for-a-while-and-wets-or-poisons-a-sen = La solución cierra un rato las fugas pequeñas y moja o contamina un sensor: su silencio después muestra poco, y una alarma puede ser de la solución.
caution-certificate-category-wrong = la categoría { $category } de { $person } no cubre este trabajo
phrase-the-law-asks-for-a-certificate-that-covers-the-work-what-was-done = La ley exige un certificado que cubra el trabajo: lo hecho sin él puede no contar.
caution-certificate-expired = el certificado de { $person } estaba caducado el { $day }
phrase-work-on-refrigerant-circuits-is-for-certified-people-a-leak-check = El trabajo en circuitos frigoríficos es para personas certificadas; un control de fugas o una reparación de quien no lo está puede no contar.
caution-certificate-missing = { $person } trabajó en el circuito, y en las notas no figura ningún certificado de esa persona
phrase-work-on-refrigerant-circuits-is-for-certified-people-and-the-reco = El trabajo en circuitos frigoríficos es para personas certificadas, y su registro tiene que nombrar el certificado; un control de fugas o una reparación de quien no lo tiene puede no contar.
caution-charged-without-evacuation = { $circuit ->
    [none] la instalación se cargó
   *[other] el circuito «{ $circuit }» se cargó
} después del ensayo «{ $test }» sin hacer vacío entre medias
phrase-test-gas-and-moisture-left-inside-raise-the-pressures-spoil-the-o = El gas de ensayo y la humedad que quedan dentro elevan las presiones, estropean el aceite y hacen dudosas la carga y toda lectura posterior de presión.
caution-cylinder-does-not-add-up = la botella «{ $cylinder }» pesaba { $mass } { $than ->
    [more] más
   *[less] menos
} que en la última pesada
phrase-refrigerant-went-into-or-out-of-the-cylinder-that-no-note-tells-o = Entró o salió refrigerante de la botella sin que ninguna nota lo cuente, y en esa cantidad no cuadra el balance del gas.
caution-detector-not-proved = { $detector ->
    [none] el detector
   *[other] el detector «{ $detector }»
} no se probó con una fuga de referencia el { $day }
phrase-a-sensor-that-is-worn-flooded-or-switched-off-is-silent-everywher = Un sensor gastado, saturado o apagado calla en todas partes, y el silencio se toma por estanqueidad.
caution-drier-not-replaced = en esta reparación se abrió el circuito, y no consta si se cambió el filtro deshidratador
phrase-a-drier-that-has-been-open-to-the-air-takes-up-moisture-and-is-so = Un filtro deshidratador que ha estado abierto al aire toma humedad y se agota pronto; el agua que queda dentro forma ácido, hielo en la válvula de expansión y nuevas fugas.
caution-dye-from-earlier-leak = el tinte en «{ $finding }» puede venir de una fuga anterior
phrase-dye-stays-where-it-came-out-and-glows-for-years-this-may-be-the-o = El tinte se queda donde salió y brilla durante años: este puede ser el de la fuga antigua.
caution-flame-near-flammable = se usó una llama ({ $method ->
    [halide] lámpara haloide
   *[other] { $method }
}) en un circuito con { $refrigerant }
phrase-leaking-gas-can-catch-fire-or-explode-at-the-flame = El gas que escapa puede incendiarse o explotar en la llama.
caution-gas-added-leak-not-found = se añadió refrigerante { $circuit ->
    [none] a la instalación
   *[other] al circuito { $circuit }
} y no se encontró la fuga
phrase-refrigerant-is-not-used-up-what-was-added-will-leak-too-until-the = El refrigerante no se gasta: lo añadido también se fugará, hasta que se encuentre y se repare la fuga.
caution-gas-added-without-repair = se añadió refrigerante { $circuit ->
    [none] a la instalación
   *[other] al circuito «{ $circuit }»
} mientras una fuga conocida sigue abierta
phrase-what-was-added-leaks-out-again-whether-a-rule-sets-a-time-for-the = Lo añadido vuelve a escapar. La parte legal del informe dice si una norma fija un plazo para la reparación.
caution-gas-added-without-search = se añadió refrigerante { $circuit ->
    [none] a la instalación
   *[other] al circuito «{ $circuit }»
} y no se buscó la fuga
phrase-refrigerant-is-not-used-up-what-is-missing-has-leaked-and-what-wa = El refrigerante no se gasta: lo que falta se ha fugado, y lo añadido acabará escapando también. La parte legal del informe dice si una norma fija un plazo para encontrar y reparar la fuga.
caution-gauge-beyond-its-range = { $pressure } queda fuera del rango del manómetro del ensayo «{ $test }»
phrase-beyond-its-range-a-gauge-is-wrong-or-damaged-and-so-is-what-the-t = Fuera de su rango un manómetro indica mal o se daña, y con él lo que muestra el ensayo.
caution-hold-at-moving-temperature = un ensayo de presión sin temperatura estable es la única comprobación de «{ $finding }»
phrase-the-gas-in-the-pipe-follows-its-own-warmth-not-that-of-the-thermo = El gas del tubo sigue su propio calor, no el del termómetro: en un ensayo corto, un cambio de temperatura oculta una fuga o la inventa.
caution-hold-too-coarse-for-leak = el ensayo «{ $test }» no podría haber mostrado la fuga «{ $finding }»
phrase-the-gauge-would-have-stood-still-with-the-leak-as-it-was-before-t = El manómetro no se habría movido con la fuga tal como era antes de la reparación: el ensayo no prueba nada sobre ella.
caution-hydrogen-above-five-percent = el ensayo «{ $test }» se hizo con más del 5 % de hidrógeno
phrase-above-about-5-5-hydrogen-in-nitrogen-the-mixture-can-burn-in-air = Por encima de aproximadamente un 5,5 % de hidrógeno en nitrógeno, la mezcla puede arder en el aire.
caution-hydrogen-mixed-on-site = el gas del ensayo «{ $test }» se mezcló in situ
phrase-a-mixture-made-on-site-is-nowhere-the-same-part-of-it-can-hold-mo = Una mezcla hecha in situ no es igual en ninguna parte: una porción puede tener más hidrógeno del que puede haber en el aire sin arder, y una botella de hidrógeno puro es un peligro de por sí.
caution-instrument-check-overdue = el detector «{ $detector }» se había comprobado por última vez el { $day }, más de 12 meses antes
phrase-a-check-with-it-may-not-count-as-the-leak-check-that-the-rule-ask = Un control hecho con él puede no contar como el control de fugas que exige la norma, y su sensibilidad no se conoce.
caution-low-pressure-search = se buscó con un detector a solo { $pressure }
phrase-a-leak-lets-out-less-the-lower-the-pressure-at-or-below-the-press = Cuanto más baja es la presión, menos deja salir una fuga; a la presión del aire o por debajo no sale nada.
caution-method-blind-to-refrigerant = { $method ->
    [litmus] el papel de tornasol
   *[other] una lámpara haloide
} no puede mostrar { $refrigerant }
phrase-litmus-turns-with-ammonia-only-and-the-flame-of-the-torch-colours = El papel de tornasol solo vira con amoníaco, y la llama de la lámpara solo se colorea con cloro: con otros refrigerantes ambos no muestran nada, por grande que sea la fuga.
caution-moisture-read-as-leak = «{ $finding }» se basa en una subida que se estabiliza
phrase-a-leak-goes-on-rising-to-the-pressure-of-the-air-a-rise-that-leve = Con una fuga la presión sube hasta la del aire. Una subida que se estabiliza es humedad, o gas que sale del aceite: buscar una fuga que no existe cuesta un día, y el agua se queda dentro.
caution-moved-more-than-charge = { $kind ->
    [charged] se cargaron { $mass } { $circuit ->
        [none] en la instalación
       *[other] en el circuito «{ $circuit }»
    }
    [recovered] se recuperaron { $mass } { $circuit ->
        [none] de la instalación
       *[other] del circuito «{ $circuit }»
    }
   *[other] se liberaron { $mass } { $circuit ->
        [none] de la instalación
       *[other] del circuito «{ $circuit }»
    }
}, más que su carga completa de { $full }
phrase-it-is-most-likely-a-slip-a-decimal-point-lost-pounds-read-as-kilo = Lo más probable es un descuido: una coma perdida, libras leídas como kilogramos, el peso bruto de una botella tomado por el neto, o el movimiento de otro circuito. El balance y la tasa de fuga se apoyan en ello.
caution-no-bubbles-too-soon = una solución jabonosa observada menos de 20 min es la única comprobación de «{ $finding }»
phrase-a-small-leak-may-take-many-minutes-to-raise-a-bubble-a-short-look = Una fuga pequeña puede tardar muchos minutos en levantar una burbuja; una mirada breve solo muestra que la fuga no es grande.
caution-oil-at-service-valve = el aceite es el único indicio en «{ $finding }»
phrase-drops-from-the-hoses-stay-at-a-service-valve-after-every-service-t = Gotas de las mangueras quedan en una válvula de servicio tras cada intervención; no indican que haya fuga.
caution-outcome-beyond-evidence = el resultado anotado, «{ $claim }», va más allá de lo que muestran las notas: { $shown }
phrase-less-was-shown-than-was-claimed-the-report-keeps-to-what-the-note = Se mostró menos de lo que se afirmó: el informe se atiene a lo que muestran las notas.
caution-oxygen-or-air-used = el ensayo «{ $test }» se hizo con { $gas ->
    [oxygen] oxígeno
   *[other] aire
}
phrase-oxygen-or-compressed-air-and-oil-can-explode-air-also-leaves-mois = El oxígeno o el aire comprimido con aceite pueden explotar; el aire deja además humedad.
caution-pressure-above-plate = el ensayo «{ $test }» se hizo a { $pressure }, por encima de los { $plate } de la placa
phrase-a-part-held-above-the-pressure-it-was-made-for-can-burst-at-once-o = Una pieza mantenida por encima de la presión para la que se hizo puede reventar, enseguida o más tarde.
caution-pressure-test-as-leak-inspection = un ensayo de presión o de vacío ocupa aquí el lugar de una búsqueda
phrase-such-a-test-shows-that-a-circuit-leaks-or-does-not-never-where-it = Un ensayo así muestra si un circuito tiene fuga o no, nunca dónde; por sí solo no cuenta como control de fugas.
caution-proof-before-repair = «{ $finding }» se reparó otra vez después de su última comprobación
phrase-a-test-made-before-the-last-work-at-a-joint-does-not-show-how-the = Un ensayo hecho antes del último trabajo en una unión no muestra cómo está la unión ahora.
caution-proof-coarser-than-leak = la única comprobación de «{ $finding }» no podría haber mostrado esa fuga
phrase-the-detector-would-have-been-silent-before-the-repair-as-well-its = El detector también habría callado antes de la reparación; su silencio no prueba nada.
caution-proved-by-looking = la reparación de «{ $finding }» se comprobó solo mirando
phrase-a-joint-can-leak-for-weeks-before-oil-or-a-low-charge-shows-it-th = Una unión puede perder durante semanas antes de que lo muestre el aceite o una carga baja; que no se vea ningún indicio muestra muy poco.
caution-recovered-gas-to-another-owner = la botella «{ $cylinder }» contenía gas recuperado en este lugar: { $site }
phrase-used-gas-may-carry-moisture-acid-and-other-gases-from-the-first-p = El gas usado puede llevar humedad, ácido y otros gases de la primera instalación a la segunda; algunas leyes solo lo dejan cambiar de dueño cuando un regenerador lo ha limpiado y analizado.
caution-reference-leak-of-another-kind = el detector se probó con { $tried } y se usó para { $held }
phrase-a-sensor-for-one-kind-of-gas-may-not-answer-to-the-other-at-all-t = Un sensor para una clase de gas puede no responder en absoluto a la otra: la prueba muestra que funciona, no que habría encontrado esta fuga.
caution-repaired-not-retested = «{ $finding }» se reparó y no se volvió a ensayar
phrase-many-repairs-do-not-hold-at-once-until-it-is-tested-nobody-knows-a = Muchas reparaciones no aguantan a la primera; hasta que se ensaya nadie lo sabe, y la pérdida puede seguir.
caution-rise-at-moving-temperature = una subida del vacío a temperatura cambiante es la única comprobación de «{ $finding }»
phrase-as-a-system-warms-oil-and-walls-give-off-more-gas-as-it-cools-les = Cuando una instalación se calienta, el aceite y las paredes desprenden más gas; cuando se enfría, menos: la subida muestra entonces el calor y no la fuga.
caution-search-in-moving-air = se confió en un detector de fugas en aire en movimiento («{ $word }»)
phrase-moving-air-carries-leaking-gas-away-before-it-reaches-the-sensor-s = El aire en movimiento se lleva el gas antes de que llegue al sensor: el silencio muestra entonces poco.
caution-search-stopped-at-first-leak = se encontró una fuga, y en estos puntos no se buscó: { $points }{ $more ->
    [0] {""}
   *[other] {" "}y { $more } más
}
phrase-one-leak-found-does-not-mean-the-only-leak-the-rest-of-the-loss-m = Una fuga encontrada no significa la única; el resto de la pérdida puede venir de un punto que nadie miró.
caution-searched-while-empty = esta búsqueda se hizo con la instalación vaciada
phrase-without-pressure-inside-nothing-comes-out-of-a-leak-and-silence-s = Sin presión dentro no sale nada de una fuga, y el silencio no muestra nada.
caution-sensitivity-below-rule = el detector «{ $detector }» solo encuentra fugas a partir de { $leak }
phrase-a-search-with-it-may-not-count-as-the-leak-check-that-the-rule-as = Una búsqueda con él puede no contar como el control de fugas que exige la norma: las fugas menores quedan ocultas.
caution-sensor-disturbed = «{ $finding }» se basa en un sensor { $sensor ->
    [infrared] infrarrojo
    [heated-diode] de diodo calentado
   *[other] de semiconductor
} cerca de «{ $word }»
phrase-such-a-sensor-alarms-at-these-things-or-stays-dull-for-a-while-af = Un sensor así suena con estas sustancias, o queda embotado un rato después: la alarma no tiene por qué ser refrigerante.
caution-sign-without-direct-check = «{ $finding }» se basa en un solo indicio
phrase-a-sign-alone-neither-shows-a-leak-nor-clears-it-and-the-rule-asks = Un indicio por sí solo ni muestra una fuga ni la descarta, y la norma exige después un método directo.
caution-strength-pressure-without-source = el ensayo de resistencia «{ $test }» se hizo a { $factor } veces la placa, y ninguna nota dice de quién es ese valor
phrase-a-strength-test-that-is-too-low-shows-nothing-beyond-daily-use-on = Un ensayo de resistencia demasiado bajo no muestra nada más allá del uso diario; uno demasiado alto puede forzar o reventar piezas.
caution-test-coarser-than-limit = el ensayo «{ $test }» no puede mostrar este límite: una división de su manómetro equivale a una fuga de { $leak }
phrase-a-leak-of-the-limit-would-not-have-moved-the-gauge-by-one-step-th = Una fuga igual al límite no habría movido el manómetro ni una división: que se quedara quieto no muestra nada sobre el límite.
caution-test-gas-with-refrigerant-inside = el ensayo «{ $test }» introdujo gas de ensayo { $circuit ->
    [none] en la instalación
   *[other] en el circuito «{ $circuit }»
} con refrigerante todavía dentro
phrase-the-mixture-cannot-be-recovered-as-refrigerant-and-goes-to-waste-o = La mezcla no se puede recuperar como refrigerante y acaba como residuo o en el aire; la presión del líquido se suma, y el ensayo no muestra nada.
caution-test-too-short = una subida del vacío de { $minutes } min es la única comprobación de «{ $finding }»
phrase-in-so-short-a-time-a-rise-cannot-tell-a-small-leak-from-moisture-o = En tan poco tiempo una subida no distingue una fuga pequeña de la humedad o del gas que sale del aceite; solo muestra que se cumplió el límite de aceptación.
caution-ultrasonic-in-noise = se confió en un detector de ultrasonidos entre ruido («{ $word }»)
phrase-compressors-fans-and-escaping-steam-or-air-make-the-same-sound-as = Compresores, ventiladores y el vapor o el aire que escapan suenan igual que una fuga: la ocultan o pasan por una.
caution-vacuum-gauge-too-coarse = el vacuómetro del ensayo «{ $test }» no puede leer su límite
phrase-such-a-gauge-shows-zero-long-before-the-limit-is-reached-that-the = Un instrumento así marca cero mucho antes de llegar al límite: no se sabe si el límite se cumplió.
caution-vented = se liberó { $refrigerant } a propósito
phrase-letting-such-gas-out-on-purpose-is-forbidden-in-most-countries-an = Liberar a propósito un gas así está prohibido en la mayoría de los países y cuenta como emisión.
caution-volume-missing = nada se puede decir del límite de fuga del ensayo «{ $test }»
phrase-a-change-of-pressure-becomes-a-leak-rate-only-with-the-volume-wit = Un cambio de presión solo se convierte en caudal de fuga con el volumen; sin él nada se puede decir del límite.
caution-wrong-cylinder = { $kind ->
    [charged] se cargó { $held } { $circuit ->
        [none] en la instalación
       *[other] en el circuito «{ $circuit }»
    }, que contiene { $wanted }
   *[recovered] se recuperó { $wanted } { $circuit ->
        [none] de la instalación
       *[other] del circuito «{ $circuit }»
    } en una botella de { $held }
}
phrase-a-mixture-has-unknown-pressures-and-an-unknown-safety-class-and-s = Una mezcla tiene presiones desconocidas y una clase de seguridad desconocida, y estropea ambos gases; a menudo solo se puede destruir.

# Lo que muestran las pruebas, donde se afirmó más.
