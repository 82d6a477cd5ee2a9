//! Published values and derived vectors of leak rates, coverage, check intervals, pressure tests
//! and leak sizes. Each names its source, or says that it is derived: exact arithmetic from the text
//! of the rule, never to be cited as published.

use jiff::civil::{Date, date};
use jiff::tz::TimeZone;
use rimebook::job::Moment;
use rimebook::language::Words;
use rimebook::quantity::{Mass, Measured, PressureDifference, Throughput, parse};
use rimebook::refrigerant::{co2e_kg, find, nitrogen_z};
use rimebook::ruleset::{Plant, RULE_SETS, RuleSet, Size, coverage, is_chronic, trigger_percent};
use rimebook::text::{FileId, Noted, Span};
use rimebook::vocabulary::refrigerant_file::{ChargedTo, MovementKind, MovementWhy};
use rimebook::vocabulary::site_file::RuleSetWord;
use rimebook::vocabulary::system_file::Category;
use rimebook::working::account::{Account, Addition, Basis, Entry};
use rimebook::working::hold_leak::smallest_throughput;
use rimebook::working::leak_rate::{
    LeakRateMethod, Window, annualizing, days_between, lost_in_year, rolling_average,
};
use rimebook::working::leak_size::{YEAR_S, mass_rate, throughput};
use rimebook::working::pressure_test::expected_pressure_pa;

fn near(found: f64, expected: f64, tolerance: f64) {
    assert!(
        (found - expected).abs() <= tolerance,
        "found {found}, expected {expected} ± {tolerance}"
    );
}

/// A masses' ratio has no unit: pounds stand for kilograms.
fn rate(added: f64, full: f64, days: i64) -> f64 {
    annualizing(added, full, days).unwrap()
}

#[test]
fn a_printed_leak_rate_example_is_of_this_size() {
    // 100 lb, 5 lb lost in "a month's period": "60 percent of the total system charge" in a year
    // (achrnews.com/articles/print/epa-requirements-for-leak-repair). Month-based: a sanity example.
    near(rate(5.0, 100.0, 30), 60.0, 1.0);
    near(rate(5.0, 100.0, 30), 60.8333, 1e-4); // derived
    near(rate(5.0, 100.0, 31), 58.8710, 1e-4); // derived
}

#[test]
fn the_annualizing_method_follows_the_text_of_the_rule() {
    // Derived from 40 CFR 82.152, "leak rate" (1): vectors D1, D2, D4, D5, D6, D11, D15 to D17.
    near(rate(10.0, 100.0, 180), 20.277_777_8, 1e-6);
    near(rate(12.0, 100.0, 500), 12.0, 1e-9);
    near(rate(5.0, 50.0, 365), 10.0, 1e-9);
    near(rate(5.01, 50.0, 365), 10.02, 1e-9);
    near(rate(4.0, 40.0, 20), 182.5, 1e-9);
    near(rate(30.0, f64::midpoint(280.0, 320.0), 200), 18.25, 1e-9);
    near(rate(2.0, 50.0, 30), 48.666_666_7, 1e-6);
    near(rolling_average(2.0, 50.0).unwrap(), 4.0, 1e-9);
    near(rate(15.0, 120.0, 180), 25.347_222_2, 1e-6);
    assert_eq!(
        annualizing(1.0, 50.0, 0),
        None,
        "D14: no division by no days"
    );
    let days = |from: Date, to: Date| days_between(noon(from), noon(to));
    assert_eq!(days(date(2025, 9, 16), date(2026, 3, 15)), 180);
    assert_eq!(days(date(2027, 3, 15), date(2028, 3, 15)), 366);
    near(rate(10.0, 100.0, 366), 10.0, 1e-9);
}

