# Avertissements que porte la page.
