# Namen und Quellen der Rechenverfahren, nach ihrem Englisch.

# Druckprüfung mit zwei Ablesungen.

phrase-pressure-expected-at-the-end-corrected-for-temperature = Am Ende zu erwartender Druck, um die Temperatur berichtigt
phrase-p-p-z-t-z-t-absolute-pressure-and-kelvin = p₂' = p₁ × (Z₂ × T₂) ÷ (Z₁ × T₁), absoluter Druck und Kelvin
phrase-real-gas-at-constant-volume-z-of-nitrogen-from-the-table-made-wit = reales Gas bei konstantem Volumen; Z von Stickstoff aus der mit CoolProp 8.0.0 erstellten Tabelle
phrase-compressibility-of-nitrogen-coolprop-8-0-0 = Realgasfaktor von Stickstoff, CoolProp 8.0.0
phrase-pressure-lost-beyond-what-temperature-explains = Druckverlust über das hinaus, was die Temperatur erklärt
phrase-uncorrelated-inputs-jcgm-100-2008-5-1-a-reading-s-step-as-step-12 = unkorrelierte Eingangsgrößen, JCGM 100:2008 5.1; die Schrittweite einer Ablesung als Schritt/√12, F.2.2.1; Erweiterungsfaktor 2
phrase-in-simulated-tests-the-interval-built-with-it-held-the-true-leak-i = der damit gebildete Bereich enthielt bei simulierten Prüfungen das wahre Leck in 85 bis 100 % der Läufe; nicht an dieser Anlage gemessen
phrase-standard-atmosphere-for-want-of-a-barometer-or-an-altitude = Normatmosphäre, mangels Barometer oder Höhenangabe
phrase-the-air-pressure-may-have-changed-by-5-hpa-between-the-readings = der Luftdruck kann sich zwischen den Ablesungen um 5 hPa geändert haben

# Druckprüfung mit einer Aufzeichnung.

phrase-pressure-lost-beyond-what-temperature-explains-fitted-over-the-wh = Druckverlust über das hinaus, was die Temperatur erklärt, durch Ausgleich über die ganze Aufzeichnung
phrase-p-zt-zt-p-d-t-t-end-c-dt-dt-c-t-t-by-least-squares-d-u-u-fit-u-sh = p = [ZT ÷ (ZT)₀] × (P₀ − D × t ÷ t_end) + c₁ × dT/dt + c₂ × (T − T̄) nach kleinsten Quadraten;  Δ = D;  u²(Δ) = u_fit² + u_share² + u_step² + u²(air);  U = 3u
phrase-least-squares-with-the-share-and-the-lag-held-near-1-and-0-real-g = kleinste Quadrate, Anteil und Verzögerung nahe 1 und 0 gehalten; reales Gas bei konstantem Volumen, Z von Stickstoff aus der mit CoolProp 8.0.0 erstellten Tabelle; Varianz mal integrierter Autokorrelation; die Schrittweite einer Ablesung als Schritt/√12, JCGM 100:2008 F.2.2.1; Erweiterungsfaktor 3, nach simulierten Aufzeichnungen
phrase-in-simulated-logs-the-interval-built-with-it-held-the-true-leak-i = der damit gebildete Bereich enthielt bei simulierten Aufzeichnungen das wahre Leck in 87 bis 100 % der Läufe; nicht an dieser Anlage gemessen
phrase-the-log = die Aufzeichnung
phrase-averages-over-equal-times-288-in-the-log-at-most = Mittel über gleiche Zeiten, höchstens 288 in der Aufzeichnung
phrase-mean-of-the-temperatures-read = Mittel der abgelesenen Temperaturen
phrase-standard-deviation-of-the-means-about-the-fit = Standardabweichung der Mittel von der Ausgleichskurve
phrase-integrated-autocorrelation-so-many-means-in-a-row-say-the-same = integrierte Autokorrelation: So viele Mittel nacheinander sagen dasselbe
phrase-holds-c-gas-follows-all-of-a-change-of-temperature-to-within-this = hält c₂: Das Gas folgt einer Temperaturänderung ganz, bis auf dies
phrase-holds-c-gas-is-not-behind-the-thermometer-to-within-this = hält c₁: Das Gas bleibt nicht hinter dem Thermometer zurück, bis auf dies
phrase-fitted-from-c-and-c = aus dem Ausgleich, aus c₂ und c₁

