# El correo y las ediciones.

mail-caution = Atención: { $caution } { $because }
mail-leaking-again = De nuevo con fuga
mail-still-leaking = Seguía con fuga
mail-waiting = Si no se hace nada
mail-still-open = Aún abierto
mail-next = Plazos
mail-attached = Se adjunta el informe.

foot-issue = edición { $issue }
foot-changed-since = sin emitir, modificado desde la edición { $issue }
revision-replaces = la edición { $issue } del { $day }
change-outcome = Resultado: { $now } (antes: { $before })
change-finding-added = Hallazgo añadido: { $finding }, { $now }.
change-finding = Hallazgo { $finding }: { $now } (antes: { $before }).
change-finding-taken-out = Hallazgo retirado: { $finding }.
change-figure-added = { $title }: { $now } (antes no figuraba).
change-figure = { $title }: { $now } (antes: { $before }).
change-figure-taken-out = { $title }: ya no figura.
change-notes = Notas modificadas: { $files }.