#[test]
fn a_trigger_is_passed_only_by_more_than_it() {
    // 40 CFR 82.157(c)(2), 84.106(c)(2); D4 and D5, derived.
    let trigger = trigger_percent(Category::ComfortCooling);
    assert_eq!(trigger, 10.0);
    assert!(rate(5.0, 50.0, 365) <= trigger);
    assert!(rate(5.01, 50.0, 365) > trigger);
    assert_eq!(trigger_percent(Category::CommercialRefrigeration), 20.0);
    assert_eq!(trigger_percent(Category::IndustrialProcess), 30.0);
}

fn noon(day: Date) -> Moment {
    let civil = day.at(12, 0, 0, 0);
    let instant = TimeZone::UTC.to_timestamp(civil).unwrap();
    Moment { instant, civil }
}

fn here<T>(value: T) -> Noted<T> {
    Noted::new(value, Span::file_start(FileId(0)))
}

/// An account in which each addition filled the circuit, by day and mass.
fn account(additions: &[(Date, f64)]) -> Account {
    let of = |number: usize, (day, kg): (Date, f64)| Addition {
        at: here(noon(day)),
        kg,
        destroyed_kg: 0.0,
        destroyed_spans: Vec::new(),
        leaked_kg: kg,
        uncertainty_kg: None,
        spans: Vec::new(),
        visit: Some(number),
        charged_to: Some(ChargedTo::FullByWeight),
        beyond_season_kg: 0.0,
        shows_loss: true,
    };
    let additions: Vec<Addition> = additions
        .iter()
        .enumerate()
        .map(|(number, addition)| of(number, *addition))
        .collect();
    let entry = |addition: &Addition| Entry {
        at: addition.at,
        kind: MovementKind::Charged,
        why: None,
        kg: addition.kg,
        uncertainty_kg: None,
        basis: Basis::Unknown,
        spans: Vec::new(),
        cylinder: None,
        refrigerant: None,
        visit: addition.visit,
        charged_to: addition.charged_to,
        destroyed: false,
    };
    Account {
        entries: additions.iter().map(entry).collect(),
        additions,
        charged_anew: None,
        complete_since: None,
        installed_full: None,
    }
}

/// A movement of a job, by day, kind, reason and mass.
fn movement(visit: usize, day: Date, kind: MovementKind, why: MovementWhy, kg: f64) -> Entry {
    Entry {
        at: here(noon(day)),
        kind,
        why: Some(why),
        kg,
        uncertainty_kg: None,
        basis: Basis::Unknown,
        spans: Vec::new(),
        cylinder: None,
        refrigerant: None,
        visit: Some(visit),
        charged_to: (kind == MovementKind::Charged).then_some(ChargedTo::FullByWeight),
        destroyed: false,
    }
}

fn statutory(
    account: &Account,
    full: &str,
    method: LeakRateMethod,
    verified: Option<Date>,
    rules: Option<RuleSetWord>,
) -> f64 {
    let full: Noted<Measured<Mass>> = here(parse(full).unwrap());
    let window = Window {
        account,
        full: &full,
        addition: account.additions.last().unwrap(),
        verified: verified.map(|day| here(noon(day))),
        first: rules.and_then(|word| RuleSet::of(word)?.first_calculation),
    };
    let figure = window.rate(method, "rate", "Rate").unwrap();
    figure.value.number()
}

#[test]
fn several_additions_for_one_leak_are_one() {
    // D3, derived from 82.152: "multiple additions related to same leak"; d since the addition
    // before that leak. The first of the two did not fill the circuit.
    let mut account = account(&[
        (date(2025, 1, 10), 3.0),
        (date(2025, 5, 1), 8.0),
        (date(2025, 6, 5), 7.0),
    ]);
    account.additions[1].charged_to = Some(ChargedTo::Partial);
    account.entries[1].charged_to = Some(ChargedTo::Partial);
    let method = LeakRateMethod::Annualizing;
    near(
        statutory(&account, "200 kg", method, None, None),
        18.75,
        1e-9,
    );
}

