# Ensayos de presión y de vacío: veredictos, motivos, gráficos, cálculos.

# Títulos y datos de un ensayo.

pressure-test-heading = Ensayo de presión { $test }: { $part }
vacuum-test-heading = Ensayo de vacío { $test }: { $part }
test-part-whole = { $circuit ->
    [none] todo el circuito
   *[other] todo el circuito «{ $circuit }»
}
test-part-section = { $about ->
    [none] tramo { $section }
   *[other] { $about } (tramo { $section })
}{ $circuit ->
    [none] {""}
   *[other] {" "}del circuito «{ $circuit }»
}
test-reading = { $moment }: { $pressure }{ $temperature ->
    [none] {""}
   *[other] , { $temperature }
}
test-gas = Gas de ensayo
test-start = Inicio
test-end = Final
test-held = Duración
test-highest-allowable = Máxima admisible
test-gauge = Instrumento
test-limit-asked = Límite pedido
test-isolated = Aislado
test-watched = Tiempo de observación
test-warmest-pipe = Tubo más caliente
test-leak-limit = Límite de fuga

# Resultados de un ensayo.

result-expected = Esperada al final
result-lost = Pérdida no debida a la temperatura
result-mean-leak = Fuga media
result-largest-leak = Mayor fuga aún posible
result-as-nitrogen = Como nitrógeno
result-smallest-shown = Menor fuga detectable
result-mean-rise = Subida media, fuga y humedad juntas
result-late-rise = Subida del último tercio
result-smallest-leak = Menor fuga compatible con la subida
result-as-air = Como aire que entra
result-water = Presión máxima con agua sola

# Gráficos.

chart-pressure-gauge = Presión (manométrica)
chart-pressure-absolute = Presión (absoluta)
chart-time-since-start = Tiempo desde el inicio
chart-time-since-isolation = Tiempo desde el aislamiento
chart-measured = medido
chart-corrected = corregido a la temperatura inicial
chart-alt-corrected = Corregida a la temperatura inicial: de { $first } a { $last }.
chart-late-slope = pendiente del último tercio
chart-largest-leak = mayor fuga aún posible, por sí sola
chart-limit = { $by ->
    [none] límite, { $limit }
   *[other] límite ({ $by }), { $limit }
}
chart-alt = { $name } durante { $time }: de { $first } al inicio a { $last } al final{ $limit ->
    [none] {""}
   *[other] ; { $limit }
}.

# Balance de incertidumbre de un ensayo de presión.

budget-title = De dónde viene la incertidumbre de la presión perdida
budget-contribution = Contribución
budget-standard-uncertainty = Incertidumbre típica, { $unit }
budget-share = Parte de la varianza
budget-from = Origen
budget-together = Incertidumbre combinada
budget-root = raíz de la suma de los cuadrados
budget-gauge-start = Manómetro al inicio
budget-gauge-end = Manómetro al final
budget-thermometer = Termómetro, 0,3 K al inicio y al final
budget-lag = Gas con retraso respecto al tubo, 0,7 K al inicio y al final
budget-not-followed = 10 % del cambio de temperatura no seguido
budget-air = Cambio de la presión del aire, 5 hPa como máximo
budget-scatter = Dispersión en torno al ajuste, con su autocorrelación
budget-share-followed = Parte del calentamiento que el gas siguió, según el ajuste
budget-step = Resolución del manómetro
help-temperature = La temperatura supone el { $share } de la varianza: para mostrar fugas menores, registrar un día entero a temperatura más estable{ $finer ->
    [little] ; un manómetro más fino aportaría poco
   *[some] {""}
}.
help-scatter = Lo que el ajuste del registro deja fuera supone el { $share } de la varianza: para mostrar fugas menores, dar sombra al tubo y al termómetro y dejar puertas y ventiladores como están{ $finer ->
    [little] ; un manómetro más fino aportaría poco
   *[some] {""}
}.
help-gauge = El manómetro supone el { $share } de la varianza: para mostrar fugas menores, leer un manómetro más fino o mantener más tiempo.
help-air = La presión del aire supone el { $share } de la varianza: para mostrar fugas menores, leer un barómetro al inicio y al final o usar un manómetro absoluto{ $finer ->
    [little] ; un manómetro más fino aportaría poco
   *[some] {""}
}.

