# Palabras de las notas que salen en la página, según su inglés.

# Motivo de la visita, razón de un movimiento.
phrase-leak-search-and-repair = búsqueda y reparación de fugas
phrase-leak-search = búsqueda de fugas
phrase-repair = reparación
phrase-periodic-leak-check = control de fugas periódico
phrase-verification = control posterior a la reparación
phrase-emergency-call = aviso urgente
phrase-commissioning = puesta en marcha
phrase-retrofit = cambio de refrigerante
phrase-service = mantenimiento
phrase-decommissioning = retirada de servicio
phrase-installation = primera carga
phrase-recharge = recarga
phrase-top-up = reposición
phrase-leak = fuga
phrase-seasonal = estacional

# Cómo quedó la instalación.
phrase-running = en marcha
phrase-off = parada
phrase-isolated = aislado
phrase-empty = vacía
phrase-standing = parada, cargada
phrase-emptied = vaciada
phrase-under-nitrogen = con nitrógeno

# El resultado según el técnico.
phrase-found-and-repaired = encontrada y reparada
phrase-found-left-open = encontrada, queda abierta
phrase-not-found-loss-stands = no encontrada, la pérdida queda sin explicar
phrase-nothing-found = nada encontrado
phrase-repair-verified = reparación revisada
phrase-gas-added-not-repaired = refrigerante añadido, sin reparar
phrase-retrofitted = refrigerante cambiado

# El resultado según las pruebas.
phrase-every-leak-found-was-repaired-and-proved = cada fuga encontrada se reparó y cada reparación se comprobó
phrase-repaired-but-no-proof-after-the-repair-is-noted = reparado, pero no consta ninguna comprobación posterior a la reparación
phrase-repaired-but-what-was-looked-at-after-the-repair-does-not-prove-i = reparado, pero la revisión posterior no basta para comprobarlo
phrase-some-leaks-were-repaired-others-are-open = unas fugas se repararon, otras siguen abiertas
phrase-leaks-were-found-and-left-open = se encontró fuga y quedó sin reparar
phrase-there-are-suspicions-that-were-not-cleared = quedan sospechas sin descartar
phrase-refrigerant-had-been-lost-and-its-leak-was-not-found = faltaba refrigerante y no se encontró la fuga
phrase-searched-nothing-found = se buscó y no se encontró nada
phrase-earlier-repairs-were-looked-at-again-nothing-was-shown-there = se revisaron reparaciones anteriores, allí no se detectó nada
phrase-refrigerant-was-added-no-search-and-no-repair-are-noted = se añadió refrigerante, no constan búsqueda ni reparación
phrase-changed-to-another-refrigerant = cambiado a otro refrigerante
phrase-no-search-no-leak-and-no-proof-are-noted = no constan búsqueda, fuga ni comprobación
phrase-no-proof-after-the-last-repair-bears-it-or-a-test-after-it-lost-p = ninguna comprobación posterior a la última reparación lo respalda, o un ensayo posterior perdió presión
phrase-no-repair-is-noted-here-or-earlier = no consta ninguna reparación, aquí ni antes

# Hallazgos y su estado.
phrase-suspect = sospecha
phrase-defect = defecto
phrase-repaired-earlier-holding = reparado, aguanta
phrase-repaired-proved = reparado, comprobado
phrase-repaired-not-proved = reparado, sin comprobar
phrase-temporary-repair = reparación provisional
phrase-temporary = provisional
phrase-open = sin reparar
phrase-left-open = sin reparar
phrase-suspect-cleared = sospecha descartada
phrase-new = nuevo
phrase-still-leaking = sigue con fuga
phrase-leaking-again-at-the-same-place = de nuevo con fuga en el mismo punto
phrase-repaired-holding = reparado, aguanta
phrase-repaired-not-re-tested = reparado, sin revisar de nuevo
phrase-nothing-shown = no se detectó nada
phrase-not-looked-at = no revisado
phrase-taken-out = retirado
phrase-others = otros

# Grado de certeza de una fuga.
phrase-presumed = supuesta
phrase-located = localizada
phrase-confirmed = confirmada
phrase-evident = evidente
phrase-indirect-signs-only = solo indicios indirectos
phrase-found-by-one-direct-method = encontrada por un método directo
phrase-found-by-two-independent-direct-methods = encontrada por dos métodos directos independientes
phrase-a-break-or-a-jet-was-seen-heard-or-felt = se vio, oyó o sintió una rotura o un chorro