#[test]
fn the_first_calculation_of_part_84_counts_365_days_and_only_its_own_year() {
    // D6, derived from 84.106(b)(1): 20 real days count as 365.
    let us84 = Some(RuleSetWord::Us84);
    let two = account(&[(date(2025, 12, 21), 6.0), (date(2026, 1, 10), 4.0)]);
    let method = LeakRateMethod::Annualizing;
    near(statutory(&two, "40 kg", method, None, us84), 10.0, 1e-9);
    near(statutory(&two, "40 kg", method, None, None), 182.5, 1e-9);
    // D9, derived from 84.106(b)(2): only the 4 lb of 2026.
    let two = account(&[(date(2025, 11, 10), 6.0), (date(2026, 2, 10), 4.0)]);
    let method = LeakRateMethod::RollingAverage;
    near(statutory(&two, "40 kg", method, None, us84), 10.0, 1e-9);
    near(statutory(&two, "40 kg", method, None, None), 25.0, 1e-9);
}

#[test]
fn the_rolling_window_is_a_year_and_is_cut_by_a_follow_up_verification() {
    // D7 and D8, derived from 82.152 (2).
    let method = LeakRateMethod::RollingAverage;
    let three = account(&[
        (date(2025, 3, 1), 6.0),
        (date(2025, 7, 1), 9.0),
        (date(2025, 12, 1), 10.0),
    ]);
    near(statutory(&three, "200 kg", method, None, None), 12.5, 1e-9);
    let verified = Some(date(2025, 8, 1));
    near(
        statutory(&three, "200 kg", method, verified, None),
        5.0,
        1e-9,
    );
    // Derived: an addition more than 365 days back is outside the window.
    let old = account(&[(date(2024, 1, 1), 50.0), (date(2025, 12, 1), 10.0)]);
    near(statutory(&old, "200 kg", method, None, None), 5.0, 1e-9);
}

#[test]
fn what_was_taken_out_for_the_season_and_put_back_asks_for_no_calculation() {
    // D12, derived from 82.152, "seasonal variance": 25 lb out in May, 25 lb in in November.
    use MovementKind::{Charged, Recovered};
    let season = MovementWhy::Seasonal;
    let out = movement(0, date(2025, 5, 6), Recovered, season, 25.0);
    let back = |day, kg| movement(1, day, Charged, season, kg);
    let same = vec![out.clone(), back(date(2025, 11, 11), 25.0)];
    let account = Account::of(same, None);
    assert_eq!(account.additions, []);
    assert_eq!(account.sum(Recovered, |_| true), 25.0, "both are recorded");
    assert_eq!(account.sum(Charged, |_| true), 25.0);
    // Beyond what was taken out, and beyond the 12 months, the definition as written does not reach.
    let more = Account::of(vec![out.clone(), back(date(2025, 11, 11), 27.0)], None);
    near(more.additions[0].beyond_season_kg, 2.0, 1e-9);
    near(more.additions[0].kg, 2.0, 1e-9);
    let late = Account::of(vec![out, back(date(2026, 5, 7), 25.0)], None);
    near(late.additions[0].kg, 25.0, 1e-9);
}

#[test]
fn a_purge_that_was_destroyed_counts_in_no_leak_rate() {
    // D13, derived from 82.157(k): 30 lb made up, 12 lb of it purged and destroyed; 18 lb of 150.
    let mut purged = movement(
        0,
        date(2025, 3, 3),
        MovementKind::Purged,
        MovementWhy::Service,
        12.0,
    );
    purged.destroyed = true;
    let made_up = movement(
        1,
        date(2025, 9, 9),
        MovementKind::Charged,
        MovementWhy::TopUp,
        30.0,
    );
    let counted = Account::of(vec![purged.clone(), made_up.clone()], None);
    let method = LeakRateMethod::RollingAverage;
    near(
        statutory(&counted, "150 kg", method, None, None),
        12.0,
        1e-9,
    );
    near(counted.additions[0].leaked_kg, 18.0, 1e-9);
    // Not destroyed, it counts by the rule, though it did not leak.
    purged.destroyed = false;
    let all = Account::of(vec![purged, made_up], None);
    near(statutory(&all, "150 kg", method, None, None), 20.0, 1e-9);
    near(all.additions[0].leaked_kg, 18.0, 1e-9);
}

