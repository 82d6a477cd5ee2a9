# Cautions that the page carries: each begins small and ends without a full stop, which the page puts
# right; back-ticks are for the screen. Why a caution matters is a phrase of `matters` in src/caution.

caution-background-hides-leak = a gas detector was relied on in air that already held refrigerant
caution-brazed-without-purge = this joint was brazed without a nitrogen purge
caution-bubbles-before-detector = the { $method } look came after bubble solution at `{ $finding }`
caution-certificate-category-wrong = category { $category } of { $person } does not cover this work
caution-certificate-expired = the certificate of { $person } had run out on { $day }
caution-certificate-missing = { $person } worked on the circuit, and the book holds no certificate of that person
caution-charged-without-evacuation = { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} was charged after test `{ $test }` with no evacuation between
caution-cylinder-does-not-add-up = cylinder `{ $cylinder }` weighed { $mass } { $than } than when it was last weighed
caution-detector-not-proved = { $detector ->
    [none] the detector
   *[other] detector `{ $detector }`
} was not proved on a reference leak on { $day }
caution-drier-not-replaced = the circuit was opened here, and nothing is said of its drier
caution-dye-from-earlier-leak = the dye at `{ $finding }` may come from an earlier leak
caution-flame-near-flammable = a flame ({ $method }) was used on a circuit with { $refrigerant }
caution-gas-added-leak-not-found = refrigerant was added to { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} and the leak was not found
caution-gas-added-without-repair = refrigerant was added to { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} while a known leak stands open
caution-gas-added-without-search = refrigerant was added to { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} and the leak was not searched for
caution-gauge-beyond-its-range = { $pressure } is beyond the range of the gauge of test `{ $test }`
caution-hold-at-moving-temperature = a pressure hold without steady temperature is the only proof of `{ $finding }`
caution-hold-too-coarse-for-leak = test `{ $test }` could not have shown the leak `{ $finding }`
caution-hydrogen-above-five-percent = test `{ $test }` was made with more than 5 % hydrogen
caution-hydrogen-mixed-on-site = the gas of test `{ $test }` was mixed on site
caution-instrument-check-overdue = detector `{ $detector }` had last been checked on { $day }, more than 12 months before
caution-low-pressure-search = a detector search was made at { $pressure } only
caution-method-blind-to-refrigerant = { $method ->
    [litmus] litmus
   *[other] a halide torch
} cannot show { $refrigerant }
caution-moisture-read-as-leak = `{ $finding }` rests on a rise that levels off
caution-moved-more-than-charge = { $mass } { $kind ->
    [charged] charged into
    [recovered] recovered from
   *[other] let out of
} { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} is more than its full charge of { $full }
caution-no-bubbles-too-soon = bubble solution watched for under 20 min is the only proof of `{ $finding }`
caution-oil-at-service-valve = oil is the only sign at `{ $finding }`
caution-outcome-beyond-evidence = the outcome noted, “{ $claim }”, goes beyond what the notes show: { $shown }
caution-oxygen-or-air-used = test `{ $test }` was made with { $gas }
caution-pressure-above-plate = test `{ $test }` was made at { $pressure }, above the plate's { $plate }
caution-pressure-test-as-leak-inspection = a pressure or vacuum test stands here for a search
caution-proof-before-repair = `{ $finding }` was repaired again after its last proof
caution-proof-coarser-than-leak = the only proof of `{ $finding }` could not have shown that leak
caution-proved-by-looking = `{ $finding }` was proved by looking only
caution-recovered-gas-to-another-owner = cylinder `{ $cylinder }` held gas recovered at { $site }
caution-reference-leak-of-another-kind = the detector was tried on { $tried } and relied on for { $held }
caution-repaired-not-retested = `{ $finding }` was repaired and not tested again
caution-rise-at-moving-temperature = a vacuum rise at a moving temperature is the only proof of `{ $finding }`
caution-search-in-moving-air = a gas detector was relied on in moving air ({ $word })
caution-search-stopped-at-first-leak = a leak was found, and these points were not searched: { $points }{ $more ->
    [0] {""}
   *[other] {" "}and { $more } more
}
caution-searched-while-empty = this search was made with the plant emptied
caution-sensitivity-below-rule = detector `{ $detector }` finds leaks from { $leak } only
caution-sensor-disturbed = `{ $finding }` rests on { $sensor ->
    [infrared] an infrared
    [heated-diode] a heated diode
   *[other] a semiconductor
} sensor near { $word }
caution-sign-without-direct-check = `{ $finding }` rests on a sign alone
caution-strength-pressure-without-source = strength test `{ $test }` was made at { $factor } times the plate, and no note says whose figure that is
caution-test-coarser-than-limit = test `{ $test }` cannot show this limit: one step of its gauge is a leak of { $leak }
caution-test-gas-with-refrigerant-inside = test `{ $test }` put test gas into { $circuit ->
    [none] the system
   *[other] circuit { $circuit }
} with refrigerant still inside
caution-test-too-short = a vacuum rise of { $minutes } min is the only proof of `{ $finding }`
caution-ultrasonic-in-noise = an ultrasonic detector was relied on in noise ({ $word })
caution-vacuum-gauge-too-coarse = the gauge of test `{ $test }` cannot read its limit
caution-vented = { $refrigerant } was let out on purpose
caution-volume-missing = nothing can be said about the leak limit of test `{ $test }`
caution-wrong-cylinder = { $kind ->
    [charged] { $held } was charged into { $circuit ->
        [none] the system
       *[other] circuit { $circuit }
    }, which holds { $wanted }
   *[other] { $wanted } from { $circuit ->
        [none] the system
       *[other] circuit { $circuit }
    } was recovered into a cylinder of { $held }
}
