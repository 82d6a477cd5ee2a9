# The appendix of workings, and what the workings say.

days = { $days ->
    [one] { $days } día
   *[other] { $days } días
}
assumed = supuesto: { $reason }
result-of = resultado de
half-width = semianchura del intervalo
workings-of-account = Balance de refrigerante
workings-of-circuit = Balance de refrigerante, circuito { $id }
workings-of-pressure-test = Prueba de presión { $id }
workings-of-vacuum-test = Prueba de vacío { $id }
workings-of-readings = Lecturas de funcionamiento
workings-of-room = El local y sus límites
