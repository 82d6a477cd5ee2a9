//! An invented report for the tests of the typesetter: every part filled, every number made up.

use crate::report::data::*;

fn s(text: &str) -> String {
    text.to_owned()
}

#[expect(clippy::unnecessary_wraps, reason = "it fills optional fields")]
fn some(text: &str) -> Option<String> {
    Some(s(text))
}

fn entry(key: &str, value: &str) -> Entry {
    Entry {
        key: s(key),
        value: s(value),
        working: None,
    }
}

fn worked(key: &str, value: &str, working: &str) -> Entry {
    Entry {
        working: some(working),
        ..entry(key, value)
    }
}

fn fact(label: &str, value: &str, qualifier: &str, working: Option<&str>) -> Fact {
    Fact {
        label: s(label),
        value: s(value),
        qualifier: some(qualifier),
        working: working.map(s),
    }
}

fn caution(name: &str, sentence: &str, because: &str) -> Caution {
    Caution {
        name: s(name),
        sentence: s(sentence),
        because: (!because.is_empty()).then(|| s(because)),
    }
}

fn point(number: &str, place: &str, state: PointState, words: &str, rest: [&str; 2]) -> PointRow {
    PointRow {
        number: s(number),
        place: s(place),
        state,
        state_words: s(words),
        evidence: s(rest[0]),
        size: s(rest[1]),
    }
}

fn evidence(time: &str, method: &str, result: &str) -> Evidence {
    Evidence {
        time: s(time),
        method: s(method),
        result: s(result),
    }
}

fn photo(number: usize, caption: &str, rings: &[(f64, f64, &str)]) -> Photo {
    let ring = |&(x, y, label): &(f64, f64, &str)| Ring {
        x,
        y,
        label: s(label),
    };
    Photo {
        number,
        caption: s(caption),
        alt: format!("Photograph: {caption}"),
        rings: rings.iter().map(ring).collect(),
    }
}

/// A table from heads marked by kind (`#` number, `|` short, `@` name) and rows of cells; a row that
/// begins with `=` is a total.
pub fn table(title: &str, heads: &[&str], rows: &[&[&str]], note: &str) -> Table {
    let column = |head: &&str| {
        let kinds = [
            ('#', ColumnKind::Number),
            ('|', ColumnKind::Short),
            ('@', ColumnKind::Name),
        ];
        let kind = kinds.iter().find(|(mark, _)| head.starts_with(*mark));
        Column {
            head: s(head.trim_start_matches(['#', '|', '@'])),
            kind: kind.map_or(ColumnKind::Text, |(_, kind)| *kind),
        }
    };
    let row = |cells: &&[&str]| Row {
        cells: cells
            .iter()
            .map(|cell| s(cell.trim_start_matches('=')))
            .collect(),
        total: cells[0].starts_with('='),
    };
    Table {
        title: s(title),
        columns: heads.iter().map(column).collect(),
        rows: rows.iter().map(row).collect(),
        note: s(note),
    }
}

