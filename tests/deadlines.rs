//! Deadlines of the rules on small books made here: each date derived by hand from the text of the
//! rule, never to be cited as published.

use std::fs;
use std::path::Path;
use std::process::Command;

const BOOK: &str = r#"
[contractor]
name = "Test Cooling (invented)"
[[person]]
id = "p"
name = "Nobody Atall"
certificate = "X-1"
[[instrument]]
id = "ld"
kind = "electronic leak detector"
sensor = "infrared"
sensitivity = "3 g/yr"
"#;

/// A book of one system with its visits: folder, and the files in it.
struct Small {
    folder: tempfile::TempDir,
}

impl Small {
    fn new(rules: &str, system: &str) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let small = Self { folder };
        small.write("rimebook.toml", BOOK);
        small.write(
            "s/site.toml",
            &format!("operator = \"Test\"\ntimezone = \"Europe/Lisbon\"\nrules = [\"{rules}\"]\n"),
        );
        small.write("s/u/system.toml", &format!("name = \"Unit\"\n{system}"));
        small
    }

    fn write(&self, path: &str, text: &str) {
        let path = self.folder.path().join(path);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }

    /// A visit from 08:00 to 18:00, running again at 17:00.
    fn visit(&self, day: &str, purpose: &str) -> &Self {
        self.write(
            &format!("s/u/{day}/visit.toml"),
            &format!(
                "purpose = \"{purpose}\"\nattendance = [ {{ by = \"p\", from = {day}T08:00, to = {day}T18:00 }} ]\nleft = \"running\"\nback-in-normal-operation = {day}T17:00\n"
            ),
        );
        self
    }

    /// Charged to full.
    fn charge(&self, day: &str, gas: &str, mass: &str) -> &Self {
        self.write(
            &format!("s/u/{day}/refrigerant.toml"),
            &format!(
                "[[movement]]\nkind = \"charged\"\nwhy = \"top-up\"\nat = {day}T16:00\nrefrigerant = \"{gas}\"\nmass = \"{mass}\"\nhow = \"weighed\"\ncharged-to = \"full by weight\"\n"
            ),
        );
        self
    }

    /// More lines of a visit, such as a date set by hand.
    fn add(&self, day: &str, more: &str) -> &Self {
        let path = self.folder.path().join(format!("s/u/{day}/visit.toml"));
        let old = fs::read_to_string(&path).unwrap();
        fs::write(path, format!("{old}\n{more}\n")).unwrap();
        self
    }

    fn search(&self, day: &str, all: bool) -> &Self {
        self.write(
            &format!("s/u/{day}/readings.toml"),
            &format!(
                "[[search]]\nid = \"s1\"\nby = \"p\"\nmethod = \"electronic\"\ninstrument = \"ld\"\nstarted = {day}T09:00\nended = {day}T10:00\nplant = \"running\"\nareas = [\"j\"]\nall-visible-and-accessible-inspected = {all}\n"
            ),
        );
        self
    }

    /// A leak at the joint `j`, with more of its fields.
    fn leak(&self, day: &str, more: &str) -> &Self {
        self.write(
            &format!("s/u/{day}/findings.md"),
            &format!(
                "## Joint {{#j}}\n\n- kind: leak\n- evidence:\n  - 09:10 bubbles, foam\n{more}\n"
            ),
        );
        self
    }

    fn due(&self, on: &str, within: &str) -> Vec<(String, String, String)> {
        due(self.folder.path(), on, within)
    }
}

/// Last day, what and note of each item.
fn due(book: &Path, on: &str, within: &str) -> Vec<(String, String, String)> {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args([
            "due", "s", "--on", on, "--within", within, "--format", "json",
        ])
        .current_dir(book)
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(!said.contains("error"), "{said}");
    let told: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    let items = told["items"].as_array().unwrap();
    let text = |value: &serde_json::Value| value.as_str().unwrap_or_default().to_owned();
    items
        .iter()
        .map(|item| (text(&item["by"]), text(&item["what"]), text(&item["note"])))
        .collect()
}

