# Die Nachweismappe für eine Prüfung durch die Behörde.
