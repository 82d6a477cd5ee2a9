# Método, límites, lecturas, locales, el circuito dibujado.