fn dates(items: &[(String, String, String)], what: &str) -> Vec<String> {
    items
        .iter()
        .filter(|item| item.1.starts_with(what))
        .map(|item| item.0.clone())
        .collect()
}

const POINT: &str = "[[point]]\nid = \"j\"\nwhere = \"The joint\"\n";

fn system(category: &str, gas: &str, full: &str, more: &str) -> String {
    format!(
        "category = \"{category}\"\n{more}\n[[in-force]]\nfrom = 2010-01-01\nrefrigerant = \"{gas}\"\nfull-charge = \"{full}\"\n{POINT}"
    )
}

const REPAIR: &str = "- repair: 11:00 remade\n";
const PROOF: &str = "- proof: 12:00 bubbles, none in 25 min\n";
const PROVED: &str = "- state: repaired, proved\n";

#[test]
fn a_rate_over_the_trigger_asks_for_the_repair_in_30_or_120_days() {
    // D16: 15 of 120 lb, 180 days: 25.35 %, over 20 %. Counted from the addition of 15 March 2026.
    let book = Small::new(
        "us-40-cfr-82-f",
        &system("commercial refrigeration", "R-22", "120 lb", ""),
    );
    for (day, mass) in [("2025-09-16", "1 lb"), ("2026-03-15", "15 lb")] {
        book.visit(day, "emergency call").charge(day, "R-22", mass);
    }
    let items = book.due("2026-03-16", "60 days");
    assert_eq!(dates(&items, "Repair the leaks"), ["2026-04-14"]);
    assert_eq!(dates(&items, "Initial verification test"), ["2026-04-14"]);
    assert!(
        dates(&items, "Plan").is_empty(),
        "not before the 30 days have passed"
    );
    let later = book.due("2026-04-15", "60 days");
    assert_eq!(dates(&later, "Plan to retrofit"), ["2026-05-14"]);
    // Once per calendar year, from that of the exceedance on (82.157(g)(1)).
    let year = book.due("2026-04-15", "365 days");
    assert_eq!(dates(&year, "Leak inspection"), ["2026-12-31"]);
}

#[test]
fn an_industrial_process_may_take_120_days_with_a_shutdown() {
    // D16's dates with 20 of 120 lb: 33.8 %, over 30 %.
    let book = Small::new(
        "us-40-cfr-82-f",
        &system("industrial process refrigeration", "R-22", "120 lb", ""),
    );
    for (day, mass) in [("2025-09-16", "1 lb"), ("2026-03-15", "20 lb")] {
        book.visit(day, "emergency call").charge(day, "R-22", mass);
    }
    let items = book.due("2026-03-16", "60 days");
    let repair = items.iter().find(|item| item.1 == "Repair the leaks");
    let note = &repair.unwrap().2;
    assert!(note.starts_with("by 2026-07-13 with an industrial process shutdown"));
}

#[test]
fn exactly_the_trigger_asks_for_nothing() {
    // D4 and D5: comfort cooling, 50 lb, 365 days: 5 lb is 10 %, not over; 5.01 lb is.
    for (mass, over) in [("5 lb", false), ("5.01 lb", true)] {
        let book = Small::new(
            "us-40-cfr-82-f",
            &system("comfort cooling", "R-22", "50 lb", ""),
        );
        book.visit("2025-03-15", "service")
            .charge("2025-03-15", "R-22", "1 lb");
        book.visit("2026-03-15", "service")
            .charge("2026-03-15", "R-22", mass);
        let items = book.due("2026-03-16", "60 days");
        let repair = dates(&items, "Repair the leaks");
        assert_eq!(!repair.is_empty(), over, "{mass}: {items:?}");
    }
}

