# Hinweise „Achtung“ auf der Seite.
