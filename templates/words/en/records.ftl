# The records for an inspector: lead, plate, fields and events.

records-kind = Records
records-title = Records of { $system }, as at { $day }
records-present = A field that is present was written down; that it is true and enough is for its writer and the inspector to say.
records-files = Files are named from the root of the book, each with its line. The notes are attached to this document as data, private parts left out.
records-none-in-force = No rule set is named as in force at this site on { $day }, so that no field is asked for. What the notes tell stands below all the same.
records-undecided = The rules in force at this site on { $day } leave open whether they cover this system, so that no field is listed here as asked for. What the notes tell stands below.
records-not-covered = No rule set in force at this site on { $day } covers this system, so that no field is asked for. What the notes tell stands below all the same.
records-all-there = For every field that the rules in force on { $day } ask for there is an entry. An entry does not say that a deadline was kept.
records-missing = Missing: { $missing } of the { $fields } fields that the rules in force on { $day } ask for.
records-fields = Fields asked for: { $fields }; missing: { $missing }.
records-kept = Records are kept for at least { $years } years ({ $source }).
records-of-system = The system
records-of-visit = { $days }, { $purpose }
plant-telephone = Telephone
plant-serial-number = Serial number
plant-year-of-making = Year of making
plant-hermetic-label = Labelled as hermetically sealed
plant-detection-system = Leakage detection system
answer-yes = yes
answer-no = no

# What stands on record.
record-circuit = { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
}
record-due-by = due by { $day }
record-plan-made = plan made on { $day }
record-reported = reported on { $day }
record-leaks-found = { $day }, { $method }, { $leaks } found
record-cylinder = cylinder { $cylinder }
record-destroyed = { $moved }, { $share } destroyed
record-recovered-before = recovered into this cylinder before
record-moved = { $mass }, { $day }
record-of-gas = { $refrigerant ->
    [none] { $mass }
   *[other] { $mass } of { $refrigerant }
}
record-at = { $day }, { $clock }
record-part = { $part }: { $work }
record-proof = { $at }, { $what }
record-and-then = { $first }; { $next }
record-pressure-test = pressure test { $test }: { $verdict }
record-vacuum-test = vacuum test { $test }, { $limit ->
    [met] limit met
    [not-met] limit not met
   *[other] its limit is not decided
}
record-looked-again = looked at again on { $day }
record-rate = { $rate } ({ LOWER($method) })

# Events.
head-mass-or-result = Mass or result
head-noted-at = Noted at
event-earlier = { $what }, earlier record
event-by = by { $by }
event-visit = visit: { $purpose }
event-changed = changed from { $from } to { $to }
event-moved = { $kind }, { $why }
event-with-cylinder = { $mass }, cylinder { $cylinder }
event-pressure-test = pressure test { $test }
event-vacuum-test = vacuum test { $test }
event-tested = { $circuit ->
    [none] The system
   *[other] Circuit { $circuit }
}, section { $section }
event-inspection = leak inspection, all that is visible and accessible
event-search-in-part = search, not of all that is visible and accessible
event-search = search
event-not-reached = not reached: { $place } ({ $reason })
event-leak-found = leak found
event-suspicion = suspicion
event-defect = defect, no leak
event-repair = repair
event-look = { $method }{ $with ->
    [none] { "" }
   *[other] { " " }{ $with }
}: { $result }
event-check = check of the repair
event-check-again = check of an earlier repair