#[test]
fn the_follow_up_is_counted_from_the_initial_test_or_from_normal_operation() {
    // 82.157(e): a proof before the charge of the same day is the initial test; nothing was
    // evacuated, so ten days count from it.
    let book = Small::new(
        "us-40-cfr-82-f",
        &system("commercial refrigeration", "R-22", "120 lb", ""),
    );
    book.visit("2025-09-16", "service")
        .charge("2025-09-16", "R-22", "1 lb");
    let day = "2026-03-15";
    book.visit(day, "leak search and repair")
        .charge(day, "R-22", "15 lb");
    book.leak(day, &format!("{REPAIR}{PROOF}{PROVED}"));
    let items = book.due("2026-03-16", "30 days");
    assert!(dates(&items, "Repair").is_empty() && dates(&items, "Initial").is_empty());
    assert_eq!(dates(&items, "Follow-up verification test"), ["2026-03-25"]);
    // A proof only after the charge is no initial test, and there is nothing to follow up.
    book.leak(
        day,
        &format!("{REPAIR}- proof: 16:30 electronic ld, no alarm\n{PROVED}"),
    );
    let items = book.due("2026-03-16", "30 days");
    assert_eq!(dates(&items, "Initial verification test"), ["2026-04-14"]);
    assert!(dates(&items, "Follow-up").is_empty());
}

#[test]
fn a_large_plant_is_inspected_every_three_months_after_an_exceedance() {
    // 82.157(g)(1): refrigeration of 500 lb or more; below, once per calendar year.
    for (full, first) in [("500 lb", "2026-06-15"), ("499 lb", "2026-12-31")] {
        let book = Small::new(
            "us-40-cfr-82-f",
            &system("commercial refrigeration", "R-22", full, ""),
        );
        book.visit("2025-09-16", "service")
            .charge("2025-09-16", "R-22", "1 lb");
        book.visit("2026-03-15", "service")
            .charge("2026-03-15", "R-22", "100 lb");
        let items = book.due("2026-03-16", "365 days");
        assert_eq!(dates(&items, "Leak inspection"), [first], "{full}");
    }
}

#[test]
fn a_chronic_loss_is_reported_by_the_first_of_march() {
    // D10: full charge 50 lb; 62.5 lb in the calendar year are 125 %, 62 lb are 124 %.
    for (last, reported) in [("22.5 lb", true), ("22 lb", false)] {
        let book = Small::new(
            "us-40-cfr-82-f",
            &system("comfort cooling", "R-22", "50 lb", ""),
        );
        let additions = [
            ("2025-12-01", "40 lb"),
            ("2026-02-01", "20 lb"),
            ("2026-05-01", "20 lb"),
            ("2026-12-31", last),
        ];
        for (day, mass) in additions {
            book.visit(day, "service").charge(day, "R-22", mass);
        }
        let items = book.due("2027-01-02", "90 days");
        let report = dates(&items, "Report the loss of 125 %");
        assert_eq!(report, if reported { vec!["2027-03-01"] } else { vec![] });
    }
}

#[test]
fn a_european_repair_is_checked_within_a_month_and_not_before_a_day_of_running() {
    // Article 4(5), on a book whose month ends in a leap day.
    let book = Small::new("eu-2024-573", &system("other", "R-410A", "10 kg", ""));
    let day = "2028-01-31";
    book.visit(day, "leak search and repair").search(day, true);
    book.leak(day, &format!("{REPAIR}{PROOF}{PROVED}"));
    let recheck = |book: &Small, on: &str| dates(&book.due(on, "60 days"), "Check the repair");
    assert_eq!(recheck(&book, "2028-02-01"), ["2028-02-29"]);
    // Looked at before 24 h of operation: it still waits. After them: done.
    book.visit("2028-02-01", "verification")
        .search("2028-02-01", false);
    book.write(
        "s/u/2028-02-01/visit.toml",
        "purpose = \"verification\"\nattendance = [ { by = \"p\", from = 2028-02-01T08:00, to = 2028-02-01T16:59 } ]\n",
    );
    assert_eq!(recheck(&book, "2028-02-02"), ["2028-02-29"]);
    book.visit("2028-02-03", "verification")
        .search("2028-02-03", false);
    assert!(recheck(&book, "2028-02-04").is_empty());
}

