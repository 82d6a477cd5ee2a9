# Método, límites, lecturas, locales, el circuito dibujado.

checked-air = refrigerante en el aire { $amount }
checked-oxygen = oxígeno { $amount }
checked-ventilated = ventilado
checked-not-ventilated = no ventilado
checked-locked-off = bloqueado contra el arranque
checked-not-locked-off = no bloqueado contra el arranque
checked-ignition = fuentes de ignición: { $sources }
room-machinery = Local { $room } (sala de máquinas): no se aplican los límites de los locales ocupados; la normativa aplicable pide ventilación y un detector de gas.
room-size-wanted = Local { $room }: { $refrigerant } es inflamable o tóxico y puede llegar a este local ocupado, cuyo tamaño no está anotado. No se sabe si se superaría su límite.
room-size-not-noted = Local { $room } (ocupado): su tamaño no está anotado, por lo que no se comprueba su límite.
room-concentration = { $circuit ->
    [none] Local { $room } (ocupado): si saliera toda la carga de la instalación y se mezclara de manera uniforme, el aire contendría { $concentration } de { $refrigerant }.
   *[other] Local { $room } (ocupado): si saliera toda la carga del circuito «{ $circuit }» y se mezclara de manera uniforme, el aire contendría { $concentration } de { $refrigerant }.
}
room-no-limit = No se dispone para él de ningún límite leído en su fuente, por lo que no se compara ninguno: verifíquese según la normativa aplicable.
room-limit = { $above ->
    [yes] Eso está por encima del límite de { $limit } ({ $source }). Si suena la alarma, salir; la detección, la ventilación o una carga menor las decide la normativa aplicable.
   *[no] Eso no está por encima del límite de { $limit } ({ $source }).
}
room-quarter = { $above ->
    [yes] Está por encima de un cuarto del límite inferior de inflamabilidad, { $limit }.
   *[no] No está por encima de un cuarto del límite inferior de inflamabilidad, { $limit }.
}
room-equipped = { $has ->
    [both] Según las notas, ventilación: { $ventilation }; detector de gas: { $detector }.
    [ventilation] Según las notas, ventilación: { $ventilation }.
   *[detector] Según las notas, detector de gas: { $detector }.
}
safety-class = { $refrigerant } es de la clase de seguridad { $class }.
safety-can-suffocate = No es inflamable, pero puede asfixiar, primero en las zonas bajas.
safety-can-burn = Puede arder: mantener lejos las fuentes de ignición, ventilar y usar herramientas y detectores aptos para él.
safety-is-toxic = Es tóxico: salir del local si suena la alarma y entrar solo con protección respiratoria.
search-title = Búsquedas
search-plant = instalación { $state }
search-background = fondo: { $background }
head-for = Duración
head-method = Método
head-where = Dónde
head-conditions = Condiciones
limit-not-all-visible = La búsqueda no abarcó todas las partes visibles y accesibles.
limit-of-search = Una búsqueda muestra lo que su método podía encontrar en los lugares alcanzados, a la presión de esa hora; una fuga menor o intermitente pudo no manifestarse.
limit-of-tests = Un ensayo de presión o de vacío solo muestra que no se detectó nada mayor que el tamaño indicado, en la parte ensayada y durante el tiempo que duró; no muestra ningún lugar y no sustituye a un control de fugas.
work-title = Pieza por pieza
work-brazed = { $work } (soldado con barrido de nitrógeno)
head-part = Pieza
head-work = Trabajo
used-attendance = { $from } a { $to }
used-last-checked = última comprobación o calibración el { $day }
used-on-day = { $day }: { $said }
used-detector-responded = { $leak ->
    [none] respondió a las { $clock } a una fuga de referencia
   *[other] respondió a las { $clock } a la fuga de referencia ({ $leak })
}
used-detector-silent = { $leak ->
    [none] no respondió a una fuga de referencia a las { $clock }
   *[other] no respondió a las { $clock } a la fuga de referencia ({ $leak })
}
reading-title = Lecturas de la instalación en marcha
reading-head = Lectura
reading-suction-pressure = Presión de aspiración
reading-suction-temperature = Temperatura de aspiración
reading-discharge-pressure = Presión de descarga
reading-discharge-temperature = Temperatura de descarga
reading-liquid-pressure = Presión del líquido
reading-liquid-temperature = Temperatura del líquido
reading-air-on-condenser = Aire en el condensador
reading-receiver-level = Nivel del recipiente de líquido
reading-compressor-current = Corriente del compresor
reading-superheat = Recalentamiento
reading-subcooling = Subenfriamiento
reading-warm-side = Lado caliente
reading-above-critical = por encima del punto crítico: sin subenfriamiento
reading-sight-glass = Visor
reading-remark = Observación
part-compressor = compresor
part-discharge-line = línea de descarga
part-condenser = condensador
part-receiver = recipiente de líquido
part-drier = filtro deshidratador
part-sight-glass = visor
part-solenoid-valve = válvula solenoide
part-liquid-line = línea de líquido
part-expansion-device = dispositivo de expansión
part-evaporator = evaporador
part-suction-line = línea de aspiración
schematic-caption = { $circuit ->
    [none] La instalación, no a escala ni con todas sus partes; líneas continuas: alta presión; discontinuas: baja presión. Los números son los de los puntos.
   *[other] Circuito «{ $circuit }», no a escala ni con todas sus partes; líneas continuas: alta presión; discontinuas: baja presión. Los números son los de los puntos.
}
schematic-not-drawn = { $evaporators ->
    [one] Un evaporador más no está dibujado.
   *[other] Otros { $evaporators } evaporadores no están dibujados.
}
schematic-points-not-drawn = { $count ->
    [one] Un punto no está dibujado aquí: { $numbers }.
   *[other] Puntos no dibujados aquí: { $numbers }.
}
schematic-loop = { $circuit ->
    [none] La instalación como circuito cerrado: { $parts }.
   *[other] Circuito «{ $circuit }» como circuito cerrado: { $parts }.
}
schematic-point = Punto { $number } ({ $part }): { $state }.
