//! Vacuum test: whether its limit was met, apart from what the rise shows about a leak.

use crate::job::{System, VacuumTest, Visit};
use crate::quantity::{Flavour, Measured, Volume};
use crate::refrigerant::Refrigerant;
use crate::text::{Message, Noted, Text};
use crate::working::leak_size::{MASS_OF_THROUGHPUT, mass_rate, take_molar_mass};
use crate::working::vacuum_rule::{self, Course, Judged, Room, Slope, Unfit};
use crate::working::vacuum_verdict::Shown;
use crate::working::water_check::{above_water, warmest, water_limit};
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Mean rise as a throughput.
pub static RISE: Method = Method {
    id: "vacuum-rise",
    name: "Mean rise of the vacuum as a throughput",
    formula: "Q_rise = V × (p₂ − p₁) ÷ t",
    mathematics: "Q_\"rise\" = V dot (p_2 - p_1) / t",
    source: "rate of rise at constant volume, 40 CFR 1065.644 in form; moisture and outgassing are in it",
};

/// Rise of a part of the log as a throughput.
pub static SLOPE: Method = Method {
    id: "vacuum-slope",
    name: "Rise of a part of the log as a throughput",
    formula: "Q = V × Δp ÷ t, Δp along the straight line fitted to the rows;  U² = (V × U(Δp) ÷ t)² + (Δp × U(V) ÷ t)²",
    mathematics: "Q = (V dot Delta p) / t, \\ U^2 = ((V dot U(Delta p)) / t)^2 + ((Delta p dot U(V)) / t)^2",
    source: "least squares; standard error times the memory of the noise, Student's t at 99 %, and the step of the gauge; uncorrelated inputs, JCGM 100:2008 5.1",
};

/// The largest leak that a rise leaves possible.
pub static UPPER: Method = Method {
    id: "vacuum-upper-bound",
    name: "Largest leak that this rise leaves possible",
    formula: "Q_up = max(Q_late, 0) + U(Q_late)",
    mathematics: "Q_\"up\" = max(Q_\"late\", 0) + U(Q_\"late\")",
    source: "gas given off by moisture, walls and oil only adds to the rise, so that a steady leak is not larger than the rise of the last third; in simulated rises that held in at least 97 % of runs",
};

/// The smallest leak that a straight rise can be.
pub static LOWER: Method = Method {
    id: "vacuum-lower-bound",
    name: "Smallest leak that this straight rise can be, if it is one",
    formula: "Q_low = the lower of Q_all − U(Q_all) and Q_late − U(Q_late)",
    mathematics: "Q_\"low\" = min(Q_\"all\" - U(Q_\"all\"), Q_\"late\" - U(Q_\"late\"))",
    source: "the whole rise and its last third must both bear it",
};

/// The temperature may move by this much during the rise, K. Judgement: the vapour pressure of water
/// changes by 6 to 7 % per kelvin near 20 °C and the gas given off by walls by about a tenth, which
/// is what the bound can still bear.
pub const STEADY_K: f64 = 1.0;

/// Molar mass of air, kg/kmol, and its source.
pub const AIR: (&str, f64, &str) = (
    "air",
    28.966,
    "molar mass of dry air, 28.966 g/mol (from memory)",
);

/// Pressure that must not be passed where no limit is noted, Pa: 500 micron, common practice.
const HOLD_PA: f64 = 500.0 * 101_325.0 / 760_000.0;

/// Whether the limit of a vacuum test was met.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Acceptance {
    /// Not above the limit over the time asked for.
    Met,
    /// Above the limit.
    NotMet,
    /// Not watched as long as was asked for.
    TooShort,
    /// No limit is noted.
    NoLimit,
}