/// The rich report; it wants six photographs.
pub fn rich() -> ReportData {
    ReportData {
        document: document(),
        contractor: Contractor {
            name: s("Saltmarsh Cooling"),
            certificate: some("certificate XX-0412"),
            telephone: some("000 555 0142"),
            address: some("14 Ropewalk, Brackwater"),
        },
        head: Head {
            kind: s("Leak search and repair"),
            date: s("18 June 2026"),
            system: s("Flake ice machine 1"),
            line: vec![
                s("Brackwater harbour ice works"),
                s("R-449A, 86 kg, 120 t CO₂e"),
                s("A1, not flammable"),
            ],
            particulars: vec![
                entry("Operator", "Brackwater Harbour Cooperative (invented)"),
                entry("Place", "Ice house, Quay 3"),
                entry("Made, installed", "2019, 2 May 2019"),
                entry("Category", "industrial process refrigeration"),
                entry("Full charge", "86 kg, weighed at installation"),
                entry(
                    "Called because",
                    "Ice output down by a third, low suction pressure alarm.",
                ),
            ],
        },
        outcome: Outcome {
            sentence: s(
                "One leak found, repaired and proved. A second suspect joint could not be reached.",
            ),
            because: vec![
                s(
                    "The flare nut at evaporator 1 had worked loose and lost about 3 kg of refrigerant since March.",
                ),
                s("It has been remade; no refrigerant was detected at it afterwards."),
                s(
                    "Evaporator 2’s return bends are behind a seized fan guard and still have to be searched.",
                ),
            ],
        },
        facts: vec![
            fact(
                "Repaired joint",
                "Re-checked, no alarm",
                "electronic, proved on 5 g/yr",
                None,
            ),
            fact(
                "Liquid line 2, tested",
                "Nothing above 0.6 g/day",
                "27.5 bar nitrogen, 2 h",
                Some("p1/bound"),
            ),
            fact(
                "Refrigerant",
                "6.23 kg added",
                "8.7 t CO₂e lost since March",
                Some("a/co2e"),
            ),
            fact(
                "Next",
                "Re-check by 18 July",
                "not before 19 June, 16:10",
                None,
            ),
        ],
        cautions: vec![caution(
            "proof-could-not-have-shown-that-leak",
            "The pressure test could not have shown a leak as small as the one repaired.",
            "It stands as a test of strength of the joint. That the joint no longer leaks rests on the electronic re-check alone.",
        )],
        leaking_again: vec![Block::Paragraph {
            c: vec![
                Inline::plain("Evaporator 1’s inlet joint is "),
                Inline::strong("leaking for the third time in 21 months"),
                Inline::plain(
                    ": September 2024, February 2026, June 2026. The last repair held 135 days. The line beside it shakes with the compressor; clipping it was advised and agreed for the next shutdown.",
                ),
            ],
        }],
        points: Points {
            size_unit: some("g/yr"),
            rows: vec![
                point(
                    "1",
                    "Evaporator 1, expansion valve inlet, flare nut",
                    PointState::RepairedProved,
                    "repaired, proved",
                    ["confirmed", "30 ± 10"],
                ),
                point(
                    "2",
                    "Receiver outlet valve, stem",
                    PointState::Suspect,
                    "suspect, open",
                    ["presumed", "not sized"],
                ),
                point(
                    "3",
                    "Evaporator 2, return bends",
                    PointState::NotReached,
                    "not reached",
                    ["", ""],
                ),
                point(
                    "4",
                    "Liquid drier, outlet joint",
                    PointState::Holding,
                    "holding, 197 days",
                    ["", ""],
                ),
                point(
                    "5",
                    "Discharge line, elbow above the oil separator",
                    PointState::SuspectCleared,
                    "suspect cleared",
                    ["located", "2.5"],
                ),
            ],
        },
        still_open: vec![
            OpenItem {
                what: s("Search evaporator 2 with the guard off."),
                decided: some("Agreed by the site manager, 18 June, for the next shutdown."),
            },
            OpenItem {
                what: s("Watch the receiver valve: oil was seen, no alarm."),
                decided: None,
            },
        ],
        next: vec![
            NextDate {
                what: s("Re-check the repaired joint"),
                by: s("by 18 July 2026"),
                not_before: some("not before 19 June, 16:10"),
                because: some("Regulation (EU) 2024/573, Article 4"),
            },
            NextDate {
                what: s("Periodic leak check"),
                by: s("by 18 December 2026"),
                not_before: None,
                because: some("every 6 months from 50 t CO₂e, Article 5"),
            },
        ],
        waiting: vec![Block::plain(
            "At the loss since March, about 11 kg a year (15 t CO₂e), and ice output falls again by autumn.",
        )],
        revision: Some(Revision {
            issue: s("B"),
            replaces: s("issue A of 18 June 2026"),
            changes: vec![s(
                "The weight of cylinder c-120 after recovery was corrected from 17.23 kg to 17.32 kg.",
            )],
        }),
        safety: Safety {
            checked: vec![
                entry("Air, 08:20", "0 ppm of refrigerant, room ventilated"),
                entry("Isolation, 08:20", "locked off and tagged"),
                entry("Ignition sources", "none found"),
                worked(
                    "Room",
                    "2\u{202f}020 g/m³ if all of circuit a came out at once; limit of the site’s code 357 g/m³",
                    "room/ice-room",
                ),
            ],
            room: vec![Block::plain(
                "The ice room is an occupied room of 42 m² and 3.1 m. Its fixed detector alarms at 500 ppm; it was tested on 12 January 2026.",
            )],
            cautions: vec![s(
                "R-449A is heavier than air and displaces it: a cellar or a pit can be deadly without any smell.",
            )],
        },
        findings: findings(),
        schematics: vec![schematic()],
        tests: tests(),
        account: account(),
        readings: Part {
            tables: vec![table(
                "Circuit a, 16:40, ambient 17 °C",
                &[
                    "Reading",
                    "#Measured",
                    "#Saturation, °C",
                    "#Difference, K",
                    "Where",
                ],
                &[
                    &[
                        "Suction pressure",
                        "1.9 bar g",
                        "−22.3",
                        "8.3 superheat",
                        "compressor inlet",
                    ],
                    &[
                        "Liquid pressure",
                        "14.6 bar g",
                        "33.1",
                        "5.6 subcooling",
                        "receiver outlet",
                    ],
                    &["Sight glass", "clear", "", "", "liquid line"],
                ],
                "Superheat from the dew point, subcooling from the bubble point; glide 5.1 K.",
            )],
            ..Part::default()
        },
        history: history(),
        legal: vec![
            LegalRow {
                rule: s("Regulation (EU) 2024/573, Article 5"),
                statement: s(
                    "120 t CO₂e without a leak detection system: a leak check every six months. The next falls due on 18 December 2026.",
                ),
                verify: false,
            },
            LegalRow {
                rule: s("Regulation (EU) 2024/573, Article 4(5)"),
                statement: s(
                    "A repaired leak is checked again by a certified person within one month, and not before 24 hours of operation.",
                ),
                verify: true,
            },
            LegalRow {
                rule: s("Regulation (EU) 2024/573, Article 7"),
                statement: s("Records of this visit are complete; see the appendix."),
                verify: false,
            },
        ],
        method: method(),
        work: Part {
            tables: vec![table(
                "Parts",
                &["Part", "Work", "|By"],
                &[
                    &["Liquid drier", "replaced", "T. Invented"],
                    &[
                        "Flare nut, 3/8 in",
                        "remade, 60 N m, with a second clip",
                        "T. Invented",
                    ],
                ],
                "",
            )],
            ..Part::default()
        },
        advice: vec![
            Advice {
                what: s("Clip the liquid line; it shakes with the compressor."),
                to: some("site manager, 18 June, 17:10"),
                answer: some("agreed, next shutdown"),
            },
            Advice {
                what: s("Free the seized fan guard of evaporator 2 before the re-check."),
                to: some("site manager, 18 June, 17:10"),
                answer: None,
            },
        ],
        used: Part {
            tables: vec![
                table(
                    "People",
                    &["Name", "Certificate", "|Valid until"],
                    &[&["T. Invented", "XX-PERS-2207, category I", "2027-05-31"]],
                    "",
                ),
                table(
                    "Instruments",
                    &["@Id", "Kind", "Sensitivity or accuracy", "|Checked"],
                    &[
                        &[
                            "ld-2",
                            "electronic leak detector, infrared",
                            "3 g/yr; 5 g/yr shown at 08:32",
                            "2026-01-12",
                        ],
                        &[
                            "g-7",
                            "pressure gauge, 60 bar g",
                            "0.25 % of range, 0.01 bar",
                            "2025-11-04",
                        ],
                        &["g-9", "vacuum gauge", "10 % of reading", "2026-02-20"],
                    ],
                    "",
                ),
            ],
            ..Part::default()
        },
        signatures: vec![
            Signature {
                role: s("For the contractor"),
                name: s("T. Invented"),
                certificate: some("XX-PERS-2207, category I"),
                statement: some("The work was done as described."),
            },
            Signature {
                role: s("For the operator"),
                name: s(""),
                certificate: None,
                statement: some("Received, and explained to me."),
            },
        ],
        workings: workings(),
    }
}

