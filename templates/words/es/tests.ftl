# Ensayos de presión y de vacío: veredictos, razones, gráficos, cálculos.