/// The result of a vacuum test.
#[derive(Clone, Debug)]
pub struct Rise {
    /// Whether the limit was met.
    pub acceptance: Acceptance,
    /// What it shows about a leak.
    pub shown: Shown,
    /// Why it shows no more, and what else the readings say.
    pub reasons: Vec<Message>,
    /// The course of the log, where it bears a verdict.
    pub course: Option<Course>,
    /// The volume under test, where it is noted.
    pub room: Option<Room>,
    /// The rise as a throughput, leak, moisture and outgassing together; `None` without a volume.
    pub rise: Option<Figure>,
    /// That of the whole log by a fitted line, where it is a leak.
    pub whole: Option<Figure>,
    /// That of the last third.
    pub late: Option<Figure>,
    /// Smallest leak, where it is one.
    pub lower: Option<Figure>,
    /// Largest leak left possible.
    pub upper: Option<Figure>,
    /// The same as mass of air coming in.
    pub upper_mass: Option<Figure>,
    /// Highest pressure that water alone can reach.
    pub water: Option<Figure>,
}

impl Rise {
    /// The largest leak left possible, Pa m³/s, with the log's own evidence.
    pub fn upper_bound_pa_m3_s(&self) -> Option<f64> {
        self.upper.as_ref().map(|figure| figure.value.number())
    }

    /// Whether it can stand as the proof of a repair: the limit met, and no leak shown.
    pub fn bears_proof(&self) -> bool {
        self.acceptance == Acceptance::Met && self.shown != Shown::Leak
    }

    /// Its figures, in the order of the working.
    pub fn figures(&self) -> impl Iterator<Item = &Figure> {
        [
            &self.rise,
            &self.whole,
            &self.late,
            &self.lower,
            &self.upper,
            &self.upper_mass,
            &self.water,
        ]
        .into_iter()
        .flatten()
    }
}

/// Works out a test of a system.
pub fn rise(test: &VacuumTest, system: &System, visit: &Visit) -> Rise {
    let volumes = volumes(test, system);
    let mut reasons = Vec::new();
    let course = course(test, &mut reasons);
    let room = volumes.as_deref().map(room);
    let hold = test
        .note
        .accept_below
        .map_or(HOLD_PA, |limit| limit.value.value.si());
    let limit = test.note.leak_limit.map(|limit| limit.value.value.si());
    let water = water_limit(test, visit);
    let above = above_water(test, water.as_ref());
    let shown = course.map_or(Shown::AcceptanceOnly, |course| {
        shown(vacuum_rule::judge(&course, room, limit, hold), above)
    });
    if above && shown != Shown::LevelsAboveWater {
        reasons.push(Message::of("vacuum-reason-above-water"));
    }
    if water.is_none() && shown == Shown::Moisture {
        reasons.push(Message::of("vacuum-reason-water-unchecked"));
    }
    if course.is_some() && room.is_none() {
        reasons.push(Message::of("vacuum-reason-no-volume"));
    }
    if course.is_some() && room.is_some() && limit.is_none() {
        reasons.push(Message::of("vacuum-reason-no-leak-limit"));
    }
    if let Some(refrigerant) = refrigerant_of(test, system, visit).filter(|gas| leaks_inward(gas)) {
        reasons
            .push(Message::of("vacuum-reason-inward").with("refrigerant", refrigerant.designation));
    }
    let mut rise = Rise {
        acceptance: acceptance(test),
        shown,
        reasons,
        course,
        room,
        rise: volumes.as_deref().map(|volumes| throughput(test, volumes)),
        whole: None,
        late: None,
        lower: None,
        upper: None,
        upper_mass: None,
        water,
    };
    if let (Some(course), Some(volumes)) = (course, volumes) {
        rise.bounds(test, &course, &volumes);
        rise.upper_mass = rise.upper.as_ref().map(|upper| mass(test, upper, visit));
    }
    rise
}

fn shown(judged: Judged, above_water: bool) -> Shown {
    match judged {
        Judged::NothingLarger => Shown::NothingLarger,
        Judged::NothingLargerAboveHold => Shown::NothingLargerAboveHold,
        Judged::Leak => Shown::Leak,
        Judged::Moisture if above_water => Shown::LevelsAboveWater,
        Judged::Moisture => Shown::Moisture,
        Judged::Bending => Shown::Bending,
        Judged::Uneven => Shown::Uneven,
        Judged::Coarse => Shown::Coarse,
        Judged::NoSize => Shown::NoSize,
    }
}

/// Volumes under test: that of the test, else those of the register.
fn volumes<'a>(
    test: &'a VacuumTest,
    system: &'a System,
) -> Option<Vec<&'a Noted<Measured<Volume>>>> {
    match &test.note.volume {
        Some(volume) => Some(vec![volume]),
        None => system.circuits.get(test.circuit)?.volumes(test.section()),
    }
}