fn document() -> Document {
    Document {
        title: s("Leak search and repair, Flake ice machine 1, 18 June 2026"),
        author: s("Saltmarsh Cooling"),
        language: s("en"),
        region: some("GB"),
        paper: Paper::A4,
        accent: None,
        draft: false,
        date: DocumentDate {
            year: 2026,
            month: 6,
            day: 18,
        },
        footer: Footer {
            date: s("2026-06-18"),
            system: s("Flake ice machine 1"),
            issue: s("issue B"),
            fingerprint: s("7c1e 40aa 93d2"),
        },
    }
}

fn findings() -> Vec<Finding> {
    vec![
        Finding {
            number: s("1"),
            heading: s("Flare nut, expansion valve inlet, evaporator 1"),
            point: some("evap-1/txv-inlet"),
            state: PointState::RepairedProved,
            state_words: s("repaired, proved"),
            facts: vec![
                entry("Kind", "leak"),
                entry("Evidence", "confirmed by two independent methods"),
                worked(
                    "Size",
                    "30 ± 10 g/yr, measured by electronic ld-2 at 11 bar g",
                    "evap-1/size",
                ),
                entry("Cause", "nut backed off, line unclipped for 1.4 m"),
                entry("Repair", "11:30 flare remade, 60 N m"),
                entry("Proof", "pressure test p1"),
                entry("Proof", "16:50 electronic ld-2, no alarm"),
            ],
            evidence: vec![
                evidence("08:55", "oil trace", "wiped, back at 09:50"),
                evidence("09:10", "electronic, ld-2", "alarm; clean air, alarm again"),
                evidence("09:40", "bubbles", "foam cluster after 6 min"),
            ],
            prose: vec![
                Block::Paragraph {
                    c: vec![
                        Inline::plain(
                            "The nut had backed off about a quarter turn. The line shakes with the compressor, as it did in ",
                        ),
                        Inline::Emphasis {
                            c: vec![Inline::plain("February")],
                        },
                        Inline::plain("; see "),
                        Inline::Code {
                            text: s("evap-1/txv-inlet"),
                        },
                        Inline::plain(" in the history. #eval $x$ <a> is only text."),
                    ],
                },
                Block::List {
                    items: vec![
                        vec![Block::plain(
                            "The old flare was work-hardened and had a hair crack.",
                        )],
                        vec![Block::plain(
                            "The new flare was made with a fresh tool and oiled on the back only.",
                        )],
                    ],
                },
            ],
            pictures: vec![
                Picture::Pair {
                    before: photo(1, "Oil on the nut before repair", &[(44.0, 61.0, "1")]),
                    after: photo(
                        2,
                        "The flare remade, dry after the run",
                        &[(46.0, 58.0, "1")],
                    ),
                },
                Picture::One {
                    photograph: photo(
                        3,
                        "The unclipped line beside evaporator 1",
                        &[(20.0, 40.0, "a"), (78.0, 52.0, "b")],
                    ),
                },
            ],
            cautions: vec![],
        },
        Finding {
            number: s("2"),
            heading: s("Receiver outlet valve, stem"),
            point: some("rack/receiver/outlet-valve"),
            state: PointState::Suspect,
            state_words: s("suspect, open"),
            facts: vec![
                entry("Kind", "suspect"),
                entry("Evidence", "presumed, from indirect signs only"),
                entry("Cap", "missing; a new one fitted"),
            ],
            evidence: vec![
                evidence(
                    "10:20",
                    "oil trace",
                    "at the stem; the valve was used this morning",
                ),
                evidence("10:25", "electronic, ld-2", "no alarm"),
            ],
            prose: vec![Block::plain(
                "Oil at a valve that has just been turned says little. The stem was dried and capped so that the next look is a clean one.",
            )],
            pictures: vec![],
            cautions: vec![caution(
                "oil-after-service-as-sole-sign",
                "Oil soon after the valve was turned is the only sign here.",
                "Look again before anything is replaced.",
            )],
        },
        Finding {
            number: s("3"),
            heading: s("Fan guard of evaporator 2 seized"),
            state: PointState::Defect,
            state_words: s("defect, open"),
            facts: vec![entry("Kind", "defect")],
            pictures: vec![Picture::One {
                photograph: photo(4, "The guard; one screw has no head left", &[]),
            }],
            ..Finding::default()
        },
    ]
}