#[test]
fn two_additions_of_one_day_are_merged() {
    // D14, derived: no days between them, so that they are one addition of the days before both.
    let account = account(&[
        (date(2025, 1, 10), 3.0),
        (date(2025, 6, 5), 8.0),
        (date(2025, 6, 5), 7.0),
    ]);
    let method = LeakRateMethod::Annualizing;
    near(
        statutory(&account, "200 kg", method, None, None),
        18.75,
        1e-9,
    );
}

#[test]
fn a_calendar_year_is_added_up_for_the_chronic_leaker() {
    // D10, derived from 82.157(j): 20 + 20 + 22 + 0.5 lb of 50 lb; 125 % or more is to be reported.
    let full: Noted<Measured<Mass>> = here(parse("50 kg").unwrap());
    let in_year = |last: f64| {
        let account = account(&[
            (date(2024, 12, 31), 9.0),
            (date(2025, 1, 1), 20.0),
            (date(2025, 5, 1), 20.0),
            (date(2025, 9, 1), 22.0),
            (date(2025, 12, 31), last),
            (date(2026, 1, 1), 9.0),
        ]);
        let figure = lost_in_year(&account, &full, 2025, "year", "Year").unwrap();
        figure.value.number()
    };
    near(in_year(0.5), 125.0, 1e-9);
    near(in_year(0.0), 124.0, 1e-9);
}

#[test]
fn a_first_loss_counts_from_an_installation_that_was_weighed_in() {
    // Derived from 82.152: no addition before; 146 days since the full charge was put in.
    let mut first = account(&[(date(2025, 6, 5), 15.0)]);
    let method = LeakRateMethod::Annualizing;
    let full: Noted<Measured<Mass>> = here(parse("200 kg").unwrap());
    let rate = |account: &Account| {
        let window = Window {
            account,
            full: &full,
            addition: &account.additions[0],
            verified: None,
            first: None,
        };
        window.rate(method, "rate", "Rate")
    };
    assert_eq!(rate(&first), None, "nothing tells since when");
    first.installed_full = Some(here(noon(date(2025, 1, 10))));
    let figure = rate(&first).unwrap();
    near(figure.value.number(), 18.75, 1e-9);
    assert!(
        Words::english()
            .text(&figure.notes[0])
            .contains("installation"),
        "{:?}",
        figure.notes
    );
}

fn covered(word: RuleSetWord, gas: &str, full: &str, plant: Plant) -> bool {
    let rules = RuleSet::of(word).unwrap();
    let full: Measured<Mass> = parse(full).unwrap();
    coverage(rules, find(gas).unwrap(), full.value.si(), plant).covered
}

#[test]
fn coverage_begins_exactly_where_the_rule_says() {
    let plant = Plant::default();
    // Derived: 40 CFR 82.157(a), 50 lb of an ozone-depleting refrigerant.
    let us82 = |gas, full| covered(RuleSetWord::Us82, gas, full, plant);
    assert!(us82("R-22", "50.0 lb") && !us82("R-22", "49.99 lb"));
    assert!(!us82("R-410A", "500 lb"));
    // Derived: 40 CFR 84.106(a), 15 lb; a substitute only with a GWP above 53 (84.64(b)).
    let us84 = |gas, full| covered(RuleSetWord::Us84, gas, full, plant);
    assert!(us84("R-410A", "15.0 lb") && !us84("R-410A", "14.99 lb"));
    assert!(us84("R-454C", "15 lb"), "145.91 is above 53");
    assert!(!us84("R-290", "100 lb") && !us84("R-744", "1000 lb") && !us84("R-717", "1000 lb"));
    let home = Plant {
        residential: true,
        ..plant
    };
    assert!(!covered(RuleSetWord::Us84, "R-410A", "15 lb", home));
}

