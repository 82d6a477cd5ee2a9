# Constats et points : faits, preuves, états.