fn ticks(labels: &[(f64, &str)]) -> Vec<Tick> {
    let tick = |&(at, label): &(f64, &str)| Tick {
        at,
        label: s(label),
    };
    labels.iter().map(tick).collect()
}

fn tests() -> Vec<Test> {
    let rise = |top: f64, bend: f64| {
        let point = |step: i32| {
            let across = f64::from(step) / 40.0;
            [across, 0.12 + top * (1.0 - (-bend * across).exp())]
        };
        (0..=40).map(point).collect::<Vec<_>>()
    };
    vec![
        Test {
            id: s("p1"),
            heading: s("Pressure test of liquid line 2"),
            verdict: s(
                "It showed nothing larger than 0.6 g/day of nitrogen; a leak smaller than that could still be there.",
            ),
            facts: vec![
                entry("Purpose", "tightness"),
                entry("Gas", "nitrogen, dry"),
                entry("Section", "liquid-2, 4.2 ± 0.4 L, plate 28 bar g"),
                entry("Gauge", "g-7, 0.25 % of 60 bar, read to 0.01 bar"),
                entry("Start", "11:50, 27.50 bar g, 16.4 °C"),
                entry("End", "13:50, 27.77 bar g, 18.9 °C"),
            ],
            results: vec![
                worked(
                    "Expected at the end, from the warming",
                    "27.75 bar g",
                    "p1/expected",
                ),
                worked(
                    "Change at constant temperature",
                    "+0.02 ± 0.06 bar",
                    "p1/change",
                ),
                worked(
                    "Smallest leak this test could have shown",
                    "0.6 g/day",
                    "p1/bound",
                ),
            ],
            chart: None,
            prose: vec![],
            tables: vec![],
            cautions: vec![],
        },
        Test {
            id: s("v1"),
            heading: s("Vacuum test of liquid line 2"),
            verdict: s(
                "The maker’s limit was met: 412 micron after 15 min. The rise flattens, which is moisture boiling off rather than a leak.",
            ),
            facts: vec![
                entry("Gauge", "g-9, at the far end"),
                entry("Isolated", "14:55"),
                entry("Warmest pipe", "19 °C"),
                entry("Accept below", "500 micron, by the maker"),
            ],
            results: vec![
                worked("After 15 min", "412 ± 41 micron", "v1/end"),
                worked("Nothing larger than", "1.4e−5 Pa m³/s", "v1/bound"),
            ],
            chart: Some(Chart {
                alt: s(
                    "Pressure after isolation: it rises from 120 to 412 micron in 15 minutes, ever more slowly, and stays below the limit of 500 micron.",
                ),
                caption: s("Pressure in liquid line 2 after isolation at 14:55."),
                across: Axis {
                    title: s("Time since isolation, min"),
                    ticks: ticks(&[(0.0, "0"), (0.333, "5"), (0.667, "10"), (1.0, "15")]),
                },
                up: Axis {
                    title: s("Pressure, micron"),
                    ticks: ticks(&[(0.0, "0"), (0.333, "200"), (0.667, "400"), (1.0, "600")]),
                },
                series: vec![
                    Series {
                        label: s("measured"),
                        stroke: SeriesStroke::Full,
                        points: rise(0.585, 2.4),
                    },
                    Series {
                        label: s("if it were a leak"),
                        stroke: SeriesStroke::Dashed,
                        points: vec![[0.0, 0.12], [0.62, 0.95]],
                    },
                ],
                bars: Vec::new(),
                limits: vec![Limit {
                    at: 0.833,
                    label: s("maker’s limit, 500 micron"),
                }],
            }),
            prose: vec![],
            tables: vec![],
            cautions: vec![caution(
                "warmed-during-the-rise",
                "The pipe warmed by 1.5 K while the gauge was watched.",
                "",
            )],
        },
    ]
}

