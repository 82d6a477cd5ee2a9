# Kältemittelbilanz und Leckraten.