# Das Leck einer Druckprüfung.

phrase-mean-leak-over-the-test = Mittleres Leck während der Prüfung
phrase-constant-volume-gas-at-the-temperature-of-the-test-pressure-chang = konstantes Volumen; Gas bei der Temperatur der Prüfung (vom Anwendungsbereich des Druckänderungsverfahrens nach EN 13184)
phrase-largest-leak-that-this-test-leaves-possible = Größtes Leck, das diese Prüfung möglich lässt
phrase-upper-end-of-the-interval-of-the-leak-coverage-factor-2-for-two-r = oberes Ende des Intervalls für das Leck; Erweiterungsfaktor 2 bei zwei Ablesungen, 3 bei ausgeglichener Aufzeichnung
phrase-smallest-leak-that-this-test-could-have-shown = Kleinstes Leck, das diese Prüfung hätte zeigen können
phrase-a-loss-that-differs-from-none-at-the-95-level-normal-distribution = ein Verlust, der sich auf dem Niveau von 95 % von null unterscheidet, Normalverteilung; u(Δ) aus der Bilanz der Prüfung selbst

# Leckgrößen als Masse.

phrase-leak-size-as-mass = Leckgröße als Masse
phrase-mass-rate-q-m-r-t = Massenstrom = Q × M ÷ (R × T)
phrase-ideal-gas-law-r-8-314462618-j-mol-k-codata-2018 = ideales Gasgesetz; R = 8,314462618 J/(mol K), CODATA 2018
phrase-molar-mass-of-n-28-0134-g-mol-from-memory-as-coolprop-8-0-0-uses-i = molare Masse von N₂, 28,0134 g/mol (aus dem Gedächtnis, wie CoolProp 8.0.0 sie verwendet)
phrase-molar-mass-of-dry-air-28-966-g-mol-from-memory = molare Masse trockener Luft, 28,966 g/mol (aus dem Gedächtnis)

# Vakuumprüfung.

phrase-mean-rise-of-the-vacuum-as-a-throughput = Mittlerer Druckanstieg im Vakuum als pV-Durchfluss
phrase-rate-of-rise-at-constant-volume-40-cfr-1065-644-in-form-moisture-a = Anstiegsrate bei konstantem Volumen, in der Form von 40 CFR 1065.644; Feuchte und Ausgasung sind darin enthalten
phrase-rise-of-a-part-of-the-log-as-a-throughput = Anstieg eines Teils der Aufzeichnung als pV-Durchfluss
phrase-q-v-p-t-p-along-the-straight-line-fitted-to-the-rows-u-v-u-p-t-p-u = Q = V × Δp ÷ t, Δp längs der Ausgleichsgeraden der Zeilen;  U² = (V × U(Δp) ÷ t)² + (Δp × U(V) ÷ t)²
phrase-least-squares-standard-error-times-the-memory-of-the-noise-studen = kleinste Quadrate; Standardfehler mal Korrelationsfaktor des Rauschens, Student-t bei 99 %, und die Schrittweite des Messgeräts; unkorrelierte Eingangsgrößen, JCGM 100:2008 5.1
phrase-largest-leak-that-this-rise-leaves-possible = Größtes Leck, das dieser Anstieg möglich lässt
phrase-gas-given-off-by-moisture-walls-and-oil-only-adds-to-the-rise-so-t = von Feuchte, Wänden und Öl abgegebenes Gas erhöht den Anstieg nur, so dass ein gleichmäßiges Leck nicht größer ist als der Anstieg im letzten Drittel; bei simulierten Anstiegen traf das in mindestens 97 % der Läufe zu
phrase-smallest-leak-that-this-straight-rise-can-be-if-it-is-one = Kleinstes Leck, das dieser geradlinige Anstieg sein kann, falls er eines ist
phrase-q-low-the-lower-of-q-all-u-q-all-and-q-late-u-q-late = Q_low = das kleinere von Q_all − U(Q_all) und Q_late − U(Q_late)
phrase-the-whole-rise-and-its-last-third-must-both-bear-it = der ganze Anstieg und sein letztes Drittel müssen es beide tragen
phrase-20-c-for-want-of-a-temperature = 20 °C, mangels einer Temperatur
phrase-vapour-pressure-of-water-at-the-warmest-part = Dampfdruck von Wasser an der wärmsten Stelle
phrase-p-water-saturation-pressure-of-water-ice-below-0-c-at-t = p_water = Sättigungsdruck von Wasser (unter 0 °C: von Eis) bei T
phrase-iapws-sr1-86-1992-over-liquid-iapws-r14-08-2011-over-ice = IAPWS SR1-86(1992) über Flüssigkeit, IAPWS R14-08(2011) über Eis

