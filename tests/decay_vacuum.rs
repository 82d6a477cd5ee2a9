//! How good the verdict on a vacuum rise is, on simulated rises of shapes that the rule was not made
//! from. Seeded; `RIMEBOOK_LONG=1` runs ten times as many and prints the table of DEVELOPERS.md.

use rimebook::working::vacuum_rule::{RiseVerdict, Series, judged};

const LIMIT: f64 = 1e-5;
const VOLUME: f64 = 8e-3;
const HOLD_PA: f64 = 66.661;
const MICRON: f64 = 0.133_322;
const SPAN_S: f64 = 1800.0;
const STEP_S: f64 = 10.0;

/// Splitmix64: a published generator of a few lines, the same on every machine.
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    /// Normal by the sum of twelve.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.next()).sum::<f64>() - 6.0
    }
}

use Gauge::{Coarse, Fine};
use Inside::*;

/// How gas comes off from inside; amplitude 1 at the end of the rise.
#[derive(Clone, Copy, Debug)]
enum Inside {
    /// None.
    Dry,
    /// A power of the time below one.
    Power,
    /// A stretched exponential.
    Stretched,
    /// A fast and a slow source together.
    TwoRates,
    /// Oil that gives its gas off in the first minutes.
    OilPulse,
    /// Against the premise: a source that wakes late.
    LateOnset,
}

fn shape(inside: Inside, chance: &mut Chance) -> Box<dyn Fn(f64) -> f64> {
    let raw: Box<dyn Fn(f64) -> f64> = match inside {
        Inside::Dry => Box::new(|_| 0.0),
        Inside::Power => {
            let power = chance.between(0.35, 0.65);
            Box::new(move |t| t.powf(power))
        }
        Inside::Stretched => {
            let (tau, beta) = (chance.between(120.0, 700.0), chance.between(0.4, 0.8));
            Box::new(move |t| 1.0 - (-(t / tau).powf(beta)).exp())
        }
        Inside::TwoRates => {
            let (fast, slow) = (chance.between(40.0, 150.0), chance.between(400.0, 1500.0));
            let share = chance.between(0.2, 0.8);
            Box::new(move |t| {
                share * (1.0 - (-t / fast).exp()) + (1.0 - share) * (1.0 - (-t / slow).exp())
            })
        }
        Inside::OilPulse => {
            let until = chance.between(120.0, 500.0);
            Box::new(move |t| {
                let x = (t / until).min(1.0);
                x * (2.0 - x) + 0.05 * t / SPAN_S
            })
        }
        Inside::LateOnset => {
            let from = chance.between(700.0, 1400.0);
            Box::new(move |t| ((t - from) / 300.0).max(0.0).tanh())
        }
    };
    let full = raw(SPAN_S);
    Box::new(move |t| if full > 0.0 { raw(t) / full } else { 0.0 })
}

/// How the gauge reads.
#[derive(Clone, Copy, Debug)]
enum Gauge {
    /// 1 micron steps, noise of 0.5 % that hangs together from row to row.
    Fine,
    /// 10 micron steps.
    Coarse,
}

struct Cell {
    name: &'static str,
    inside: Inside,
    /// Rise from inside over the whole test, micron.
    micron: (f64, f64),
    /// Leak as a multiple of the limit.
    leak: f64,
    gauge: Gauge,
    /// Whether the shape keeps the premise of the bound.
    premise: bool,
}

#[derive(Default)]
struct Tally {
    runs: usize,
    nothing_larger: usize,
    leak: usize,
    moisture: usize,
    inconclusive: usize,
    bound_holds: usize,
}

fn run(cell: &Cell, runs: usize, chance: &mut Chance) -> Tally {
    let mut tally = Tally::default();
    for _ in 0..runs {
        let gas = shape(cell.inside, chance);
        let amplitude = chance.between(cell.micron.0, cell.micron.1) * MICRON;
        let start = chance.between(150.0, 300.0) * MICRON;
        let leak = cell.leak * LIMIT;
        let sway = chance.between(0.0, std::f64::consts::TAU);
        let step = match cell.gauge {
            Gauge::Fine => MICRON,
            Gauge::Coarse => 10.0 * MICRON,
        };
        let mut noise = 0.0;
        let (mut time, mut pressure) = (Vec::new(), Vec::new());
        for row in 0..=(SPAN_S / STEP_S) as usize {
            let t = row as f64 * STEP_S;
            let clean = start + amplitude * gas(t) + leak / VOLUME * t;
            noise = 0.6 * noise + 0.8 * chance.normal();
            // A sway of temperature of 0.3 K over an hour, as the gas law sees it.
            let swayed =
                clean * (1.0 + 0.3 / 293.0 * (sway + t * std::f64::consts::TAU / 3600.0).sin());
            let read = swayed * (1.0 + 0.005 * noise * 0.5);
            time.push(t);
            pressure.push((read / step).round() * step);
        }
        let judged = judged(&Series {
            time_s: &time,
            pressure_pa: &pressure,
            volume_m3: VOLUME,
            volume_half_m3: 0.0,
            step_pa: step,
            hold_pa: HOLD_PA,
            leak_limit: Some(LIMIT),
        })
        .expect("long enough and dense enough");
        tally.runs += 1;
        match judged.verdict {
            RiseVerdict::NothingLarger => tally.nothing_larger += 1,
            RiseVerdict::Leak => tally.leak += 1,
            RiseVerdict::Moisture => tally.moisture += 1,
            RiseVerdict::Inconclusive => tally.inconclusive += 1,
        }
        tally.bound_holds += usize::from(judged.upper >= leak);
    }
    tally
}