#[test]
fn european_check_intervals_turn_at_their_tonnes() {
    // Derived from Regulation (EU) 2024/573, Article 5(1) and 5(6), with its Annexes I and II.
    let check = |gas: &str, kg: f64, hermetic: bool| -> Option<i32> {
        let plant = Plant {
            hermetic,
            ..Plant::default()
        };
        let rules = RuleSet::of(RuleSetWord::Eu2024).unwrap();
        let result = coverage(rules, find(gas).unwrap(), kg, plant);
        let size = Size {
            tonnes: result.co2e_t.unwrap_or(0.0),
            annex_two_kg: result.annex_two_kg,
            kg,
        };
        result
            .covered
            .then(|| rules.check_months(size, false).unwrap())
    };
    assert_eq!(check("R-410A", 23.95, false), Some(12));
    assert_eq!(check("R-410A", 23.96, false), Some(6));
    assert_eq!(check("R-404A", 127.5, false), Some(3));
    let tonnes = |tonnes| Size {
        tonnes,
        ..Size::default()
    };
    let rules = RuleSet::of(RuleSetWord::Eu2024).unwrap();
    assert_eq!(rules.check_months(tonnes(500.004), true), Some(6));
    assert!(rules.detection_mandatory(tonnes(500.004)));
    assert!(!rules.detection_mandatory(tonnes(499.9)));
    assert_eq!(check("R-32", 7.40, false), None);
    assert_eq!(check("R-32", 7.41, false), Some(12));
    assert_eq!(check("R-1234yf", 0.999, false), None);
    assert_eq!(check("R-1234yf", 1.0, false), Some(12));
    assert_eq!(check("R-1234yf", 10.0, false), Some(6));
    assert_eq!(check("R-134a", 6.99, true), None);
    assert_eq!(check("R-134a", 7.0, true), Some(12));
}

#[test]
fn a_chronic_loss_is_125_percent_or_more() {
    // D10, derived from 40 CFR 82.157(j) and 84.106(j): full charge 50 lb.
    let lost: f64 = [20.0, 20.0, 22.0, 0.5].iter().sum();
    assert!(is_chronic(lost, 50.0));
    assert!(!is_chronic(62.0, 50.0), "124 %");
}

#[test]
fn great_britain_and_europe_take_their_own_gwp() {
    // Derived: 3.606 kg of R-448A are 5.002 t with 1387.09 of 517/2014 and 4.998 t with 1386.00 of
    // 2024/573. Below, the 1 kg of Annex II gases leaves it undecided, not covered.
    let plant = Plant::default();
    assert!(covered(RuleSetWord::Gb, "R-448A", "3.606 kg", plant));
    assert!(!covered(RuleSetWord::Eu2024, "R-448A", "3.606 kg", plant));
    // No kg test in Great Britain (from memory).
    assert!(!covered(RuleSetWord::Gb, "R-1234yf", "10 kg", plant));
    assert!(covered(RuleSetWord::Eu2024, "R-1234yf", "10 kg", plant));
    // Printed kg are rounded and are no thresholds: R-410A "2.4 kg" of gov.uk is 5.01 t; R-404A
    // "1.27 kg" of NetRegs is 4.98 t.
    assert!(covered(RuleSetWord::Gb, "R-410A", "2.4 kg", plant));
    assert!(!covered(RuleSetWord::Gb, "R-404A", "1.27 kg", plant));
}