#[test]
fn leak_checks_follow_size_and_leakage_detection() {
    // Article 5(6) and Article 6: R-404A, GWP 3921.6. From the check of 15 March 2026.
    let check = |full: &str, more: &str| {
        let book = Small::new("eu-2024-573", &system("other", "R-404A", full, more));
        book.visit("2026-03-15", "periodic leak check")
            .search("2026-03-15", true);
        let items = book.due("2026-03-16", "400 days");
        let first = |what| dates(&items, what).first().cloned().unwrap_or_default();
        (
            first("Leak check"),
            first("Fit a leakage"),
            first("Check the leakage"),
        )
    };
    let none = String::new;
    let of = |leak: &str, fit: &str, checked: &str| {
        (leak.to_owned(), fit.to_owned(), checked.to_owned())
    };
    assert_eq!(check("1.2 kg", ""), (none(), none(), none()));
    assert_eq!(check("2 kg", "").0, "2027-03-15");
    assert_eq!(check("100 kg", "").0, "2026-09-15");
    // 127.5 kg are 500.004 t: three months, and a leakage detection system is mandatory since the
    // rule came into force on 11 March 2024.
    assert_eq!(check("127.5 kg", ""), of("2026-06-15", "2024-03-11", ""));
    let with = "leak-detection-system = true\nleak-detection-checked = [2026-01-10]";
    assert_eq!(check("127.5 kg", with), of("2026-09-15", "", "2027-01-10"));
}

#[test]
fn a_check_that_says_it_was_not_whole_is_none() {
    let book = Small::new("eu-2024-573", &system("other", "R-404A", "2 kg", ""));
    book.visit("2026-03-15", "periodic leak check")
        .search("2026-03-15", false);
    let items = book.due("2026-03-16", "400 days");
    // Counted from the day the rule came into force, since no check is noted.
    assert_eq!(dates(&items, "Leak check"), ["2025-03-11"]);
}

#[test]
fn an_open_leak_is_due_at_once_in_europe_and_in_14_days_by_the_ozone_rule() {
    for (rules, gas, by) in [
        ("eu-2024-573", "R-410A", "2026-03-15"),
        ("gb-ozone", "R-22", "2026-03-29"),
    ] {
        let book = Small::new(rules, &system("other", gas, "10 kg", ""));
        book.visit("2026-03-15", "leak search")
            .search("2026-03-15", true);
        book.leak("2026-03-15", "- state: open\n");
        let items = book.due("2026-03-16", "30 days");
        assert_eq!(dates(&items, "Repair the leak"), [by], "{rules}");
    }
}

#[test]
fn clocks_stand_still_while_a_plant_is_mothballed() {
    let more = "[[in-force]]\nfrom = 2026-04-01\nrefrigerant = \"R-410A\"\nfull-charge = \"10 kg\"\nstatus = \"mothballed\"\n";
    let text = system("other", "R-410A", "10 kg", "") + more;
    let book = Small::new("eu-2024-573", &text);
    book.visit("2026-03-15", "leak search")
        .search("2026-03-15", true);
    book.leak("2026-03-15", "- state: open\n");
    assert!(!book.due("2026-03-31", "400 days").is_empty());
    assert!(book.due("2026-04-02", "400 days").is_empty());
}

/// Over the trigger on 15 March 2026, with a date set by hand that day, or none.
fn over(category: &str, set: &str) -> Small {
    let book = Small::new("us-40-cfr-82-f", &system(category, "R-22", "120 lb", ""));
    for (day, mass) in [("2025-09-16", "1 lb"), ("2026-03-15", "20 lb")] {
        book.visit(day, "emergency call").charge(day, "R-22", mass);
    }
    book.add("2026-03-15", set);
    book
}