fn schematic() -> Schematic {
    let vessel = |x, y, symbol, name: &str, beside| Vessel {
        x,
        y,
        symbol,
        name: s(name),
        beside,
    };
    let pipe = |corners: &[[f64; 2]], stroke| Pipe {
        corners: corners.to_vec(),
        stroke,
        name: String::new(),
    };
    let mark = |x, y, leads_to, number: &str, state| SchematicMark {
        x,
        y,
        leads_to,
        number: s(number),
        state,
    };
    Schematic {
        alt: s(
            "Circuit a as a loop: compressor, condenser, receiver, drier, sight glass, valves and evaporator, with the points 1 to 4 at their places.",
        ),
        caption: s("Circuit a, not to scale; the numbers are those of the points."),
        aspect: 0.42,
        vessels: vec![
            vessel(0.1, 0.5, Symbol::Compressor, "Compressor", Side::Right),
            vessel(0.3, 0.2, Symbol::HeatExchanger, "Condenser", Side::Below),
            vessel(0.45, 0.2, Symbol::Receiver, "Receiver", Side::Below),
            vessel(0.6, 0.2, Symbol::Drier, "Drier", Side::Below),
            vessel(0.75, 0.2, Symbol::SightGlass, "Sight glass", Side::Below),
            vessel(0.85, 0.2, Symbol::Fitting, "Liquid line", Side::Below),
            vessel(
                0.85,
                0.8,
                Symbol::SolenoidValve,
                "Solenoid valve",
                Side::Above,
            ),
            vessel(
                0.7,
                0.8,
                Symbol::ExpansionDevice,
                "Expansion valve",
                Side::Above,
            ),
            vessel(0.5, 0.8, Symbol::HeatExchanger, "Evaporator 1", Side::Above),
        ],
        pipes: vec![
            pipe(
                &[[0.1, 0.5], [0.1, 0.2], [0.95, 0.2], [0.95, 0.8], [0.5, 0.8]],
                SeriesStroke::Full,
            ),
            pipe(&[[0.5, 0.8], [0.1, 0.8], [0.1, 0.5]], SeriesStroke::Dashed),
        ],
        marks: vec![
            mark(0.7, 0.93, [0.7, 0.8], "1", PointState::RepairedProved),
            mark(0.6, 0.07, [0.6, 0.2], "2", PointState::Suspect),
            mark(0.5, 0.93, [0.5, 0.8], "3", PointState::NotReached),
            mark(0.45, 0.07, [0.45, 0.2], "4", PointState::Holding),
        ],
    }
}

