# Nombres y fuentes de los métodos de cálculo, según su inglés.

# Ensayo de presión con dos lecturas.

phrase-pressure-expected-at-the-end-corrected-for-temperature = Presión esperada al final, corregida por temperatura
phrase-p-p-z-t-z-t-absolute-pressure-and-kelvin = p₂' = p₁ × (Z₂ × T₂) ÷ (Z₁ × T₁), presión absoluta y kelvin
phrase-real-gas-at-constant-volume-z-of-nitrogen-from-the-table-made-wit = gas real a volumen constante; Z del nitrógeno de la tabla hecha con CoolProp 8.0.0
phrase-compressibility-of-nitrogen-coolprop-8-0-0 = compresibilidad del nitrógeno, CoolProp 8.0.0
phrase-pressure-lost-beyond-what-temperature-explains = Presión perdida más allá de lo que explica la temperatura
phrase-uncorrelated-inputs-jcgm-100-2008-5-1-a-reading-s-step-as-step-12 = magnitudes de entrada no correlacionadas, JCGM 100:2008 5.1; la resolución de una lectura como resolución/√12, F.2.2.1; factor de cobertura 2
phrase-in-simulated-tests-the-interval-built-with-it-held-the-true-leak-i = en ensayos simulados el intervalo así formado contenía la fuga real en el 85 al 100 % de los casos; no medido en esta instalación
phrase-standard-atmosphere-for-want-of-a-barometer-or-an-altitude = atmósfera normal, a falta de barómetro o altitud
phrase-the-air-pressure-may-have-changed-by-5-hpa-between-the-readings = la presión del aire pudo cambiar 5 hPa entre las lecturas

# Ensayo de presión con un registro.

phrase-pressure-lost-beyond-what-temperature-explains-fitted-over-the-wh = Presión perdida más allá de lo que explica la temperatura, ajustada sobre todo el registro
phrase-p-zt-zt-p-d-t-t-end-c-dt-dt-c-t-t-by-least-squares-d-u-u-fit-u-sh = p = [ZT ÷ (ZT)₀] × (P₀ − D × t ÷ t_end) + c₁ × dT/dt + c₂ × (T − T̄) por mínimos cuadrados;  Δ = D;  u²(Δ) = u_fit² + u_share² + u_step² + u²(air);  U = 3u
phrase-least-squares-with-the-share-and-the-lag-held-near-1-and-0-real-g = mínimos cuadrados con la parte y el retraso sujetos cerca de 1 y 0; gas real a volumen constante, Z del nitrógeno de la tabla hecha con CoolProp 8.0.0; varianza por la autocorrelación integrada; la resolución de una lectura como resolución/√12, JCGM 100:2008 F.2.2.1; factor de cobertura 3, según registros simulados
phrase-in-simulated-logs-the-interval-built-with-it-held-the-true-leak-i = en registros simulados el intervalo así formado contenía la fuga real en el 87 al 100 % de los casos; no medido en esta instalación
phrase-the-log = el registro
phrase-averages-over-equal-times-288-in-the-log-at-most = medias sobre tiempos iguales, 288 como máximo en el registro
phrase-mean-of-the-temperatures-read = media de las temperaturas leídas
phrase-standard-deviation-of-the-means-about-the-fit = desviación típica de las medias en torno al ajuste
phrase-integrated-autocorrelation-so-many-means-in-a-row-say-the-same = autocorrelación integrada: tantas medias seguidas dicen lo mismo
phrase-holds-c-gas-follows-all-of-a-change-of-temperature-to-within-this = sujeta c₂: el gas sigue todo un cambio de temperatura, salvo esto
phrase-holds-c-gas-is-not-behind-the-thermometer-to-within-this = sujeta c₁: el gas no va por detrás del termómetro, salvo esto
phrase-fitted-from-c-and-c = ajustado, a partir de c₂ y c₁

# La fuga de un ensayo de presión.

phrase-mean-leak-over-the-test = Fuga media durante el ensayo
phrase-constant-volume-gas-at-the-temperature-of-the-test-pressure-chang = volumen constante; gas a la temperatura del ensayo (del ámbito del método por cambio de presión de EN 13184)
phrase-largest-leak-that-this-test-leaves-possible = Mayor fuga que este ensayo deja posible
phrase-upper-end-of-the-interval-of-the-leak-coverage-factor-2-for-two-r = extremo superior del intervalo de la fuga; factor de cobertura 2 para dos lecturas, 3 para un registro ajustado
phrase-smallest-leak-that-this-test-could-have-shown = Menor fuga que este ensayo pudo mostrar
phrase-a-loss-that-differs-from-none-at-the-95-level-normal-distribution = una pérdida que difiere de ninguna al nivel del 95 %, distribución normal; u(Δ) del propio balance del ensayo