#[test]
fn parts_that_are_late_give_180_or_270_days_if_asked_for_in_time() {
    // 82.157(f): asked for within the 30 (120) days, counted from the addition of 15 March 2026.
    let parts = |by: &str, asked: &str| {
        let asked = match asked {
            "" => String::new(),
            day => format!("extension-asked-for = {day}\n"),
        };
        format!(
            "[[due]]\nwhat = \"repair\"\nby = {by}\nextension = \"parts not delivered\"\n{asked}"
        )
    };
    let commercial = "commercial refrigeration";
    let industrial = "industrial process refrigeration";
    let table = [
        (commercial, "2026-08-01", "2026-04-14", "2026-08-01"),
        (commercial, "2026-10-01", "2026-04-14", "2026-09-11"),
        (commercial, "2026-08-01", "2026-04-15", "2026-04-14"),
        (commercial, "2026-08-01", "", "2026-04-14"),
        (industrial, "2026-12-31", "2026-07-13", "2026-12-10"),
        (industrial, "2026-12-31", "2026-07-14", "2026-04-14"),
    ];
    for (category, by, asked, stands) in table {
        let book = over(category, &parts(by, asked));
        let items = book.due("2026-03-16", "300 days");
        assert_eq!(
            dates(&items, "Repair the leaks"),
            [stands],
            "{category}, {by}, asked for on {asked}"
        );
    }
    // 82.157(d): 120 days only with a shutdown of an industrial process.
    let shutdown =
        "[[due]]\nwhat = \"repair\"\nby = 2026-07-13\nextension = \"industrial process shutdown\"";
    for (category, stands) in [(industrial, "2026-07-13"), (commercial, "2026-04-14")] {
        let items = over(category, shutdown).due("2026-03-16", "300 days");
        assert_eq!(dates(&items, "Repair the leaks"), [stands], "{category}");
    }
}

#[test]
fn a_date_set_by_hand_leads_only_where_it_is_the_earlier_one() {
    for (by, stands) in [("2026-03-20", "2026-03-20"), ("2026-06-01", "2026-04-14")] {
        let set = format!("[[due]]\nwhat = \"repair\"\nby = {by}");
        let items = over("commercial refrigeration", &set).due("2026-03-16", "300 days");
        assert_eq!(dates(&items, "Repair the leaks"), [stands]);
    }
    // Where no rule asks, it stands alone until it is done: 1 kg of R-134a is 1.43 t.
    let book = Small::new("eu-2024-573", &system("other", "R-134a", "1 kg", ""));
    book.visit("2026-03-15", "service");
    book.add(
        "2026-03-15",
        "[[due]]\nwhat = \"leak check\"\nby = 2026-09-01",
    );
    let checks = |on: &str| dates(&book.due(on, "300 days"), "Leak check");
    assert_eq!(checks("2026-03-16"), ["2026-09-01"]);
    book.visit("2026-08-20", "periodic leak check")
        .search("2026-08-20", true);
    assert_eq!(checks("2026-08-19"), ["2026-09-01"]);
    assert!(checks("2026-08-21").is_empty());
}

#[test]
fn a_plan_to_retire_has_a_year_and_by_part_82_thirteen_months_from_its_day() {
    // Over on 15 March 2026 and not repaired: the plan is due by 14 May. Made on 20 August; 82.157(h):
    // a year is 20 August 2027, thirteen months from the day it was due 14 June 2027.
    let plan = |more: &str| {
        format!("[[plan]]\nmade = 2026-08-20\nkind = \"retire\"\ncomplete-by = 2027-12-31\n{more}")
    };
    let table = [
        ("us-40-cfr-82-f", "R-22", "2027-06-14"),
        ("us-40-cfr-84-c", "R-404A", "2027-08-20"),
    ];
    for (rules, gas, by) in table {
        let due = |more: &str, on: &str| {
            let text = system("commercial refrigeration", gas, "120 lb", &plan(more));
            let book = Small::new(rules, &text);
            for (day, mass) in [("2026-01-16", "1 lb"), ("2026-03-15", "30 lb")] {
                book.visit(day, "emergency call").charge(day, gas, mass);
            }
            book.due(on, "900 days")
        };
        let before = due("", "2026-08-19");
        assert_eq!(dates(&before, "Plan to retrofit"), ["2026-05-14"]);
        assert_eq!(dates(&before, "Repair the leaks"), ["2026-04-14"]);
        let after = due("", "2026-08-21");
        assert_eq!(dates(&after, "Retire the system"), [by], "{rules}");
        assert!(dates(&after, "Plan").is_empty() && dates(&after, "Repair").is_empty());
        let done = due("completed = 2027-03-01", "2027-03-02");
        assert!(dates(&done, "Retire").is_empty());
    }
}