# Lo que muestra un ensayo de presión, en una frase y en pocas palabras.

hold-nothing-larger = No se detectó nada mayor que { $size }.
hold-nothing-larger-short = Nada mayor que { $size }
hold-leak = Se perdió más presión de la que explican la temperatura y las lecturas: hay una fuga.
hold-leak-short = Se perdió presión
hold-inconclusive = El ensayo no es concluyente.
hold-inconclusive-short = No concluyente
hold-no-size = La presión se mantuvo dentro de su incertidumbre; sin el volumen no se puede dar el tamaño de una fuga.
hold-no-size-short = Presión mantenida; no se puede dar tamaño
hold-strength = Ensayo de resistencia: no dice nada de las fugas pequeñas.
hold-strength-short = Solo ensayo de resistencia

# Por qué un ensayo de presión no decide, y qué lo aclararía.

hold-reason-no-temperature = La temperatura no se leyó al inicio y al final, así que un cambio de presión no se distingue de un calentamiento o enfriamiento. Para aclararlo: leer la temperatura del tubo con cada presión, o registrarla.
hold-reason-nitrogen-only = La corrección por temperatura solo está hecha para nitrógeno.
hold-reason-outside-table = Las lecturas quedan fuera de la tabla del nitrógeno (0,5 a 60 bar absolutos, −40 a 70 °C).
hold-reason-log-short = El registro dura menos de 23 horas: solo se calculan su primera y su última fila, las filas intermedias se dibujan.
hold-reason-log-unfit = El registro tiene muy pocas filas, o filas fuera de la tabla del nitrógeno, para un ajuste: solo se calculan su primera y su última fila.
hold-reason-unsteady = El ensayo duró menos de 23 horas y sus temperaturas inicial y final difieren en más de 2 K: el retraso del gas respecto al tubo puede superar lo que mostraría una fuga.
hold-settle-unsteady = Para aclararlo: volver a leer cuando el tubo esté a menos de 2 K de su temperatura inicial, o registrar presión y temperatura durante 23 horas o más.
hold-reason-rose = La presión subió más de lo que explican las lecturas; comprobar dónde está el termómetro y si una válvula dejó entrar gas.
hold-reason-no-volume = El volumen ensayado no está anotado, así que no se puede dar el tamaño de una fuga; añadirlo al registro de la instalación o al ensayo.
hold-reason-coarse = La menor fuga que pudo mostrar es mayor que el límite pedido. Para aclararlo: mantener más tiempo, a temperatura más estable, o ensayar un tramo menor.
hold-reason-near = La pérdida queda demasiado cerca del límite pedido para decidir en un sentido u otro. Para aclararlo: repetir el ensayo durante más tiempo, o repasar las uniones con solución jabonosa o detector.

# Cálculos de un ensayo de presión: títulos y notas.

hold-expected-title = Presión esperada al final del ensayo
hold-change-title = Presión perdida más allá de lo que explica la temperatura
hold-leak-title = Fuga media durante el ensayo
hold-limit-title = Mayor fuga que este ensayo deja posible
hold-smallest-title = Menor fuga que este ensayo pudo mostrar
hold-limit-mass-title = La misma fuga como masa de nitrógeno a la presión del ensayo
hold-note-hydrogen = El cinco por ciento de hidrógeno en el nitrógeno no se cuenta en Z.
hold-note-gauge-cancels = Un error constante del manómetro se anula, pues ambas lecturas se hicieron con el mismo manómetro.
hold-note-smaller = Este ensayo no puede distinguir una fuga menor de una fuga nula.
hold-note-gaps = El registro tiene huecos de más de una hora; lo que pasó en ellos no se sabe.
hold-note-temperature-still = La temperatura apenas varió, así que el registro no dice cómo la sigue el gas; se supone que la sigue.

# Si se cumplió el límite de un ensayo de vacío.