# Tamaños de fuga como masa.

phrase-leak-size-as-mass = Tamaño de fuga como masa
phrase-mass-rate-q-m-r-t = caudal másico = Q × M ÷ (R × T)
phrase-ideal-gas-law-r-8-314462618-j-mol-k-codata-2018 = ley de los gases ideales; R = 8,314462618 J/(mol K), CODATA 2018
phrase-molar-mass-of-n-28-0134-g-mol-from-memory-as-coolprop-8-0-0-uses-i = masa molar de N₂, 28,0134 g/mol (de memoria, como la usa CoolProp 8.0.0)
phrase-molar-mass-of-dry-air-28-966-g-mol-from-memory = masa molar del aire seco, 28,966 g/mol (de memoria)

# Ensayo de vacío.

phrase-mean-rise-of-the-vacuum-as-a-throughput = Subida media del vacío, como caudal
phrase-rate-of-rise-at-constant-volume-40-cfr-1065-644-in-form-moisture-a = velocidad de subida a volumen constante, en la forma de 40 CFR 1065.644; incluye humedad y desgasificación
phrase-rise-of-a-part-of-the-log-as-a-throughput = Subida de una parte del registro, como caudal
phrase-q-v-p-t-p-along-the-straight-line-fitted-to-the-rows-u-v-u-p-t-p-u = Q = V × Δp ÷ t, Δp a lo largo de la recta ajustada a las filas;  U² = (V × U(Δp) ÷ t)² + (Δp × U(V) ÷ t)²
phrase-least-squares-standard-error-times-the-memory-of-the-noise-studen = mínimos cuadrados; error típico multiplicado por la memoria del ruido, t de Student al 99 %, y la resolución del instrumento; magnitudes de entrada no correlacionadas, JCGM 100:2008 5.1
phrase-largest-leak-that-this-rise-leaves-possible = Mayor fuga que esta subida deja posible
phrase-gas-given-off-by-moisture-walls-and-oil-only-adds-to-the-rise-so-t = el gas desprendido por la humedad, las paredes y el aceite solo aumenta la subida, así que una fuga constante no es mayor que la subida del último tercio; en subidas simuladas se cumplió en al menos el 97 % de los casos
phrase-smallest-leak-that-this-straight-rise-can-be-if-it-is-one = Menor fuga que puede ser esta subida recta, si lo es
phrase-q-low-the-lower-of-q-all-u-q-all-and-q-late-u-q-late = Q_low = el menor de Q_all − U(Q_all) y Q_late − U(Q_late)
phrase-the-whole-rise-and-its-last-third-must-both-bear-it = la subida entera y su último tercio deben admitirla ambos
phrase-20-c-for-want-of-a-temperature = 20 °C, a falta de una temperatura
phrase-vapour-pressure-of-water-at-the-warmest-part = Presión de vapor del agua en la parte más caliente
phrase-p-water-saturation-pressure-of-water-ice-below-0-c-at-t = p_water = presión de saturación del agua (hielo por debajo de 0 °C) a T
phrase-iapws-sr1-86-1992-over-liquid-iapws-r14-08-2011-over-ice = IAPWS SR1-86(1992) sobre líquido, IAPWS R14-08(2011) sobre hielo

# El límite de un ensayo en servicio.