# Der Grenzwert einer Prüfung im Betrieb.

phrase-pressure-in-service = Druck im Betrieb
phrase-p-s-bubble-pressure-at-t-or-the-highest-that-was-read-where-that-i = p_s = Siededruck bei T, oder der höchste abgelesene, wo dieser höher ist; höchstens der des Typenschilds
phrase-saturation-from-tables-made-with-coolprop-8-0-0 = Sättigung aus mit CoolProp 8.0.0 erstellten Tabellen
phrase-leak-in-service-viscous-flow = Leck im Betrieb, viskose Strömung
phrase-laminar-flow-of-an-ideal-gas-through-an-unchanged-channel-poiseui = laminare Strömung eines idealen Gases durch einen unveränderten Kanal (Poiseuille); η bei 20 °C und 101 325 Pa
phrase-leak-in-service-molecular-flow = Leck im Betrieb, molekulare Strömung
phrase-free-molecular-flow-through-an-unchanged-channel-knudsen = freie Molekularströmung durch einen unveränderten Kanal (Knudsen)
phrase-condensing-at-40-c-on-a-warm-day-stands-for-service-on-the-high-s = Verflüssigung bei 40 °C an einem warmen Tag steht für den Betrieb der Hochdruckseite; keine Ablesung dieses Einsatzes war höher
phrase-standing-still-at-20-c-when-the-low-side-sees-more-than-in-operat = Stillstand bei 20 °C, wobei die Niederdruckseite mehr sieht als im Betrieb; keine Ablesung dieses Einsatzes war höher
phrase-20-c-for-want-of-a-reading = 20 °C, mangels einer Ablesung
phrase-wilke-s-rule-j-chem-phys-18-1950-517-from-memory-from-the-constit = Wilkes Regel (J. Chem. Phys. 18, 1950, 517, aus dem Gedächtnis) aus den Bestandteilen in CoolProp 8.0.0: abgeleitet, für R-404A, R-407C, R-410A, R-507A bis auf 5 % wie CoolProp

