# Le courriel et les éditions.

mail-caution = Attention : { $caution } { $because }
mail-leaking-again = A fui de nouveau
mail-still-leaking = Fuite retrouvée, non réparée jusque-là
mail-waiting = Si rien n’est fait
mail-still-open = En suspens
mail-next = Échéances
mail-attached = Le rapport est joint.

foot-issue = édition { $issue }
foot-changed-since = non émis, modifié depuis l’édition { $issue }
revision-replaces = l’édition { $issue } du { $day }
change-outcome = Résultat : { $now } (avant : { $before })
change-finding-added = Constat ajouté : { $finding }, { $now }.
change-finding = Constat { $finding } : { $now } (avant : { $before }).
change-finding-taken-out = Constat retiré : { $finding }.
change-figure-added = { $title } : { $now } (non donné auparavant).
change-figure = { $title } : { $now } (avant : { $before }).
change-figure-taken-out = { $title } : n’est plus donné.
change-notes = Notes modifiées : { $files }.