fn account() -> Part {
    Part {
        lead: vec![Block::Paragraph {
            c: vec![
                Inline::plain("Complete since 2 February 2026. In this time circuit a lost "),
                Inline::strong("6.23 ± 0.05 kg"),
                Inline::plain(" to leaks, 9.5 % of its charge a year"),
                Inline::Working { id: s("a/rate") },
                Inline::plain(". What was recovered and put back in one job is not a loss."),
            ],
        }],
        facts: vec![],
        tables: vec![
            table(
                "Circuit a, R-449A",
                &[
                    "|Date",
                    "Movement",
                    "Why",
                    "@Cylinder",
                    "#In, kg",
                    "#Out, kg",
                    "#Net, kg",
                ],
                &[
                    &[
                        "2026-02-03",
                        "charged",
                        "recharge after repair",
                        "c-101",
                        "2.10",
                        "",
                        "2.10",
                    ],
                    &[
                        "2026-03-11",
                        "charged",
                        "top-up",
                        "c-101",
                        "3.00",
                        "",
                        "3.00",
                    ],
                    &[
                        "2026-06-18",
                        "recovered",
                        "repair",
                        "c-120",
                        "",
                        "3.22",
                        "−3.22",
                    ],
                    &[
                        "2026-06-18",
                        "charged",
                        "recharge, full by weight",
                        "c-114",
                        "9.45",
                        "",
                        "9.45",
                    ],
                    &["=Sum", "", "", "", "14.55", "3.22", "11.33"],
                ],
                "Each mass ± 0.02 kg, scale s-1.",
            ),
            table(
                "Cylinders",
                &[
                    "@Cylinder",
                    "Refrigerant",
                    "#Before, kg",
                    "#After, kg",
                    "#Moved, kg",
                    "#Most, kg",
                ],
                &[
                    &[
                        "c-114",
                        "R-449A, reclaimed",
                        "26.30",
                        "16.85",
                        "−9.45",
                        "47.00",
                    ],
                    &[
                        "c-120",
                        "R-449A, recovered",
                        "14.10",
                        "17.32",
                        "3.22",
                        "47.00",
                    ],
                ],
                "",
            ),
        ],
        notes: vec![],
    }
}