phrase-pressure-in-service = Presión en servicio
phrase-p-s-bubble-pressure-at-t-or-the-highest-that-was-read-where-that-i = p_s = presión de burbuja a T, o la más alta leída, donde sea mayor; como máximo la de la placa
phrase-saturation-from-tables-made-with-coolprop-8-0-0 = saturación de tablas hechas con CoolProp 8.0.0
phrase-leak-in-service-viscous-flow = Fuga en servicio, flujo viscoso
phrase-laminar-flow-of-an-ideal-gas-through-an-unchanged-channel-poiseui = flujo laminar de un gas ideal por un canal sin cambios (Poiseuille); η a 20 °C y 101 325 Pa
phrase-leak-in-service-molecular-flow = Fuga en servicio, flujo molecular
phrase-free-molecular-flow-through-an-unchanged-channel-knudsen = flujo molecular libre por un canal sin cambios (Knudsen)
phrase-condensing-at-40-c-on-a-warm-day-stands-for-service-on-the-high-s = la condensación a 40 °C en un día cálido representa el servicio en el lado de alta; ninguna lectura de esta visita fue mayor
phrase-standing-still-at-20-c-when-the-low-side-sees-more-than-in-operat = parada a 20 °C, situación en la que el lado de baja ve más que en marcha; ninguna lectura de esta visita fue mayor
phrase-20-c-for-want-of-a-reading = 20 °C, a falta de una lectura
phrase-wilke-s-rule-j-chem-phys-18-1950-517-from-memory-from-the-constit = regla de Wilke (J. Chem. Phys. 18, 1950, 517, de memoria) a partir de los constituyentes en CoolProp 8.0.0: derivada, a menos del 5 % de CoolProp para R-404A, R-407C, R-410A, R-507A

