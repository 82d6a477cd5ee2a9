# The mail and the issues.

mail-caution = Caution: { $caution } { $because }
mail-leaking-again = Leaking again
mail-still-leaking = Found still leaking
mail-waiting = If nothing is done
mail-still-open = Still open
mail-next = Dates
mail-attached = The report is attached.

foot-issue = issue { $issue }
foot-changed-since = not issued, changed since issue { $issue }
revision-replaces = issue { $issue } of { $day }
change-outcome = Outcome: { $now } (before: { $before })
change-finding-added = Finding added: { $finding }, { $now }.
change-finding = Finding { $finding }: { $now } (before: { $before }).
change-finding-taken-out = Finding taken out: { $finding }.
change-figure-added = { $title }: { $now } (not given before).
change-figure = { $title }: { $now } (before: { $before }).
change-figure-taken-out = { $title }: no longer given.
change-notes = Notes changed: { $files }.
