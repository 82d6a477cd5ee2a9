# Le dossier des registres pour un inspecteur.