fn room(volumes: &[&Noted<Measured<Volume>>]) -> Room {
    let half = |noted: &&Noted<Measured<Volume>>| noted.value.uncertainty.unwrap_or(0.0).powi(2);
    Room {
        m3: volumes.iter().map(|noted| noted.value.value.si()).sum(),
        half: volumes.iter().map(half).sum::<f64>().sqrt(),
    }
}

fn refrigerant_of(
    test: &VacuumTest,
    system: &System,
    visit: &Visit,
) -> Option<&'static Refrigerant> {
    system.in_force(test.circuit, visit.last_day())?.refrigerant
}

/// Whether a refrigerant is below the pressure of the air at 5 °C, as in the evaporator of a
/// low-pressure chiller.
pub fn leaks_inward(refrigerant: &Refrigerant) -> bool {
    refrigerant
        .bubble_pressure_pa(278.15)
        .is_some_and(|pressure| pressure < 101_325.0)
}

/// How far apart the logged temperatures are, K, in means over tenths of the log.
pub fn moved_k(test: &VacuumTest) -> f64 {
    let temperatures = test.log.as_ref().map_or(&[][..], |log| &log.temperature_k);
    let size = temperatures.len().div_ceil(10).max(1);
    let means = || {
        temperatures
            .chunks(size)
            .map(|run| run.iter().sum::<f64>() / run.len() as f64)
    };
    let lowest = means().fold(f64::INFINITY, f64::min);
    let highest = means().fold(f64::NEG_INFINITY, f64::max);
    (highest - lowest).max(0.0)
}

/// The course of the log; a reason where it bears no verdict.
fn course(test: &VacuumTest, reasons: &mut Vec<Message>) -> Option<Course> {
    let Some(log) = &test.log else {
        reasons.push(Message::of("vacuum-reason-two-readings"));
        return None;
    };
    let moved = moved_k(test);
    if moved > STEADY_K + 1e-6 {
        reasons.push(
            Message::of("vacuum-reason-moving-temperature")
                .figure("moved", format!("{moved:.1} K"))
                .figure("most", format!("{STEADY_K:.0} K")),
        );
        return None;
    }
    let found = vacuum_rule::course(&log.time_s, &log.pressure_pa, log.pressure_step_pa);
    let why = match found {
        Ok(course) => {
            if log.temperature_k.is_empty() {
                reasons.push(Message::of("vacuum-reason-no-temperature"));
            }
            return Some(course);
        }
        Err(Unfit::Short) => "vacuum-reason-short",
        Err(Unfit::FewRows) => "vacuum-reason-few-rows",
        Err(Unfit::Uneven) => "vacuum-reason-uneven",
        Err(Unfit::NotVacuum) => "vacuum-reason-not-vacuum",
        Err(Unfit::Constant) => "vacuum-reason-constant",
        Err(Unfit::Stopped) => "vacuum-reason-stopped",
        Err(Unfit::Fell) => "vacuum-reason-fell",
    };
    reasons.push(Message::of(why));
    None
}

fn acceptance(test: &VacuumTest) -> Acceptance {
    let Some(limit) = test.note.accept_below else {
        return Acceptance::NoLimit;
    };
    let limit = limit.value.value.si();
    let within = test
        .note
        .accept_within
        .map(|within| within.value.value.si());
    let window = within.unwrap_or(f64::INFINITY);
    let highest = match &test.log {
        Some(log) => log
            .time_s
            .iter()
            .zip(&log.pressure_pa)
            .filter(|(time, _)| **time <= window)
            .map(|(_, pressure)| *pressure)
            .fold(f64::NEG_INFINITY, f64::max),
        None => test.end.pressure.value.value.si(),
    };
    if highest > limit * (1.0 + 1e-9) {
        return Acceptance::NotMet;
    }
    match within {
        Some(within) if test.seconds() < within - 1.0 => Acceptance::TooShort,
        _ => Acceptance::Met,
    }
}

