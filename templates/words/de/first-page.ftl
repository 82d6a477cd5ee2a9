# Die erste Seite: Kopf, Ergebnis, Angaben, Offenes, Termine.

visit = Besuch
the-contractor = Der Fachbetrieb
certificate-of-firm = Zertifikat { $number }
certificate-of-person = Zertifikat { $number }
certificate-with-category = Zertifikat { $number }, Kategorie { $category }
signs-for-contractor = Für den Fachbetrieb
signs-for-operator = Erhalten für den Betreiber
state-earlier-repair-holding = früher repariert, hält
state-repaired-proved = repariert, nachgewiesen
state-repaired-not-proved = repariert, nicht nachgewiesen
state-temporary = vorläufig repariert
state-isolated = abgesperrt
state-left-open = offen gelassen
state-suspect = Verdacht
state-suspect-cleared = Verdacht ausgeräumt
class-flammable = { $class }, brennbar
class-not-flammable = { $class }, nicht brennbar
plant-operator = Betreiber
plant-address = Anschrift
plant-category = Art der Anlage
plant-in-service-since = In Betrieb seit
plant-complaint = Beanstandung
plant-air-outside = Außenluft
plant-left = Verlassen
plant-back-in-normal-operation = Wieder im Normalbetrieb
