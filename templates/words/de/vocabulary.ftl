# Wörter der Notizen, die auf der Seite stehen, nach ihrem Englisch.

# Anlass eines Einsatzes, Grund einer Bewegung.
phrase-leak-search-and-repair = Lecksuche und Reparatur
phrase-leak-search = Lecksuche
phrase-repair = Reparatur
phrase-periodic-leak-check = wiederkehrende Dichtheitskontrolle
phrase-verification = Nachkontrolle
phrase-emergency-call = Störungseinsatz
phrase-commissioning = Inbetriebnahme
phrase-retrofit = Umstellung auf ein anderes Kältemittel
phrase-service = Wartung
phrase-decommissioning = Außerbetriebnahme
phrase-installation = Erstfüllung
phrase-recharge = Wiederbefüllung
phrase-top-up = Nachfüllung
phrase-leak = Leck
phrase-seasonal = saisonal

# Wie die Anlage verlassen wurde.
phrase-running = in Betrieb
phrase-off = ausgeschaltet
phrase-isolated = abgesperrt
phrase-empty = leer
phrase-standing = im Stillstand, gefüllt
phrase-emptied = entleert
phrase-under-nitrogen = unter Stickstoff

# Was der Techniker als Ergebnis angibt.
phrase-found-and-repaired = gefunden und repariert
phrase-found-left-open = gefunden, noch nicht repariert
phrase-not-found-loss-stands = nicht gefunden, der Verlust bleibt ungeklärt
phrase-nothing-found = nichts gefunden
phrase-repair-verified = Reparatur nachkontrolliert
phrase-gas-added-not-repaired = nachgefüllt, nicht repariert
phrase-retrofitted = umgestellt

# Was die Nachweise als Ergebnis zeigen.
phrase-every-leak-found-was-repaired-and-proved = jedes gefundene Leck wurde repariert, der Erfolg jeder Reparatur nachgewiesen
phrase-repaired-but-no-proof-after-the-repair-is-noted = repariert, aber es ist kein Nachweis nach der Reparatur notiert
phrase-repaired-but-what-was-looked-at-after-the-repair-does-not-prove-i = repariert, aber die Prüfungen nach der Reparatur weisen den Erfolg nicht nach
phrase-some-leaks-were-repaired-others-are-open = einige Lecks wurden repariert, andere noch nicht
phrase-leaks-were-found-and-left-open = Leck gefunden, noch nicht repariert
phrase-there-are-suspicions-that-were-not-cleared = es bleiben Verdachtsstellen, die nicht geklärt sind
phrase-refrigerant-had-been-lost-and-its-leak-was-not-found = es ist Kältemittel verloren gegangen, das Leck wurde nicht gefunden
phrase-searched-nothing-found = gesucht, nichts gefunden
phrase-earlier-repairs-were-looked-at-again-nothing-was-shown-there = frühere Reparaturen wurden nachkontrolliert, dort zeigte sich kein Anzeichen eines Lecks
phrase-refrigerant-was-added-no-search-and-no-repair-are-noted = Kältemittel wurde nachgefüllt, weder Suche noch Reparatur sind notiert
phrase-changed-to-another-refrigerant = auf ein anderes Kältemittel umgestellt
phrase-no-search-no-leak-and-no-proof-are-noted = weder Suche noch Leck noch Nachweis sind notiert
phrase-no-proof-after-the-last-repair-bears-it-or-a-test-after-it-lost-p = kein Nachweis nach der letzten Reparatur trägt das, oder eine Prüfung danach verlor Druck
phrase-no-repair-is-noted-here-or-earlier = weder hier noch früher ist eine Reparatur notiert

# Befunde und ihr Stand.
phrase-suspect = Verdacht
phrase-defect = Mangel
phrase-repaired-earlier-holding = früher repariert, hält
phrase-repaired-proved = repariert, Erfolg nachgewiesen
phrase-repaired-not-proved = repariert, Erfolg nicht nachgewiesen
phrase-temporary-repair = vorläufig repariert
phrase-temporary = vorläufig
phrase-open = noch nicht repariert
phrase-left-open = noch nicht repariert
phrase-suspect-cleared = Verdacht ausgeräumt
phrase-new = neu
phrase-still-leaking = noch immer undicht
phrase-leaking-again-at-the-same-place = wieder undicht an derselben Stelle
phrase-repaired-holding = repariert, hält
phrase-repaired-not-re-tested = repariert, nicht nachkontrolliert
phrase-nothing-shown = kein Anzeichen eines Lecks
phrase-not-looked-at = nicht kontrolliert
phrase-taken-out = ausgebaut
phrase-others = Dritte

# Wie gut ein Leck belegt ist.
phrase-presumed = vermutet
phrase-located = geortet
phrase-confirmed = bestätigt
phrase-evident = offensichtlich
phrase-indirect-signs-only = nur indirekte Anzeichen
phrase-found-by-one-direct-method = mit einem direkten Verfahren gefunden
phrase-found-by-two-independent-direct-methods = mit zwei unabhängigen direkten Verfahren gefunden
phrase-a-break-or-a-jet-was-seen-heard-or-felt = ein Bruch oder ein Strahl war zu sehen, zu hören oder zu fühlen