# Métodos de búsqueda y ensayo.
phrase-visual = inspección visual
phrase-oil = aceite
phrase-ice = hielo o escarcha
phrase-corrosion = corrosión
phrase-sound = ruido
phrase-parameter = parámetro
phrase-break = rotura
phrase-jet = chorro
phrase-electronic = detector electrónico
phrase-bubbles = solución jabonosa
phrase-tracer = gas trazador
phrase-ultrasonic = ultrasonidos
phrase-dye = tinte fluorescente
phrase-litmus = papel de tornasol
phrase-halide = lámpara haloide
phrase-pressure-test = ensayo de presión
phrase-vacuum-test = ensayo de vacío
phrase-pressure-test-of-its-section = ensayo de presión de su tramo
phrase-vacuum-test-of-its-section = ensayo de vacío de su tramo
phrase-tightness = estanqueidad
phrase-strength = resistencia

# Gases.
phrase-nitrogen = nitrógeno
phrase-5-hydrogen-in-nitrogen = 5 % de hidrógeno en nitrógeno
phrase-hydrogen-in-nitrogen-over-5 = más del 5 % de hidrógeno en nitrógeno
phrase-helium = helio
phrase-carbon-dioxide = dióxido de carbono
phrase-air = aire
phrase-oxygen = oxígeno
phrase-refrigerant = refrigerante
phrase-nitrogen-with-refrigerant = nitrógeno con refrigerante

# Movimientos del refrigerante y de sus botellas.
phrase-charged = cargado
phrase-recovered = recuperado
phrase-relief-lifted = escape por válvula de seguridad
phrase-purged = purgado
phrase-vented = liberado al aire
phrase-lost-in-service = perdido en la intervención
phrase-weighed = pesado
phrase-cylinder-label = según la etiqueta de la botella
phrase-estimated = estimado
phrase-full-by-weight = completa por peso
phrase-full = completa
phrase-full-by-sight-glass = completa por visor
phrase-full-by-subcooling = completa por subenfriamiento
phrase-partial = parcial
phrase-same-system = misma instalación
phrase-held = guardado en la botella
phrase-recycling = reciclado
phrase-reclaim = regeneración
phrase-destruction = destrucción
phrase-virgin = virgen
phrase-recycled = reciclado
phrase-reclaimed = regenerado
phrase-filled-at-depot = llenada en el almacén
phrase-filled = llenada
phrase-bought = comprada
phrase-returned = devuelta
phrase-retested = retimbrada

# Instalaciones, locales, registros anteriores.
phrase-commercial-refrigeration = refrigeración comercial
phrase-industrial-process-refrigeration = refrigeración de procesos industriales
phrase-comfort-cooling = climatización de confort
phrase-refrigerated-transport = transporte refrigerado
phrase-heat-pump = bomba de calor
phrase-other = otra
phrase-in-use = en uso
phrase-standby = en reserva
phrase-mothballed = fuera de uso temporal
phrase-decommissioned = retirada de servicio
phrase-leak-found = fuga encontrada
phrase-repaired = reparado
phrase-checked = revisado
phrase-verified = revisado tras la reparación
phrase-occupied = ocupado
phrase-machinery-room = sala de máquinas
phrase-open-air = aire libre
phrase-annualizing = extrapolación al año
phrase-rolling-average = media móvil

# Marcas en el tiempo.
phrase-found-leaking-again-after-a-repair = hallado de nuevo con fuga tras una reparación
phrase-found-still-leaking = hallado aún con fuga
phrase-repaired-and-noted-as-proved = reparado y anotado como comprobado
phrase-repaired-for-the-time-being-or-shut-off = reparado de forma provisional, o aislado
phrase-suspected = bajo sospecha
phrase-suspicion-cleared = sospecha descartada
phrase-looked-at-nothing-shown-ok-3-for-three-visits-together = revisado, no se detectó nada; ok×3: tres revisiones seguidas
phrase-only-a-test-of-its-section-held = solo aguantó un ensayo de su tramo
phrase-not-reached = no alcanzado
phrase-part-replaced-the-count-starts-anew = pieza sustituida, la cuenta empieza de cero
phrase-part-taken-out = pieza retirada
phrase-by-others-or-from-earlier-records = por otros, o según registros anteriores

# Por qué se pide más tiempo; sí y no en las notas.
phrase-industrial-process-shutdown = parada de un proceso industrial
phrase-parts-not-delivered = piezas no entregadas
phrase-another-law = otra ley
phrase-radiological-hazard = riesgo radiológico
phrase-true = sí
phrase-false = no