vacuum-limit-met = Se mantuvo por debajo de { $limit } durante { $within }{ $by ->
    [none] {""}
   *[other] {" "}(límite: { $by })
}: límite cumplido.
vacuum-limit-not-met = No se mantuvo por debajo de { $limit } durante { $within }{ $by ->
    [none] {""}
   *[other] {" "}(límite: { $by })
}: límite no cumplido.
vacuum-limit-too-short = Observado solo durante { $watched }; se piden { $within }{ $by ->
    [none] {""}
   *[other] {" "}(límite: { $by })
}.
vacuum-no-limit = No hay límite de presión anotado.

# Lo que muestra un ensayo de vacío sobre una fuga, y qué lo aclararía.

vacuum-nothing-larger = No se detectó nada mayor que { $upper }.
vacuum-nothing-larger-above-hold = No se detectó nada mayor que { $upper }, pero el vacío no se mantuvo: humedad, gas salido del aceite o vacío insuficiente.
vacuum-leak = La presión sube en línea recta, como lo hace el aire que entra: entre { $lower } y { $upper }.
vacuum-moisture = { $upper ->
    [none] La subida se aplana, como lo hacen la humedad y el gas salido del aceite; sin el volumen no se puede dar el tamaño de una fuga. Secar y repetir.
   *[other] La subida se aplana, como lo hacen la humedad y el gas salido del aceite; una fuga de hasta { $upper } puede ocultarse en ella. Secar y repetir.
}
vacuum-levels-above-water = { $upper ->
    [none] La subida se aplana por encima de lo que el agua puede alcanzar a esta temperatura: no agua sola, sino refrigerante salido del aceite, o aire.
   *[other] La subida se aplana por encima de lo que el agua puede alcanzar a esta temperatura: no agua sola, sino refrigerante salido del aceite, o aire; una fuga de hasta { $upper } puede ocultarse en ella.
}
vacuum-bending = El ensayo no es concluyente: la presión sube cada vez más despacio, y el gas desprendido no se distingue de una fuga de hasta { $upper }.
vacuum-uneven = El ensayo no es concluyente: la presión sube unas veces más deprisa y otras más despacio, lo que no hace una fuga constante; sigue siendo posible hasta { $upper }.
vacuum-coarse = El ensayo no es concluyente: sigue siendo posible hasta { $upper }, más que el límite pedido.
vacuum-no-size = La subida no se aplana; sin el volumen no se puede dar el tamaño de una fuga.
vacuum-acceptance-only = Sobre si hay fuga no permite concluir nada más.
vacuum-settle-second-fact = Una subida por sí sola no prueba una fuga. Para aclararlo: un ensayo de presión con nitrógeno y solución jabonosa, o hacer vacío una hora más y medir una segunda subida; si el último tercio vuelve a subir igual de rápido, es aire que entra; si sube más despacio, es gas desprendido.
vacuum-settle-dry = Para aclararlo: romper el vacío con nitrógeno seco, cambiar el filtro deshidratador, volver a hacer vacío hasta que se mantenga y repetir la subida. Una instalación húmeda oculta una fuga, así que esto no da el visto bueno.
vacuum-settle-above-water = Para aclararlo: volver a hacer vacío con el aceite caliente, repetir la subida y comprobar las uniones a presión con nitrógeno y solución jabonosa.
vacuum-settle-uneven = Para aclararlo: volver a hacer vacío, dejar válvulas, mangueras y temperatura como están y repetir la subida. Un ensayo de presión con nitrógeno muestra una fuga intermitente si está abierta en ese momento.
vacuum-settle-coarse = Para aclararlo: una subida más larga, un instrumento más fino o una parte menor del circuito; o un ensayo de presión con nitrógeno y solución jabonosa.
vacuum-settle-no-size = Para aclararlo: anotar el volumen ensayado, o comprobar las uniones a presión con nitrógeno y solución jabonosa.
vacuum-no-place = Un ensayo de vacío no muestra dónde está una fuga.

# Por qué un ensayo de vacío no muestra más.

