# Where the system stands under the rules in force, and what they ask for.

because = { $rule }, { $source }
because-own-date = the technician's own date; { $rule }, { $source }
check-every = { $source }: every { $months } months
inspections-until = { $source }: { $quarterly ->
    [yes] every three months, until four quarters in a row are not over the trigger
   *[no] then yearly, until the leak rate has stayed at or below the trigger for a year
}
not-before-hours = not before { $hours } h of operation
report-loss = Report the loss of { $percent } % of the full charge in { $year }
class-with-50-lb = { $class } with 50 lb or more (82.157(a))
legal-coverage = { $count ->
    [0] The system
    [1] Circuit { $circuits }
   *[other] Circuits { $circuits }
}: { $standing ->
    [covered] covered
    [undecided] not decided
   *[other] not covered
}, { $why }.
legal-charge = Charge { $charge }{ $count ->
    [0] .
    [1] .
   *[other] { " " }each.
}
legal-rate-own-way = The rule counts in its own way, with its own days and with what was lost while working, so that this may differ from the loss per year in the account.
legal-rate-without-category = { $circuit ->
    [none] The system
   *[other] Circuit { $circuit }
}: leak rate { $rate }; no category is noted, so that no trigger can be named.
legal-rate-not-over = { $circuit ->
    [none] The system
   *[other] Circuit { $circuit }
}: leak rate { $rate } by the { $method ->
    [annualizing] annualizing
   *[rolling] rolling average
} method; trigger { $trigger } % for { $category }: not over it.
legal-rate-over = { $circuit ->
    [none] The system
   *[other] Circuit { $circuit }
}: leak rate { $rate } by the { $method ->
    [annualizing] annualizing
   *[rolling] rolling average
} method; trigger { $trigger } % for { $category }: over it, which asks for the repair within { $days } days of the addition, or { $shutdown } with an industrial process shutdown ({ $source }); { $extensions }.
legal-check-every = Leak check every { $months } months.
legal-detection-there = A leakage detection system is mandatory and is there; it is checked every 12 months.
legal-detection-missing = A leakage detection system is mandatory; none is noted.
legal-automatic-detection = An automatic leak detection system is asked for if it was put into service in 2017 or later: { $source }, verify.
legal-duty-done = { $when ->
    [since] { $what }, open since { $by }: done on { $day }.
    [late] { $what }, due by { $by }: done late, on { $day }.
   *[in-time] { $what }, due by { $by }: done on { $day }.
}
legal-records-kept = Records are kept { $years } years ({ $source }).
next-none = These notes show no date that a rule sets; agree one with the contractor.
next-open-since = open since { $day }
next-was-due = was due by { $day }
next-by = by { $day }
next-what = { $count ->
    [0] { $what }
    [1] { $what } (circuit { $circuits })
   *[other] { $what } (circuits { $circuits })
}
next-searched-in-part = It was searched since, by its notes not over every visible and accessible part, which is what makes a leak check
covered-84-not-said = 15 lb or more of a regulated substance, or of a substitute with GWP above 53 (84.106(a)); residential and light commercial air conditioning is left out, and the notes do not say whether this is