#[test]
fn the_old_ozone_rule_of_great_britain_goes_by_kg() {
    // Regulation (EC) 1005/2009, Article 23(2), read in a stored Bulgarian text.
    let plant = Plant::default();
    let hermetic = Plant {
        hermetic: true,
        ..plant
    };
    let word = RuleSetWord::GbOzone;
    assert!(covered(word, "R-22", "3 kg", plant) && !covered(word, "R-22", "2.99 kg", plant));
    assert!(covered(word, "R-22", "6 kg", hermetic));
    assert!(!covered(word, "R-22", "5.99 kg", hermetic));
    assert!(!covered(word, "R-410A", "30 kg", plant));
    let rules = RuleSet::of(word).unwrap();
    let months = |kg| {
        let size = Size {
            kg,
            ..Size::default()
        };
        rules.check_months(size, false)
    };
    assert_eq!(
        [2.9, 3.0, 30.0, 300.0].map(months),
        [None, Some(12), Some(6), Some(3)]
    );
}

#[test]
fn a_home_is_left_out_of_part_84_only_for_air_conditioning_and_heat_pumps() {
    // 40 CFR 84.106(a).
    let home = |category| Plant {
        residential: true,
        category: Some(category),
        ..Plant::default()
    };
    let us84 = |plant| covered(RuleSetWord::Us84, "R-410A", "15 lb", plant);
    assert!(!us84(home(Category::ComfortCooling)) && !us84(home(Category::HeatPump)));
    assert!(us84(home(Category::CommercialRefrigeration)));
    // The light commercial share of the same subsector, where the notes say that it is.
    let shop = |category, light_commercial| Plant {
        light_commercial,
        category: Some(category),
        ..Plant::default()
    };
    assert!(!us84(shop(Category::ComfortCooling, Some(true))));
    assert!(us84(shop(Category::ComfortCooling, Some(false))));
    assert!(us84(shop(Category::CommercialRefrigeration, Some(true))));
    // Not said: covered, and the reason says what is not known.
    let rules = RuleSet::of(RuleSetWord::Us84).unwrap();
    let full: Measured<Mass> = parse("15 lb").unwrap();
    let why = |light_commercial| {
        let plant = shop(Category::ComfortCooling, light_commercial);
        let covered = coverage(rules, find("R-410A").unwrap(), full.value.si(), plant);
        Words::english().text(&covered.why)
    };
    assert!(us84(shop(Category::ComfortCooling, None)));
    assert!(why(None).contains("the notes do not say whether this is"));
    assert!(!why(Some(false)).contains("the notes do not say"));
}

#[test]
fn every_rule_set_is_found_by_its_word() {
    for rules in &RULE_SETS {
        assert_eq!(
            RuleSet::of(rules.word).map(|found| found.title),
            Some(rules.title)
        );
    }
}

#[test]
fn printed_co2_equivalents_come_out() {
    // "39.2 tonnes CO2 equivalent" of 10 kg HFC-404A, GWP 3 922
    // (gov.uk/guidance/calculate-the-carbon-dioxide-equivalent-quantity-of-an-f-gas).
    near(co2e_kg(10.0, 3922.0) / 1000.0, 39.2, 0.05);
    // netregs.org.uk, "Calculating the equipment charge as CO2 equivalent": 1 kg each.
    near(co2e_kg(1.0, 1430.0) / 1000.0, 1.43, 0.005);
    near(co2e_kg(1.0, 7390.0) / 1000.0, 7.39, 0.005);
}

const CELSIUS: f64 = 273.15;

#[test]
fn nitrogen_compressibility_is_that_of_coolprop() {
    // CoolProp 8.0.0, PropsSI('Z','T',T,'P',P,'Nitrogen'): 0 to 40 °C by tens.
    let table = [
        (10.0, [0.99574, 0.99685, 0.99782, 0.99865, 0.99937]),
        (25.8, [0.99014, 0.99294, 0.99534, 0.99742, 0.99922]),
        (40.0, [0.98638, 0.99057, 0.99418, 0.99728, 0.99997]),
        (45.0, [0.98534, 0.99001, 0.99401, 0.99746, 1.00044]),
    ];
    for (bar, row) in table {
        for (step, expected) in row.into_iter().enumerate() {
            let kelvin = CELSIUS + 10.0 * step as f64;
            near(nitrogen_z(bar * 1e5, kelvin).unwrap(), expected, 1e-5);
        }
    }
}

