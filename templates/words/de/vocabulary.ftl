# Wörter der Notizen, die auf der Seite stehen, nach ihrem Englisch.
phrase-repaired-proved = repariert, nachgewiesen
phrase-found-and-repaired = gefunden und repariert
phrase-found-left-open = gefunden, offen gelassen
phrase-not-found-loss-stands = nicht gefunden, Verlust bleibt
phrase-nothing-found = nichts gefunden
phrase-repair-verified = Reparatur nachgeprüft
phrase-gas-added-not-repaired = nachgefüllt, nicht repariert
phrase-retrofitted = umgestellt
