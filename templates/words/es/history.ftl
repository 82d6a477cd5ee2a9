# El historial de una instalación o de un sitio.