phrase-net-addition-of-a-job = Adición neta de una intervención
phrase-common-practice-what-was-recovered-and-charged-back-is-not-a-loss = práctica habitual: lo recuperado y vuelto a cargar no es pérdida; incertidumbre según JCGM 100:2008 5.1 (exactitud a de la báscula y su resolución tomadas como rectangulares, F.2.2.1), factor de cobertura 2
phrase-net-sum-charged-sum-recovered-sum-lost-in-service-purged-or-vente = saldo = suma cargada − suma recuperada − suma perdida en la intervención, purgada o liberada;  U = 2u, u² = suma de (a² ÷ 3 + resolución² ÷ 12) sobre las pesadas
phrase-co-equivalent = Equivalente de CO₂
phrase-co-e-mass-gwp = CO₂e = masa × PCG (GWP)
phrase-mass-times-gwp-of-the-set-named-mixtures-by-nominal-mass-fraction = masa por PCG (GWP) de la serie nombrada; mezclas por fracciones másicas nominales, Reglamento (UE) 2024/573, anexo VI y 40 CFR 84.64(b)
phrase-leak-rate-annualizing-method = Tasa de fuga, método de anualización
phrase-rate-100-added-full-charge-shorter-of-days-since-the-last-additio = tasa = 100 % × (añadido ÷ carga completa) ÷ (días desde la última adición, 365 como máximo, ÷ 365)
phrase-40-cfr-82-152-leak-rate-for-part-84-the-same-by-84-102-from-memor = 40 CFR 82.152, «leak rate»; para la parte 84 lo mismo según 84.102 (de memoria, verifíquese)
phrase-leak-rate-rolling-average-method = Tasa de fuga, método de la media móvil
phrase-rate-100-sum-of-additions-in-the-window-full-charge = tasa = 100 % × suma de las adiciones del periodo ÷ carga completa
phrase-loss-per-year-in-percent-of-the-full-charge = Pérdida al año en porcentaje de la carga completa
phrase-rate-100-lost-full-charge-365-days = tasa = 100 % × (perdido ÷ carga completa) × 365 ÷ días
phrase-common-practice-days-counted-from-the-last-addition-a-year-of-365 = práctica habitual; días contados desde la última adición, año de 365 días
phrase-added-in-a-calendar-year-in-percent-of-the-full-charge = Añadido en un año natural en porcentaje de la carga completa
phrase-share-100-sum-of-the-year-s-additions-full-charge = parte = 100 % × suma de las adiciones del año ÷ carga completa
phrase-40-cfr-82-157-j-and-84-106-j-125-or-more-in-a-calendar-year-is-to = 40 CFR 82.157(j) y 84.106(j): un 125 % o más en un año natural debe declararse
phrase-refrigerant-missing-in-all = Refrigerante que faltaba en total
phrase-missing-sum-of-what-each-charge-put-back-up-to-the-one-that-ended = faltaba = suma de lo que repuso cada carga, hasta la que puso fin a la pérdida
phrase-an-addition-that-did-not-fill-the-circuit-belongs-to-the-same-los = una adición que no completó la carga pertenece a la misma pérdida que la siguiente, práctica habitual; así también 40 CFR 82.152, «leak rate», para varias adiciones por una misma fuga
phrase-what-the-leaks-found-explain-of-the-loss = Lo que las fugas encontradas explican de la pérdida
phrase-explained-sum-of-leak-size-time-it-leaked-from-the-least-of-both-t = explicado = suma de tamaño de fuga × tiempo con fuga, del mínimo de ambos al máximo de ambos
phrase-interval-arithmetic-that-a-leak-kept-the-size-it-was-measured-at-i = aritmética de intervalos; que una fuga mantuviera el tamaño medido es una suposición
phrase-concentration-in-the-room-if-the-whole-charge-came-out = Concentración en el local si saliera toda la carga
phrase-refrigerant-recovered-for-a-change-of-refrigerant = Refrigerante recuperado para un cambio de refrigerante
phrase-recovered-sum-of-what-went-into-cylinders = recuperado = suma de lo que pasó a botellas
phrase-sum-of-weighings-their-uncertainties-taken-as-uncorrelated-jcgm-1 = suma de las pesadas; sus incertidumbres se toman como no correlacionadas, JCGM 100:2008 5.1
phrase-missing-when-a-circuit-was-emptied = Lo que faltaba al vaciar un circuito
phrase-missing-full-charge-recovered-lost-while-working = faltaba = carga completa − recuperado − perdido al trabajar
phrase-common-practice-what-stays-in-oil-and-hoses-is-in-it = práctica habitual; lo que queda en el aceite y las mangueras está incluido
phrase-c-m-a-h = c = m ÷ (A × h)
phrase-c-m-v = c = m ÷ V
phrase-charge-over-room-volume-as-en-378-1-and-ashrae-15-compare-it-with = carga entre volumen del local, como EN 378-1 y ASHRAE 15 la comparan con sus límites; mezcla uniforme, lo que el aire junto al suelo no es al principio
phrase-a-quarter-of-the-lower-flammable-limit = Un cuarto del límite inferior de inflamabilidad
phrase-screening-at-25-of-the-lfl-common-practice = criterio orientativo del 25 % del límite inferior de inflamabilidad (LFL), práctica habitual
phrase-superheat-of-the-suction-vapour = Recalentamiento del vapor de aspiración
phrase-t-t-suction-t-dew-p-suction-absolute-pressure = ΔT = T_suction − T_dew(p_suction), presión absoluta
phrase-common-practice-dew-temperature-from-the-table-made-with-coolprop = práctica habitual; temperatura de rocío de la tabla hecha con CoolProp 8.0.0
phrase-subcooling-of-the-liquid = Subenfriamiento del líquido
phrase-t-t-bubble-p-liquid-t-liquid-absolute-pressure = ΔT = T_bubble(p_liquid) − T_liquid, presión absoluta
phrase-common-practice-bubble-temperature-from-the-table-made-with-coolp = práctica habitual; temperatura de burbuja de la tabla hecha con CoolProp 8.0.0
phrase-standard-atmosphere-iso-2533 = atmósfera normal, ISO 2533
phrase-from = desde
phrase-ipcc-ar4-100-years = IPCC AR4, 100 años
phrase-ipcc-ar5-100-years = IPCC AR5, 100 años
phrase-ipcc-ar6-100-years = IPCC AR6, 100 años
phrase-en-378-1-values-in-spain-s-real-decreto-552-2019-table-a-unoffici = valores de EN 378-1 según el Real Decreto 552/2019, tabla A, copia no oficial
phrase-ashrae-handbook-fundamentals-2021-si-chapter-29-tables-1-to-5-sto = ASHRAE Handbook Fundamentals 2021 (SI), capítulo 29, tablas 1 a 5 (copia guardada)
phrase-model-mechanical-code-table-1103-1-up-codes-s-refrigeration-syste = código modelo «mechanical code», tabla 1103.1 (up.codes/s/refrigeration-system-classification)
phrase-new-york-city-mechanical-code-table-1103-1-nacmiaslaw-com-resourc = New York City Mechanical Code, tabla 1103.1 (nacmiaslaw.com/resources/legal-codes/28837)
phrase-from-memory-near-certain-verify-in-the-standard = De memoria, casi seguro, verifíquese en la norma
phrase-from-memory-probable-verify-in-the-standard = De memoria, probable, verifíquese en la norma
phrase-from-memory-doubtful-verify-in-the-standard = De memoria, dudoso, verifíquese en la norma