fn history() -> Part {
    Part {
        tables: vec![
            table(
                "Points over time",
                &["#No.", "Point", "|Last look", "Then", "Now"],
                &[
                    &[
                        "1",
                        "Evaporator 1, expansion valve inlet",
                        "2026-02-03",
                        "repaired, proved",
                        "leaking again at the same place, held 135 days",
                    ],
                    &[
                        "4",
                        "Liquid drier, outlet joint",
                        "2025-12-03",
                        "repaired, proved",
                        "repaired, holding, 197 days",
                    ],
                ],
                "",
            ),
            table(
                "Earlier records, by others",
                &["|Date", "What", "#Mass, kg", "Source"],
                &[
                    &[
                        "2025-04-20",
                        "charged, circuit a",
                        "9",
                        "site logbook p. 14",
                    ],
                    &[
                        "2024-09-11",
                        "flare at evaporator 1 repaired",
                        "",
                        "site logbook p. 9",
                    ],
                ],
                "",
            ),
        ],
        ..Part::default()
    }
}

fn method() -> Method {
    Method {
        lead: vec![Block::plain(
            "The whole of circuit a was walked; two areas could not be reached. The detector was proved on a reference leak of 5 g/yr at 08:32 and again at 16:45.",
        )],
        searches: vec![table(
            "Searches",
            &["@Id", "Areas", "Method", "|Time", "Conditions"],
            &[&[
                "s1",
                "evap-1/*, evap-2/*, rack/*",
                "electronic, ld-2",
                "08:40 to 10:05",
                "running, 1.2 bar g at the low side, clean air",
            ]],
            "",
        )],
        not_reached: vec![
            NotReached {
                place: s("Evaporator 2, return bends"),
                reason: s("seized guard"),
            },
            NotReached {
                place: s("Roof, condenser"),
                reason: s("above 2 m, no scaffold"),
            },
        ],
        limits: vec![
            s(
                "An electronic search finds what leaves while it passes; it does not show that nothing leaves at other times.",
            ),
            s("At 1.2 bar g a leak gives less than at standstill pressure."),
        ],
        cautions: vec![caution(
            "not-all-visible-parts-inspected",
            "Not all visible and accessible parts were inspected.",
            "Two areas remain, see above.",
        )],
    }
}

fn input(symbol: &str, value: &str, origin: &str) -> WorkingInput {
    WorkingInput {
        symbol: s(symbol),
        value: s(value),
        origin: s(origin),
        working: None,
    }
}

fn workings() -> Vec<WorkingEntry> {
    let pressure = WorkingEntry {
        number: s("W1"),
        id: s("p1/expected"),
        title: s("Pressure expected at the end of p1"),
        method: s("real gas at constant volume"),
        formula: some("real-gas-at-constant-volume"),
        formula_text: s("p2 equals p1 times Z2 T2 over Z1 T1"),
        inputs: vec![
            input("p₁", "28.509 ± 0.15 bar a", "readings.toml:21"),
            input("T₁", "289.55 K", "readings.toml:21"),
            input("T₂", "292.05 K", "readings.toml:22"),
            input("Z₁, Z₂", "0.9936, 0.9939", "table of nitrogen, CoolProp 8"),
            input("b", "1\u{202f}009 mbar a", "visit.toml:6"),
        ],
        result: s("27.75 bar g"),
        uncertainty: some("± 0.02 bar"),
        source: s("common practice; Z from the Helmholtz equation of Span et al. 2000"),
        notes: vec![],
    };
    let mut change = pressure.clone();
    change.number = s("W2");
    change.id = s("p1/change");
    change.title = s("Change at constant temperature of p1");
    change.formula = None;
    change.formula_text = s("Δp = p₂ − p₂,expected");
    change.inputs = vec![
        input("p₂", "28.779 ± 0.15 bar a", "readings.toml:22"),
        WorkingInput {
            working: some("p1/expected"),
            ..input("p₂,expected", "28.76 bar a", "working")
        },
    ];
    change.result = s("+0.02 bar");
    change.uncertainty = some("± 0.06 bar (k = 2, correlated gauge)");
    let rate = WorkingEntry {
        number: s("W3"),
        id: s("a/rate"),
        title: s("Loss rate of circuit a, plain"),
        method: s("loss over charge, scaled to a year"),
        formula: some("loss-rate"),
        formula_text: s("L equals 100 times lost mass over full charge times 365 over days"),
        inputs: vec![
            input(
                "m_lost",
                "6.23 ± 0.05 kg",
                "refrigerant.toml:4, refrigerant.toml:12, brackwater/flake-ice-1/2026-03-11/refrigerant.toml:9",
            ),
            input("m_full", "86 kg", "system.toml:9"),
            input("d", "277", "2025-09-14 to 2026-06-18"),
        ],
        result: s("9.5 %/yr"),
        uncertainty: some("± 0.1 %/yr"),
        source: s("common practice"),
        notes: vec![s("A partial top-up, 99 days before, is counted in full.")],
    };
    let plain = |number: &str, id: &str, title: &str, result: &str| WorkingEntry {
        number: s(number),
        id: s(id),
        title: s(title),
        result: s(result),
        formula: None,
        ..rate.clone()
    };
    vec![
        pressure,
        change,
        rate.clone(),
        plain(
            "W4",
            "p1/bound",
            "Smallest leak that p1 could have shown",
            "0.6 g/day",
        ),
        plain("W5", "a/co2e", "CO₂e lost since March", "8.7 t CO₂e"),
        plain(
            "W6",
            "evap-1/size",
            "Size of the leak at evaporator 1",
            "30 g/yr",
        ),
        plain("W7", "v1/end", "Pressure at the end of v1", "412 micron"),
        plain(
            "W8",
            "v1/bound",
            "Largest leak that v1 leaves open",
            "1.4e−5 Pa m³/s",
        ),
        plain(
            "W9",
            "room/ice-room",
            "Room against its limit",
            "2\u{202f}020 g/m³",
        ),
    ]
}