# Verfahren der Suche und Prüfung.
phrase-visual = Sichtprüfung
phrase-oil = Ölspuren
phrase-ice = Eis oder Reif
phrase-corrosion = Korrosion
phrase-sound = Geräusch
phrase-parameter = Betriebswert
phrase-break = Bruch
phrase-jet = Strahl
phrase-electronic = elektronisches Lecksuchgerät
phrase-bubbles = Schaummittel
phrase-tracer = Spürgas
phrase-ultrasonic = Ultraschall
phrase-dye = Fluoreszenzmittel
phrase-litmus = Lackmuspapier
phrase-halide = Lecksuchlampe
phrase-pressure-test = Druckprüfung
phrase-vacuum-test = Vakuumprüfung
phrase-pressure-test-of-its-section = Druckprüfung des Abschnitts
phrase-vacuum-test-of-its-section = Vakuumprüfung des Abschnitts
phrase-tightness = Dichtheit
phrase-strength = Festigkeit

# Gase.
phrase-nitrogen = Stickstoff
phrase-5-hydrogen-in-nitrogen = 5 % Wasserstoff in Stickstoff
phrase-hydrogen-in-nitrogen-over-5 = über 5 % Wasserstoff in Stickstoff
phrase-helium = Helium
phrase-carbon-dioxide = Kohlendioxid
phrase-air = Luft
phrase-oxygen = Sauerstoff
phrase-refrigerant = Kältemittel
phrase-nitrogen-with-refrigerant = Stickstoff mit Kältemittel

# Bewegungen des Kältemittels und seiner Flaschen.
phrase-charged = eingefüllt
phrase-recovered = zurückgewonnen
phrase-relief-lifted = über Sicherheitsventil entwichen
phrase-purged = abgeblasen
phrase-vented = in die Luft abgelassen
phrase-lost-in-service = bei den Arbeiten verloren gegangen
phrase-weighed = gewogen
phrase-cylinder-label = nach Flaschenetikett
phrase-estimated = geschätzt
phrase-full-by-weight = voll nach Gewicht
phrase-full = voll
phrase-full-by-sight-glass = voll nach Schauglas
phrase-full-by-subcooling = voll nach Unterkühlung
phrase-partial = teilweise
phrase-same-system = zurück in dieselbe Anlage
phrase-held = in der Flasche verwahrt
phrase-recycling = zum Recycling
phrase-reclaim = zur Aufarbeitung
phrase-destruction = zur Zerstörung
phrase-virgin = neu (ungebraucht)
phrase-recycled = recycelt
phrase-reclaimed = aufgearbeitet
phrase-filled-at-depot = im Lager befüllt
phrase-filled = befüllt
phrase-bought = gekauft
phrase-returned = zurückgegeben
phrase-retested = wiederkehrend geprüft

# Anlagen, Räume, frühere Einträge.
phrase-commercial-refrigeration = Gewerbekälte
phrase-industrial-process-refrigeration = industrielle Prozesskälte
phrase-comfort-cooling = Komfortklimatisierung
phrase-refrigerated-transport = Transportkälte
phrase-heat-pump = Wärmepumpe
phrase-other = sonstige
phrase-in-use = in Gebrauch
phrase-standby = in Bereitschaft
phrase-mothballed = vorübergehend stillgelegt
phrase-decommissioned = außer Betrieb genommen
phrase-leak-found = Leck gefunden
phrase-repaired = repariert
phrase-checked = kontrolliert
phrase-verified = nachkontrolliert
phrase-occupied = Personen-Aufenthaltsbereich
phrase-machinery-room = Maschinenraum
phrase-open-air = im Freien
phrase-annualizing = Hochrechnung auf ein Jahr
phrase-rolling-average = gleitender Durchschnitt

# Zeichen im Lauf der Zeit.
phrase-found-leaking-again-after-a-repair = nach einer Reparatur wieder undicht
phrase-found-still-leaking = noch immer undicht
phrase-repaired-and-noted-as-proved = repariert, Erfolg als nachgewiesen notiert
phrase-repaired-for-the-time-being-or-shut-off = vorläufig repariert oder abgesperrt
phrase-suspected = vermutet
phrase-suspicion-cleared = Verdacht ausgeräumt
phrase-looked-at-nothing-shown-ok-3-for-three-visits-together = kontrolliert, kein Anzeichen eines Lecks; ok×3: drei Einsätze nacheinander
phrase-only-a-test-of-its-section-held = nur eine Prüfung des Abschnitts hielt
phrase-not-reached = nicht erreicht
phrase-part-replaced-the-count-starts-anew = Teil ersetzt, die Zählung beginnt neu
phrase-part-taken-out = Teil ausgebaut
phrase-by-others-or-from-earlier-records = durch andere oder nach früheren Aufzeichnungen

# Warum mehr Zeit verlangt wird; ja und nein in den Notizen.
phrase-industrial-process-shutdown = Stillsetzung eines industriellen Prozesses
phrase-parts-not-delivered = Teile nicht geliefert
phrase-another-law = ein anderes Gesetz
phrase-radiological-hazard = Strahlengefahr
phrase-true = ja
phrase-false = nein