vacuum-reason-above-water = La presión superó lo que el agua sola puede alcanzar en la parte más caliente: entró también aire o refrigerante.
vacuum-reason-water-unchecked = No se leyeron ni el tubo más caliente ni el aire, así que no se comprobó si el agua puede alcanzar esta presión.
vacuum-reason-no-volume = El volumen ensayado no está anotado, así que no se puede dar el tamaño de una fuga.
vacuum-reason-no-leak-limit = No hay límite de fuga anotado, así que la subida no se compara con ninguno.
vacuum-reason-inward = { $refrigerant } hierve a una presión inferior a la del aire en las partes frías de esta instalación, así que una fuga allí aspira aire cuando la instalación está en marcha, como en este ensayo.
vacuum-reason-two-readings = Dos lecturas y ningún registro, así que el ensayo muestra solo si se cumplió el límite: entre dos lecturas, una fuga, la humedad y el gas del aceite suben por igual.
vacuum-reason-moving-temperature = La temperatura varió { $moved }, más de { $most }, así que el ensayo muestra solo si se cumplió el límite: una subida a temperatura cambiante muestra el calor y no la fuga.
vacuum-reason-no-temperature = La temperatura no se registró durante el ensayo: se da por estable.
vacuum-reason-short = El registro dura menos de 20 minutos, así que el ensayo muestra solo si se cumplió el límite.
vacuum-reason-few-rows = El registro tiene menos de 30 filas, así que el ensayo muestra solo si se cumplió el límite.
vacuum-reason-uneven = Un tercio del tiempo del registro tiene muy pocas filas, así que el ensayo muestra solo si se cumplió el límite.
vacuum-reason-not-vacuum = El registro pasa de una décima de atmósfera, donde una fuga ya no entra de forma uniforme, así que el ensayo muestra solo si se cumplió el límite.
vacuum-reason-constant = El instrumento mostró el mismo valor en todas las filas, como uno atascado o cerrado, así que el ensayo muestra solo si se cumplió el límite.
vacuum-reason-stopped = La subida se detuvo de una fila a la siguiente, como en el tope de escala de un instrumento, así que el ensayo muestra solo si se cumplió el límite.
vacuum-reason-fell = La presión bajó, por la bomba, por enfriamiento, por deriva del instrumento o hacia el aceite, así que el ensayo muestra solo si se cumplió el límite.

# Cálculos de un ensayo de vacío: títulos y notas.

vacuum-rise-title = Subida media del vacío
vacuum-late-title = Subida del último tercio, fuga y desgasificación juntas
vacuum-whole-title = Subida de todo el registro según una recta
vacuum-mass-title = La misma fuga como masa de aire que entra, en un año de 365 días
vacuum-note-upper = No incluye: un error del instrumento proporcional a su lectura, una fuga intermitente, ni el gas que vuelven a tomar el aceite o las paredes al enfriarse.
vacuum-note-rise = La humedad y la desgasificación suben la presión como lo hace una fuga: dentro de la incertidumbre del volumen y del instrumento, que no se calcula aquí, una fuga sola no es mayor que esto, a menos que la instalación se enfriara durante el ensayo.
water-title = Presión máxima que el agua sola puede alcanzar
water-note-air = No se leyó el tubo más caliente: se toma a la temperatura del aire.

# Lo que significa en servicio el límite de un ensayo.

service-note-between = El flujo viscoso y el molecular son los dos extremos: lo que escaparía por la abertura queda entre ambos; el ensayo no permite precisar más.
service-note-molecular-only = El flujo viscoso no se puede calcular, pues no se dispone de la viscosidad de uno de los gases.
service-note-inwards = No por encima de la presión del aire exterior: aquí por una fuga entraría aire, no saldría refrigerante.
service-pressure-title = Presión de { $refrigerant } en servicio
service-viscous-title = Ese límite en servicio, como vapor de { $refrigerant }, flujo viscoso
service-molecular-title = Ese límite en servicio, como vapor de { $refrigerant }, flujo molecular
service-saturation = saturación de { $refrigerant }, CoolProp 8.0.0
service-note-no-saturation = No se dispone de presión de saturación a 40 °C (a 20 °C en el lado de baja), como ocurre por encima del punto crítico: se toma como presión de servicio la máxima admisible de la placa.
service-note-vapour = Como vapor. Una fuga por debajo del nivel del líquido deja salir más, lo que no se calcula aquí.
service-note-year = Un año tiene 365 días, y la presión se supone igual todo el año.
molar-mass-of = { $mass } ({ $gas })
viscosity-of = { $viscosity } ({ $gas })