impl Rise {
    /// Adds the throughputs of the course with their bounds.
    fn bounds(&mut self, test: &VacuumTest, course: &Course, volumes: &[&Noted<Measured<Volume>>]) {
        let id = |part: &str| format!("vacuum-test/{}/{part}", test.id);
        let late_s = course.end_s - course.late_from_s;
        let title = Message::of("vacuum-late-title");
        let late = slope(
            test,
            (course.late, late_s),
            volumes,
            (id("late-slope"), title),
        );
        if self.shown == Shown::Leak {
            let title = Message::of("vacuum-whole-title");
            let all = (course.whole, course.end_s);
            let whole = slope(test, all, volumes, (id("whole-slope"), title));
            let mut working = Working::of(&LOWER, id("lower-bound"), Text::Phrase(LOWER.name));
            working.take_figure("Q_all", &whole);
            working.take_figure("Q_late", &late);
            self.lower = Some(working.finish(computed(
                Flavour::Throughput,
                room(volumes).lower(course),
                None,
            )));
            self.whole = Some(whole);
        }
        let mut working = Working::of(&UPPER, id("upper-bound"), Text::Phrase(UPPER.name));
        working.take_figure("Q_late", &late);
        working.note(Message::of("vacuum-note-upper"));
        self.upper = Some(working.finish(computed(
            Flavour::Throughput,
            room(volumes).upper(course),
            None,
        )));
        self.late = Some(late);
    }
}

fn computed(flavour: Flavour, si: f64, uncertainty: Option<f64>) -> Value {
    Value::Computed {
        flavour,
        si,
        uncertainty,
    }
}

/// A slope of the log as a throughput.
fn slope(
    test: &VacuumTest,
    (slope, seconds): (Slope, f64),
    volumes: &[&Noted<Measured<Volume>>],
    (id, title): (String, Message),
) -> Figure {
    let log = Origin::Note(test.end.pressure.span);
    let mut working = Working::of(&SLOPE, id, title);
    for volume in volumes {
        working.take("V", volume);
    }
    if volumes.len() > 1 {
        working.note(Message::of("note-volumes-summed"));
    }
    let rise = computed(
        Flavour::VacuumPressure,
        slope.pa_s * seconds,
        Some(slope.half * seconds),
    );
    working.input("Δp", rise, log.clone());
    working.input("t", computed(Flavour::Duration, seconds, None), log);
    let (q, half) = room(volumes).throughput(slope);
    working.finish(computed(Flavour::Throughput, q, Some(half)))
}

/// The upper bound as mass of air coming in, at the warmest pipe, else the air outside, else 20 °C.
fn mass(test: &VacuumTest, upper: &Figure, visit: &Visit) -> Figure {
    let id = format!("vacuum-test/{}/upper-bound-mass", test.id);
    let mut working = Working::of(&MASS_OF_THROUGHPUT, id, Message::of("vacuum-mass-title"));
    let q = working.take_figure("Q", upper);
    take_molar_mass(&mut working, AIR);
    let kelvin = match warmest(test, visit) {
        Some(noted) => working.take("T", &noted),
        None => working.input(
            "T",
            computed(Flavour::Temperature, 293.15, None),
            Origin::Assumed("20 °C, for want of a temperature"),
        ),
    };
    working.finish(computed(
        Flavour::MassRate,
        mass_rate(q, AIR.1, kelvin),
        None,
    ))
}

fn throughput(test: &VacuumTest, volumes: &[&Noted<Measured<Volume>>]) -> Figure {
    let id = format!("vacuum-test/{}/rise", test.id);
    let mut working = Working::of(&RISE, id, Message::of("vacuum-rise-title"));
    let p1 = working.take("p₁", &test.start.pressure);
    let p2 = working.take("p₂", &test.end.pressure);
    let volume: f64 = volumes.iter().map(|noted| working.take("V", noted)).sum();
    if volumes.len() > 1 {
        working.note(Message::of("note-volumes-summed"));
    }
    let seconds = test.seconds();
    working.input(
        "t",
        computed(Flavour::Duration, seconds, None),
        Origin::Notes(vec![test.start.at.span, test.end.at.span]),
    );
    working.note(Message::of("vacuum-note-rise"));
    working.finish(computed(
        Flavour::Throughput,
        volume * (p2 - p1) / seconds,
        None,
    ))
}