/// A small job: nothing but what every visit has.
pub fn small() -> ReportData {
    let rich = rich();
    ReportData {
        document: Document {
            paper: Paper::Letter,
            ..rich.document
        },
        contractor: Contractor {
            name: s("Saltmarsh Cooling"),
            ..Contractor::default()
        },
        head: Head {
            kind: s("Periodic leak check"),
            date: s("18 June 2026"),
            system: s("Bottle cooler"),
            line: vec![s("Creamery"), s("R-513A, 9 lb 4 oz")],
            particulars: vec![],
        },
        outcome: Outcome {
            sentence: s("The parts that could be reached were searched; no alarm was given."),
            because: vec![],
        },
        ..ReportData::default()
    }
}

/// A job of a size that hardly ever occurs: many points, pictures and movements, names without end.
pub fn large() -> ReportData {
    let mut data = rich();
    let long = "Low-temperature evaporator of the third blast freezer on the mezzanine above the packing hall, distributor header, northernmost braze of the eleven";
    data.head.system = s(
        "Blast freezer 3, mezzanine above the packing hall, with the shared low-temperature rack and its satellite compressor",
    );
    data.document.footer.system.clone_from(&data.head.system);
    data.contractor.name = s(
        "Saltmarsh Cooling, Refrigeration and Heat Pump Engineering of the Estuary and the Outer Islands",
    );
    data.points.rows = (1..=60)
        .map(|n| {
            point(
                &n.to_string(),
                if n % 7 == 0 {
                    long
                } else {
                    "Evaporator, flare nut"
                },
                PointState::Holding,
                "repaired, holding, 1\u{202f}197 days",
                ["confirmed", if n % 3 == 0 { "12.5 ± 2.5" } else { "8 ± 1" }],
            )
        })
        .collect();
    let finding = data.findings[0].clone();
    data.findings = (0..12)
        .map(|n| Finding {
            number: (n + 1).to_string(),
            heading: if n % 5 == 0 { s(long) } else { finding.heading.clone() },
            point: some("packing-hall/mezzanine/blast-freezer-3/evaporator-low/distributor-header/braze-11-north-of-the-eleven"),
            pictures: vec![Picture::Pair {
                before: photo(1 + 2 * n % 6, "Before", &[(44.0, 61.0, "12")]),
                after: photo(2 + 2 * n % 6, "After, at a much greater length than anyone would ever put under a photograph of a flare nut", &[]),
            }],
            ..finding.clone()
        })
        .collect();
    let rows = data.account.tables[0].rows.clone();
    data.account.tables[0].rows = rows.iter().cycle().take(400).cloned().collect();
    data.document.draft = true;
    data
}
