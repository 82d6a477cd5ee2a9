# La primera página: cabecera, resultado, datos, lo abierto, próximas fechas.

visit = Visita
the-contractor = La empresa
certificate-of-firm = certificado { $number }
certificate-of-person = certificado { $number }
certificate-with-category = certificado { $number }, categoría { $category }
signs-for-contractor = Por la empresa
signs-for-operator = Recibido por el titular
state-earlier-repair-holding = reparado antes, aguanta
state-repaired-proved = reparado, comprobado
state-repaired-not-proved = reparado, sin comprobar
state-temporary = reparación provisional
state-isolated = aislado
state-left-open = dejado abierto
state-suspect = sospechoso
state-suspect-cleared = sospecha descartada
class-flammable = { $class }, inflamable
class-not-flammable = { $class }, no inflamable
plant-operator = Titular
plant-address = Dirección
plant-category = Categoría
plant-in-service-since = En servicio desde
plant-complaint = Queja
plant-air-outside = Aire exterior
plant-left = Estado al irse
plant-back-in-normal-operation = De nuevo en marcha normal
