# El balance de refrigerante y las tasas de fuga.

account-net = { $circuit ->
    [none] Saldo
   *[other] Saldo, circuito { $circuit }
}
account-loss-per-year = { $circuit ->
    [none] Pérdida al año
   *[other] Pérdida al año, circuito { $circuit }
}
account-of-full-charge = { $share } de la carga completa
account-sum = saldo
account-movements = { $circuit ->
    [none] Movimientos
   *[other] Circuito { $circuit }
}
account-signs = Lo que entra es positivo, lo que sale es negativo. Lo recuperado y vuelto a cargar no es pérdida.
account-nothing-moved = No se movió refrigerante.
account-recovered-before = recuperado antes
account-cylinders = Botellas
account-gross = Pesadas de la botella con su refrigerante.
account-circuit = { $circuit ->
    [none] La instalación
   *[other] Circuito { $circuit }
}
account-earlier-record = registro anterior
account-this-book = estas notas
account-added-before = Refrigerante añadido antes, saldo de cada intervención
account-complete-since = Completo solo desde el { $day }.
head-when = Cuándo
head-movement = Movimiento
head-why = Por qué
head-cylinder = Botella
head-mass = Masa, { $unit }
head-refrigerant = Refrigerante
head-origin-or-destination = Origen o destino
head-before = Antes, { $unit }
head-after = Después, { $unit }
head-circuit = Circuito
head-from-record = Fuente
head-added = Añadido, { $unit }
