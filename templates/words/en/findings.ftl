# Findings and points: facts, evidence, states.

circuit-named = { $circuit ->
    [none] The system
   *[other] Circuit { $circuit }
}
finding-where = Where
finding-kind = Kind
finding-evidence = Evidence
finding-size = Size
finding-cause = Cause
finding-repair = Repair
finding-proof = Proof
evidence-grade = { $grade }: { $meaning }
proof-look = { $time }, { $method }: { $result }
proof-test = test { $name }: { $verdict }{ $coarse ->
    [yes] { " " }(coarser than this leak)
   *[no] { "" }
}
proof-search = search { $name }
size-none = not sized
size-estimated = { $size }, estimated
size-how = { $measured ->
    [yes] measured
   *[no] estimated
}{ $by ->
    [none] { "" }
   *[other] { " " }by { $by }
}{ $pressure ->
    [none] { "" }
   *[other] { " " }at { $pressure }
}
everything-registered = everything registered

point-holds = holding, { $days ->
    [one] { $days } day
   *[other] { $days } days
}
point-not-reached = not reached
point-suspect-not-reached = suspect, not reached
point-still-leaking = was still leaking, { $days ->
    [one] { $days } day
   *[other] { $days } days
} after it was found
point-leaking-again = leaking again at the same place: { $days ->
    [one] { $days } day
   *[other] { $days } days
} after a repair by { $by ->
    [none] us
   *[other] { $by }
}; leaked { $times ->
    [2] twice
   *[other] { $times } times
}
point-repaired-holding = repaired, holding, { $days ->
    [one] { $days } day
   *[other] { $days } days
}{ $section-only ->
    [yes] , by a test of its section only
   *[no] { "" }
}
point-not-retested = repaired, not re-tested for { $days ->
    [one] { $days } day
   *[other] { $days } days
}
point-replaced = part replaced { $day }
point-replaced-holding = part replaced { $day }; nothing found since{ $section-only ->
    [yes] , by a test of its section only
   *[no] { "" }
}
point-replaced-not-looked-at = part replaced { $day }; not looked at since
point-left-open = left open{ $suspect ->
    [yes] { " " }as a suspicion
   *[no] { "" }
}, { $days ->
    [one] { $days } day
   *[other] { $days } days
}{ $looked ->
    [yes] ; not shown now
   *[no] { "" }
}

leaked-points = Points that have leaked
leaked-point = Point
leaked-when = Leaked
leaked-repairs-held = Repairs held
leaked-at-this-visit = At this visit
leaked-note = A repair is counted to have held until the leak was found again, so at most that long. A replaced part begins its count anew.
leaked-on = { $day } ({ $repair ->
    [none] not repaired
    [others] repaired by others
    [replaced] part replaced
    [temporary] for the time being
   *[done] { $repaired ->
        [none] repaired
       *[other] repaired { $repaired }
    }
}{ $old ->
    [yes] ; that part since replaced
   *[no] { "" }
})
days-held = { $days ->
    [one] { $days } day
   *[other] { $days } days
}

leaks-explain = The leaks found{ $circuit ->
    [none] { "" }
   *[other] { " " }in circuit { $circuit }
} explain { $least ->
    [none] at most { $most }
   *[other] between { $least } and { $most }
} of the { $lost } lost.
leaks-explain-all = The leaks found{ $circuit ->
    [none] { "" }
   *[other] { " " }in circuit { $circuit }
} may explain all of the { $lost } lost{ $least ->
    [none] { "" }
   *[other] , and explain { $least } of it at least
}.
leaks-explain-others-remain = The leaks found{ $circuit ->
    [none] { "" }
   *[other] { " " }in circuit { $circuit }
} explain { $least ->
    [none] at most { $most }
   *[other] between { $least } and { $most }
} of the { $lost } lost: others remain, or one of them was larger before.
leaks-explain-more-than-lost = At the sizes measured, the leaks found{ $circuit ->
    [none] { "" }
   *[other] { " " }in circuit { $circuit }
} would have let out { $least ->
    [none] at most { $most }
   *[other] between { $least } and { $most }
}, more than the { $lost } lost: they did not leak so much all the time.
leaks-not-sized = { $leaks ->
    [one] The leak found was not measured: how much of the loss it explains is not known.
   *[other] Not every leak found was measured: how much of the loss they explain is not known.
}
