# Druck- und Vakuumprüfungen: Urteile, Gründe, Diagramme, Rechengänge.