fn cells() -> Vec<Cell> {
    let cell = |name, inside, micron, leak, gauge, premise| Cell {
        name,
        inside,
        micron,
        leak,
        gauge,
        premise,
    };
    let little = (5.0, 120.0);
    let wet = (800.0, 6000.0);
    vec![
        cell("dry", Dry, (0.0, 0.0), 0.0, Fine, true),
        cell("dry, coarse gauge", Dry, (0.0, 0.0), 0.0, Coarse, true),
        cell("a little gas, power law", Power, little, 0.0, Fine, true),
        cell(
            "a little gas, stretched",
            Stretched,
            little,
            0.0,
            Fine,
            true,
        ),
        cell("a little gas, two rates", TwoRates, little, 0.0, Fine, true),
        cell("a little gas, oil pulse", OilPulse, little, 0.0, Fine, true),
        cell(
            "a little gas, coarse gauge",
            TwoRates,
            little,
            0.0,
            Coarse,
            true,
        ),
        cell("wet, power law", Power, wet, 0.0, Fine, true),
        cell("wet, stretched", Stretched, wet, 0.0, Fine, true),
        cell("wet, two rates", TwoRates, wet, 0.0, Fine, true),
        cell("dry, leak = limit", Dry, (0.0, 0.0), 1.0, Fine, true),
        cell("dry, leak = 10 × limit", Dry, (0.0, 0.0), 10.0, Fine, true),
        cell(
            "dry, leak = 10 × limit, coarse",
            Dry,
            (0.0, 0.0),
            10.0,
            Coarse,
            true,
        ),
        cell("a little gas, leak = limit", Power, little, 1.0, Fine, true),
        cell(
            "a little gas, leak = 10 × limit",
            Stretched,
            little,
            10.0,
            Fine,
            true,
        ),
        cell(
            "oil pulse, leak = 10 × limit",
            OilPulse,
            little,
            10.0,
            Fine,
            true,
        ),
        cell("wet, leak = limit", Stretched, wet, 1.0, Fine, true),
        cell("wet, leak = 10 × limit", TwoRates, wet, 10.0, Fine, true),
        cell("late onset, no leak", LateOnset, little, 0.0, Fine, false),
        cell(
            "late onset, leak = limit",
            LateOnset,
            little,
            1.0,
            Fine,
            false,
        ),
    ]
}

fn percent(part: usize, whole: usize) -> f64 {
    100.0 * part as f64 / whole as f64
}

#[test]
#[expect(
    clippy::print_stdout,
    reason = "the long run prints the table of DEVELOPERS.md"
)]
fn the_verdict_on_a_rise_is_as_good_as_is_said() {
    let long = std::env::var_os("RIMEBOOK_LONG").is_some();
    let runs = if long { 2000 } else { 200 };
    let mut chance = Chance(20_261_125);
    let mut table = String::from(
        "| truth | leak | moisture | nothing larger | inconclusive | bound valid |\n|---|---|---|---|---|---|\n",
    );
    let (mut false_leaks, mut leak_free) = (0, 0);
    for cell in cells() {
        let tally = run(&cell, runs, &mut chance);
        table += &format!(
            "| {} | {:.1} | {:.1} | {:.1} | {:.1} | {:.1} % |\n",
            cell.name,
            percent(tally.leak, tally.runs),
            percent(tally.moisture, tally.runs),
            percent(tally.nothing_larger, tally.runs),
            percent(tally.inconclusive, tally.runs),
            percent(tally.bound_holds, tally.runs),
        );
        if !cell.premise {
            continue;
        }
        assert!(
            percent(tally.bound_holds, tally.runs) >= 95.0,
            "{}: the bound holds in {} of {}",
            cell.name,
            tally.bound_holds,
            tally.runs
        );
        if cell.leak == 0.0 {
            false_leaks += tally.leak;
            leak_free += tally.runs;
        } else {
            assert!(
                percent(tally.nothing_larger, tally.runs) <= 5.0,
                "{}: {} of {} leaks were passed",
                cell.name,
                tally.nothing_larger,
                tally.runs
            );
        }
        if cell.name == "dry, leak = 10 × limit" {
            assert!(percent(tally.leak, tally.runs) >= 99.0, "{table}");
        }
        if cell.name == "dry" {
            assert!(percent(tally.nothing_larger, tally.runs) >= 99.0, "{table}");
        }
    }
    if long {
        println!("{table}");
    }
    assert!(percent(false_leaks, leak_free) <= 1.0, "{table}");
}