#[test]
fn a_pressure_test_follows_the_real_gas() {
    let expected = |bar: f64, from: f64, to: f64| {
        expected_pressure_pa(bar * 1e5, from + CELSIUS, to + CELSIUS).unwrap() / 1e5
    };
    // CoolProp 8.0.0 at fixed density, bar abs.
    near(expected(10.0, 20.0, 10.0), 9.651, 6e-4);
    near(expected(25.8, 7.0, 18.0), 26.883, 6e-4);
    near(expected(40.0, 10.0, 30.0), 43.120, 6e-4);
    near(expected(40.0, 30.0, 10.0), 37.124, 6e-4);
    near(expected(42.5, 20.0, 36.0), 45.055, 6e-4);
    // R-404A side, 24.8 bar g, 7 to 18 °C, atmosphere of 1 bar, K = °C + 273: inputs printed in
    // scribd.com/document/449967263 (a trade body's note CS-17, 2016); the result, 25.88, is derived.
    let pa = expected_pressure_pa(25.8e5, 280.0, 291.0).unwrap();
    near(pa / 1e5 - 1.0, 25.88, 5e-3);
}

#[test]
fn printed_examples_of_the_ideal_gas_are_near_the_real_one() {
    let psi = 6894.757;
    let fahrenheit = |f: f64| (f - 32.0) / 1.8 + CELSIUS;
    let end = |psig: f64, from: f64, to: f64| {
        let start = (psig + 14.7) * psi;
        expected_pressure_pa(start, fahrenheit(from), fahrenheit(to)).unwrap() / psi - 14.7
    };
    // 150 psig, 95 to 75 °F: "about 144 psig" (knowt.com/note/d11cc77a); by the ideal gas.
    near(end(150.0, 95.0, 75.0), 144.0, 0.2);
    // 150 psig, 80 to 70 °F overnight: inputs achrnews.com/articles/153295; 146.95 is derived.
    near(end(150.0, 80.0, 70.0), 146.95, 0.1);
    // "0.3 psi per °F": UFGS 15182, 3.3.2 (ufgscriteriadocreport.tpub.com/15182); true at 159 psia.
    near(end(144.3, 70.0, 71.0) - 144.3, 0.3, 0.02);
}

#[test]
fn the_smallest_leak_of_a_pressure_test_is_that_of_its_budget() {
    // Derived: 41 bar abs at 20 °C, step and thermometer only; volume in L, hours, step in bar, u(T) in K,
    // Pa m³/s.
    let table = [
        (2.0, 24.0, 0.1, 0.0, 1.9e-4),
        (8.0, 24.0, 0.1, 0.0, 7.4e-4),
        (30.0, 24.0, 0.1, 0.0, 2.8e-3),
        (2.0, 24.0, 0.1, 0.5, 4.9e-4),
        (8.0, 24.0, 0.1, 0.5, 1.9e-3),
        (30.0, 24.0, 0.1, 0.5, 7.3e-3),
        (2.0, 24.0, 0.01, 0.1, 9.2e-5),
        (8.0, 24.0, 0.01, 0.1, 3.7e-4),
        (30.0, 24.0, 0.01, 0.1, 1.4e-3),
        (2.0, 1.0, 0.1, 0.5, 1.2e-2),
        (8.0, 1.0, 0.1, 0.5, 4.7e-2),
        (30.0, 1.0, 0.1, 0.5, 1.7e-1),
    ];
    for (litres, hours, step_bar, kelvin, expected) in table {
        let step = step_bar * 1e5 / 12f64.sqrt();
        let warmth = 41e5 / 293.15 * kelvin;
        let found = smallest_throughput(
            2f64.sqrt() * step.hypot(warmth),
            litres * 1e-3,
            hours * 3600.0,
        );
        near(found / expected, 1.0, 0.04);
    }
}