phrase-net-addition-of-a-job = Saldo des Nachgefüllten eines Einsatzes
phrase-common-practice-what-was-recovered-and-charged-back-is-not-a-loss = übliche Praxis: was zurückgewonnen und wieder eingefüllt wurde, ist kein Verlust; Unsicherheit nach JCGM 100:2008 5.1 (Genauigkeit a der Waage und ihr Ziffernschritt als Rechteckverteilung, F.2.2.1), Erweiterungsfaktor 2
phrase-net-sum-charged-sum-recovered-sum-lost-in-service-purged-or-vente = Saldo = Summe eingefüllt − Summe zurückgewonnen − Summe bei den Arbeiten verloren, abgeblasen oder abgelassen;  U = 2u, u² = Summe von (a² ÷ 3 + Schritt² ÷ 12) über die Waagenablesungen
phrase-co-equivalent = CO₂-Äquivalent
phrase-co-e-mass-gwp = CO₂e = Masse × GWP
phrase-mass-times-gwp-of-the-set-named-mixtures-by-nominal-mass-fraction = Masse mal GWP der genannten Reihe; Gemische nach den nominellen Massenanteilen, Verordnung (EU) 2024/573 Anhang VI und 40 CFR 84.64(b)
phrase-leak-rate-annualizing-method = Leckrate, auf ein Jahr hochgerechnet (annualizing method)
phrase-rate-100-added-full-charge-shorter-of-days-since-the-last-additio = Rate = 100 % × (nachgefüllt ÷ volle Füllmenge) ÷ (Tage seit der letzten Nachfüllung, höchstens 365, ÷ 365)
phrase-40-cfr-82-152-leak-rate-for-part-84-the-same-by-84-102-from-memor = 40 CFR 82.152, „leak rate“; für Part 84 dasselbe nach 84.102 (aus dem Gedächtnis, nachprüfen)
phrase-leak-rate-rolling-average-method = Leckrate, gleitender Durchschnitt (rolling average method)
phrase-rate-100-sum-of-additions-in-the-window-full-charge = Rate = 100 % × Summe des Nachgefüllten im Zeitfenster ÷ volle Füllmenge
phrase-loss-per-year-in-percent-of-the-full-charge = Verlust pro Jahr in Prozent der vollen Füllmenge
phrase-rate-100-lost-full-charge-365-days = Rate = 100 % × (verloren ÷ volle Füllmenge) × 365 ÷ Tage
phrase-common-practice-days-counted-from-the-last-addition-a-year-of-365 = übliche Praxis; Tage ab der letzten Nachfüllung gezählt, ein Jahr mit 365 Tagen
phrase-added-in-a-calendar-year-in-percent-of-the-full-charge = Nachgefüllt in einem Kalenderjahr in Prozent der vollen Füllmenge
phrase-share-100-sum-of-the-year-s-additions-full-charge = Anteil = 100 % × Summe des Nachgefüllten des Jahres ÷ volle Füllmenge
phrase-40-cfr-82-157-j-and-84-106-j-125-or-more-in-a-calendar-year-is-to = 40 CFR 82.157(j) und 84.106(j): 125 % oder mehr in einem Kalenderjahr sind zu melden
phrase-refrigerant-missing-in-all = Insgesamt fehlendes Kältemittel
phrase-missing-sum-of-what-each-charge-put-back-up-to-the-one-that-ended = gefehlt = Summe dessen, was jede Füllung ersetzte, bis zu der, die den Verlust beendete
phrase-an-addition-that-did-not-fill-the-circuit-belongs-to-the-same-los = eine Nachfüllung, die den Kreislauf nicht voll machte, gehört zum selben Verlust wie die nächste, gängige Praxis; ebenso 40 CFR 82.152, „leak rate“, für mehrere Nachfüllungen zu einem Leck
phrase-what-the-leaks-found-explain-of-the-loss = Was die gefundenen Lecks vom Verlust erklären
phrase-explained-sum-of-leak-size-time-it-leaked-from-the-least-of-both-t = erklärt = Summe von Leckgröße × Zeit, in der es leckte, vom Kleinsten beider bis zum Größten beider
phrase-interval-arithmetic-that-a-leak-kept-the-size-it-was-measured-at-i = Intervallrechnung; dass ein Leck seine gemessene Größe behielt, ist eine Annahme
phrase-concentration-in-the-room-if-the-whole-charge-came-out = Konzentration im Raum, wenn die ganze Füllung austräte
phrase-refrigerant-recovered-for-a-change-of-refrigerant = Für eine Umstellung zurückgewonnenes Kältemittel
phrase-recovered-sum-of-what-went-into-cylinders = zurückgewonnen = Summe dessen, was in Flaschen ging
phrase-sum-of-weighings-their-uncertainties-taken-as-uncorrelated-jcgm-1 = Summe der Wägungen; ihre Unsicherheiten als unkorreliert angenommen, JCGM 100:2008 5.1
phrase-missing-when-a-circuit-was-emptied = Was beim Entleeren eines Kreislaufs fehlte
phrase-missing-full-charge-recovered-lost-while-working = gefehlt = volle Füllmenge − zurückgewonnen − bei der Arbeit verloren
phrase-common-practice-what-stays-in-oil-and-hoses-is-in-it = gängige Praxis; was in Öl und Schläuchen bleibt, ist darin enthalten
phrase-c-m-a-h = c = m ÷ (A × h)
phrase-c-m-v = c = m ÷ V
phrase-charge-over-room-volume-as-en-378-1-and-ashrae-15-compare-it-with = Füllmenge durch Raumvolumen, wie EN 378-1 und ASHRAE 15 sie mit ihren Grenzen vergleichen; gleichmäßig gemischt, was die Luft am Boden anfangs nicht ist
phrase-a-quarter-of-the-lower-flammable-limit = Ein Viertel der unteren Explosionsgrenze
phrase-screening-at-25-of-the-lfl-common-practice = Vorprüfung bei 25 % der unteren Explosionsgrenze (LFL), übliche Praxis
phrase-superheat-of-the-suction-vapour = Überhitzung des Sauggases
phrase-t-t-suction-t-dew-p-suction-absolute-pressure = ΔT = T_suction − T_dew(p_suction), Absolutdruck
phrase-common-practice-dew-temperature-from-the-table-made-with-coolprop = übliche Praxis; Tautemperatur aus der mit CoolProp 8.0.0 erstellten Tabelle
phrase-subcooling-of-the-liquid = Unterkühlung der Flüssigkeit
phrase-t-t-bubble-p-liquid-t-liquid-absolute-pressure = ΔT = T_bubble(p_liquid) − T_liquid, Absolutdruck
phrase-common-practice-bubble-temperature-from-the-table-made-with-coolp = übliche Praxis; Siedetemperatur aus der mit CoolProp 8.0.0 erstellten Tabelle
phrase-standard-atmosphere-iso-2533 = Normatmosphäre, ISO 2533
phrase-from = ab
phrase-ipcc-ar4-100-years = IPCC AR4, 100 Jahre
phrase-ipcc-ar5-100-years = IPCC AR5, 100 Jahre
phrase-ipcc-ar6-100-years = IPCC AR6, 100 Jahre
phrase-en-378-1-values-in-spain-s-real-decreto-552-2019-table-a-unoffici = Werte der EN 378-1 im spanischen Real Decreto 552/2019, Tabelle A (nicht amtliche Abschrift)
phrase-ashrae-handbook-fundamentals-2021-si-chapter-29-tables-1-to-5-sto = ASHRAE Handbook Fundamentals 2021 (SI), Kapitel 29, Tabellen 1 bis 5 (gespeicherte Abschrift)
phrase-model-mechanical-code-table-1103-1-up-codes-s-refrigeration-syste = Muster-Baurecht „mechanical code“, Tabelle 1103.1 (up.codes/s/refrigeration-system-classification)
phrase-new-york-city-mechanical-code-table-1103-1-nacmiaslaw-com-resourc = New York City Mechanical Code, Tabelle 1103.1 (nacmiaslaw.com/resources/legal-codes/28837)
phrase-from-memory-near-certain-verify-in-the-standard = Aus dem Gedächtnis, fast sicher, in der Norm nachprüfen
phrase-from-memory-probable-verify-in-the-standard = Aus dem Gedächtnis, wahrscheinlich, in der Norm nachprüfen
phrase-from-memory-doubtful-verify-in-the-standard = Aus dem Gedächtnis, zweifelhaft, in der Norm nachprüfen
