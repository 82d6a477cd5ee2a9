# The first page: head, outcome, facts, what is open, what comes next.

visit = Visit
the-contractor = The contractor
certificate-of-firm = certificate { $number }
certificate-of-person = certificate { $number }
certificate-with-category = certificate { $number }, category { $category }
signs-for-contractor = For the contractor
signs-for-operator = Received for the operator
class-flammable = { $class }, flammable
class-not-flammable = { $class }, not flammable
plant-operator = Operator
plant-address = Address
plant-category = Category
plant-in-service-since = In service since
plant-complaint = Complaint
plant-air-outside = Air outside
plant-left = Left as
plant-back-in-normal-operation = Back in normal operation

outcome-repaired-proved = { $leaks ->
    [one] One leak found, repaired and proved.
   *[other] { CAPITAL(SPELLED($leaks)) } leaks found, repaired and proved.
}
outcome-repaired-not-proved = { $leaks ->
    [one] One leak found and repaired; the repair has not been proved.
   *[other] { CAPITAL(SPELLED($leaks)) } leaks found and repaired; { $proved ->
        [0] none
       *[other] { SPELLED($proved) }
    } of the repairs proved.
}
outcome-partly-repaired = { CAPITAL(SPELLED($leaks)) } leaks found, { SPELLED($repaired) } repaired; the rest is open.
outcome-left-open = { $leaks ->
    [one] One leak found and left open.
   *[other] { CAPITAL(SPELLED($leaks)) } leaks found and left open.
}
outcome-suspects-only = A leak is suspected; none was located.
outcome-suspects-remain = { $suspects ->
    [one] One suspect place remains.
   *[other] Some suspect places remain.
}
outcome-not-found-loss-stands = Refrigerant had been lost, and its leak was not found.
outcome-nothing-found = Searched; nothing was found where the search reached.
outcome-repair-verified = { $repairs ->
    [one] The earlier repair was checked again; nothing was found there.
   *[other] { CAPITAL(SPELLED($repairs)) } earlier repairs were checked again; nothing was found there.
}
outcome-gas-added = Refrigerant was added; the leak was neither searched for nor repaired.
outcome-changed-from-to = The system was changed from { $old } to { $new }.
outcome-changed = The system was changed to another refrigerant.
outcome-other = { $purpose } carried out.

place-says = { $place }: { $what }
because-holding = { $place } has leaked { $times ->
    [2] twice
   *[other] { SPELLED($times) } times
}; its last repair has held { $days ->
    [one] { $days } day
   *[other] { $days } days
} so far.
because-lost-since = { $least ->
    [yes] At least { $mass }
   *[no] { $mass }
} of refrigerant had been lost from { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} since { $day }.
because-missing-since = { $least ->
    [yes] At least { $mass }
   *[no] { $mass }
} of refrigerant was missing from { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
}. The charge before this loss was on { $day }; whether the system was full then is not known.
because-lost = { $least ->
    [yes] At least { $mass }
   *[no] { $mass }
} of refrigerant had been lost from { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
}.
because-left-open = Not repaired: { $place }. { $answer }
because-over-trigger = The leak rate of { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} passed the legal trigger of { $trigger } %; { $repaired ->
    [yes] the repair was made at this visit, within the time allowed.
   *[no] the repair is due by { $by }.
}
because-no-leak-check = This does not count as the leak check that the law asks for, because not every visible and accessible part was searched.
because-put-back = The refrigerant was put back in parts: { $parts }.
put-back-on = { $mass } on { $day }
because-more-partial = More may have been missing: it was not filled to full.
because-more-not-noted = More may have been missing: whether it was filled to full is not noted.
because-more-not-complete = More may have been lost: this book does not know of every charge since then.
because-not-reached = { $places ->
    [one] One place could not be reached and still has to be searched.
   *[other] { CAPITAL(SPELLED($places)) } places could not be reached and still have to be searched.
}

# What of a sentence is printed strong: put into the sentence that follows.
leaked-times = has leaked { $times ->
    [2] twice
   *[other] { SPELLED($times) } times
}
leaking-again = { $place } { $strong }: { $found }. The last repair{ $by ->
    [none] { "" }
   *[other] , by { $by },
} held { $days ->
    [one] { $days } day
   *[other] { $days } days
} at most{ $seen ->
    [none] { "" }
   *[other] ; it was last seen to hold on { $seen }
}.
found-still-leaking = was found still leaking
still-leaking = { $place } { $strong }, { $days ->
    [one] { $days } day
   *[other] { $days } days
} after it was first found on { $found }; it had not been repaired.

open-not-reached = { CAPITAL($place) } { $several ->
    [yes] have
   *[no] has
} to be searched ({ $reason }).
answer-of = Answer ({ $by }): { $answer }
customer = customer
waiting-cost = { $since ->
    [none] At the loss up to now
   *[other] If all of it was lost since { $since }
}, { $least ->
    [yes] at least
   *[no] about
} { $mass } a year would go on leaking from { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
}{ $co2e ->
    [none] { "" }
   *[other] { " " }({ $co2e })
}{ $running ->
    [yes] , and the plant loses capacity as it goes.
   *[no] { " " }once it runs again.
}

fact-next = Next
fact-overdue = Overdue
fact-then = Next: { $next }
fact-earlier-repairs = Earlier repairs
fact-earlier-repairs-checked = { CAPITAL(SPELLED($repairs)) } checked again, nothing found
fact-repaired-places = { $places ->
    [one] Repaired place
   *[other] { CAPITAL(SPELLED($places)) } repaired places
}
fact-not-checked-again = Not checked again with a detector or bubbles
fact-checked-again = Checked again, nothing found
fact-all-checked-again = All checked again, nothing found
fact-some-checked-again = { $checked } of { $repaired } checked again, nothing found
fact-detector-proved = detector proved on { $leak }
fact-section-tested = Section { $section }, tested
fact-circuits-tested = { $count ->
    [0] Whole circuit
    [1] Circuit { $circuits }
   *[other] Circuits { $circuits }
}, tested
fact-gas = gas
fact-test = { $gas } at { $pressure } for { $duration }{ $later ->
    [yes] ; made before a later repair
   *[no] { "" }
}
fact-coarse-test = a coarse test: it leaves a leak of the size found possible
fact-nitrogen-a-day = { $mass } of nitrogen a day
fact-air-a-day = { $mass } of air a day
fact-whole-under-vacuum = whole circuit under vacuum: nothing larger than { $rate }
fact-air-came-in = Air came in
fact-vacuum-test = under vacuum for { $duration }
fact-none-added = None added
fact-charged = { $mass } charged
fact-taken-out = { $mass } { $refrigerant } recovered{ $missing ->
    [none] { "" }
   *[other] ; { $missing } had been missing
}
fact-after-retrofit = after the change of refrigerant
fact-refrigerant = Refrigerant
fact-lost = { $least ->
    [yes] At least { $mass } had been lost
   *[no] { $mass } had been lost
}
fact-put-back = { $mass } put back
fact-missing-in-all = { $least ->
    [yes] at least { $mass }
   *[no] { $mass }
} had been missing in all{ $co2e ->
    [none] { "" }
   *[other] , { $co2e }
}
head-line-circuit = circuit { $circuit }: { $parts }