#[test]
fn leak_sizes_convert_as_the_gas_law_says() {
    // Computed with M, R = 8.314462618 J/(mol K), 20 °C, a year of 365 days: Pa m³/s of 1 g/yr,
    // of 1 oz/yr, and g/yr of 1e-5 Pa m³/s.
    let table = [
        ("R-134a", 102.032, 7.575e-7, 2.148e-5, 13.20),
        ("R-410A", 72.585, 1.065e-6, 3.019e-5, 9.39),
        ("R-404A", 97.604, 7.919e-7, 2.245e-5, 12.63),
        ("R-407C", 86.204, 8.966e-7, 2.542e-5, 11.15),
        ("R-32", 52.024, 1.486e-6, 4.212e-5, 6.73),
        ("R-290", 44.096, 1.753e-6, 4.969e-5, 5.71),
        ("R-744", 44.010, 1.756e-6, 4.979e-5, 5.69),
        ("R-717", 17.031, 4.538e-6, 1.287e-4, 2.20),
        ("R-22", 86.468, 8.938e-7, 2.534e-5, 11.19),
        ("R-1234yf", 114.042, 6.777e-7, 1.921e-5, 14.76),
    ];
    let gram_per_year = 1e-3 / YEAR_S;
    for (gas, molar, gram, ounce, grams) in table {
        let kelvin = 20.0 + CELSIUS;
        near(throughput(gram_per_year, molar, kelvin) / gram, 1.0, 1e-3);
        near(
            throughput(28.3495 * gram_per_year, molar, kelvin) / ounce,
            1.0,
            1e-3,
        );
        near(mass_rate(1e-5, molar, kelvin) / gram_per_year, grams, 6e-3);
        let held = find(gas).unwrap().molar_mass_kg_per_kmol();
        near(held, molar, 0.02);
    }
    // 1 std cm³/s (0 °C, 101 325 Pa) is 4.46e-5 mol/s; 1 Pa m³/s is 4.40e-4 mol/s
    // (ped-online.com, "what is the definition of the leakage rate").
    let moles = |q: f64| mass_rate(q, 1000.0, CELSIUS);
    near(moles(0.101_325), 4.46e-5, 0.005e-5);
    near(moles(1.0), 4.40e-4, 0.005e-4);
}

#[test]
fn printed_units_of_throughput_and_pressure_agree() {
    let q = |text: &str| parse::<Throughput>(text).unwrap().value.si();
    // 1 std cm³/s: "1.01 mbar l/s; 0.101 Pa m³/s"; 1 Pa m³/s: "9.87 std cm³/s" (ped-online.com).
    near(q("1 std cc/s"), q("1.01 mbar l/s"), 0.005 * 0.1);
    near(q("1 std cc/s"), 0.101, 5e-4);
    near(q("9.87 std cc/s"), 1.0, 5e-4);
    // 1 sccm: 0.0168875 mbar l/s (semiconductor-tools.pages.dev, by NIST's factors).
    near(q("1 std cc/s") / 60.0, q("0.0168875 mbar l/s"), 1e-8);
    // 4 L losing 1 bar in 30 days is 1.543e-4 Pa m³/s (derived).
    near(4e-3 * 1e5 / (30.0 * 86_400.0), 1.543e-4, 1e-7);
    // 1 psi = 6894.757 Pa, 1 Torr = 133.322 Pa (NIST SP 811, Appendix B).
    let dp = |text: &str| parse::<PressureDifference>(text).unwrap().value.si();
    near(dp("1 psi"), 6894.757, 1e-3);
    near(dp("1 Torr"), 133.322, 1e-3);
}