#[test]
fn a_plan_to_retrofit_is_done_when_another_refrigerant_is_in_force() {
    let more = "[[in-force]]\nfrom = 2027-02-01\nrefrigerant = \"R-438A\"\nfull-charge = \"110 lb\"\n[[plan]]\nmade = 2026-08-20\nkind = \"retrofit\"\ncomplete-by = 2027-06-30\n";
    let text = system("other", "R-22", "120 lb", "") + more;
    let book = Small::new("us-40-cfr-82-f", &text);
    book.visit("2026-01-16", "service");
    let due = |on: &str| dates(&book.due(on, "900 days"), "Retrofit the system");
    assert_eq!(due("2027-01-31"), ["2027-06-30"]);
    assert!(due("2027-02-01").is_empty());
}

#[test]
fn automatic_leak_detection_is_for_large_refrigeration_put_in_since_2017() {
    // 84.108: 1,500 lb seen second-hand; 30 days, 1 January 2017 and 2027 from memory.
    let commercial = "commercial refrigeration";
    let table = [
        (commercial, "1500 lb", "2018-05-01", vec!["2027-01-01"]),
        (commercial, "1500 lb", "2017-01-01", vec!["2027-01-01"]),
        (commercial, "1500 lb", "2026-02-01", vec!["2026-03-03"]),
        (commercial, "1500 lb", "2016-12-31", vec![]),
        (commercial, "1499.9 lb", "2018-05-01", vec![]),
        ("comfort cooling", "1500 lb", "2018-05-01", vec![]),
    ];
    for (category, full, installed, by) in table {
        let more = format!("installed = {installed}");
        let text = system(category, "R-404A", full, &more);
        let book = Small::new("us-40-cfr-84-c", &text);
        book.visit("2026-03-15", "service");
        let items = book.due("2026-03-16", "400 days");
        assert_eq!(dates(&items, "Fit an automatic"), by, "{full} {installed}");
    }
}

#[test]
fn an_automatic_system_that_is_audited_stands_in_place_of_inspections() {
    // 82.157(g)(4): audited and calibrated every year.
    let more = "leak-detection-system = true\nleak-detection-checked = [2026-02-10]";
    let text = system("commercial refrigeration", "R-22", "500 lb", more);
    let book = Small::new("us-40-cfr-82-f", &text);
    for (day, mass) in [("2025-09-16", "1 lb"), ("2026-03-15", "100 lb")] {
        book.visit(day, "service").charge(day, "R-22", mass);
    }
    let items = book.due("2026-03-16", "365 days");
    assert!(dates(&items, "Leak inspection").is_empty());
    assert_eq!(dates(&items, "Audit and calibrate"), ["2027-02-10"]);
}

#[test]
fn part_84_asks_nothing_of_an_addition_before_2026() {
    // 84.106(a)(4): from 1 January 2026.
    for (day, asked) in [("2025-12-31", false), ("2026-01-01", true)] {
        let text = system("comfort cooling", "R-410A", "40 lb", "");
        let book = Small::new("us-40-cfr-84-c", &text);
        book.visit("2025-10-01", "service")
            .charge("2025-10-01", "R-410A", "1 lb");
        book.visit(day, "service").charge(day, "R-410A", "6 lb");
        let items = book.due("2026-01-05", "60 days");
        let repair = dates(&items, "Repair the leaks");
        assert_eq!(!repair.is_empty(), asked, "{day}: {items:?}");
    }
}
