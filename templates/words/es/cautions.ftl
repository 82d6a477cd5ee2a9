# Advertencias que lleva la página.
