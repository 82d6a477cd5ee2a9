# Verfahren, Grenzen, Betriebswerte, Räume, der gezeichnete Kreislauf.
