//! Simulated vacuum rises: a leak, gas given off by walls, water and oil, and a gauge. The shapes are
//! invented; the rule does not know them.

use std::f64::consts::TAU;

pub const MICRON: f64 = 0.133_322_368;
const ROW_S: f64 = 10.0;

/// Numbers as good as drawn, the same for the same seed (SplitMix64, Steele, Lea and Flood 2014).
pub struct Generator(pub u64);

impl Generator {
    /// Between 0 and 1.
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((mixed ^ (mixed >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    /// Between two numbers, each decade as likely.
    fn scaled(&mut self, low: f64, high: f64) -> f64 {
        self.between(low.ln(), high.ln()).exp()
    }

    /// Normal with mean 0 and standard deviation 1.
    fn normal(&mut self) -> f64 {
        (-2.0 * (1.0 - self.unit()).ln()).sqrt() * (TAU * self.unit()).cos()
    }
}

/// What gives off gas: share given off by a time, of all that is given off by the end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Shape {
    None,
    // The shapes of the study that the rule was made after.
    Exponential,
    Logarithm,
    Root,
    TwoExponentials,
    ThirdRoot,
    Stretched,
    TwoStage,
    // New ones.
    Hyperbola,
    Diffusion,
    DelayedLogarithm,
    OilPulse,
    TwoSourcesSwaying,
    Evaporation,
    Bursts,
    SevenTenths,
    // Written after the rule was last changed.
    HeatedOil,
    Jumps,
    // Those that break the premise.
    EquilibriumSwaying,
    Straight,
}

/// How much gas is given off by the end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// 40 to 250 micron.
    Dry,
    /// 1000 to 4000 micron.
    Wet,
}

/// How the leak behaves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Flow {
    Steady,
    /// Opens and closes over ramps, open for the middle or the first part.
    Intermittent,
}

/// How the gauge behaves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Gauge {
    /// 1 % of noise, steps of 1 micron.
    Plain,
    /// 1 % of noise, steps of 10 micron.
    Coarse,
    /// 0.1 % of noise, steps of 10 micron.
    CoarseQuiet,
    /// 0.1 % of noise, steps of 1 micron.
    Quiet,
    /// 1 % of noise that remembers nine tenths of that of the row before.
    Remembering,
    /// Plain, and drifts by up to 3 micron over the test.
    Drifting,
}

pub struct Scenario {
    pub name: &'static str,
    pub shape: Shape,
    pub amount: Amount,
    pub flow: Flow,
    pub gauge: Gauge,
    /// Leak in limits.
    pub leak: f64,
}

/// A simulated log, and the mean leak over it, Pa m³/s.
pub struct Simulated {
    pub time_s: Vec<f64>,
    pub pressure_pa: Vec<f64>,
    pub leak: f64,
}

fn share(shape: Shape, end: f64, dice: &mut Generator) -> Box<dyn Fn(f64) -> f64> {
    let tau = dice.scaled(60.0, end / 2.0);
    let other = dice.scaled(60.0, end);
    let part = dice.between(0.2, 0.8);
    let onset = dice.between(0.1, 0.9) * end;
    let phase = dice.between(0.0, TAU);
    let period = dice.between(1200.0, 3600.0);
    let exponential = move |t: f64, tau: f64| 1.0 - (-t / tau).exp();
    match shape {
        Shape::None => Box::new(|_| 0.0),
        Shape::Exponential => Box::new(move |t| exponential(t, tau)),
        Shape::Logarithm => Box::new(move |t| (1.0 + t * 4.0 / tau).ln()),
        Shape::Root => Box::new(f64::sqrt),
        Shape::TwoExponentials => {
            Box::new(move |t| part * exponential(t, tau) + (1.0 - part) * exponential(t, other))
        }
        Shape::ThirdRoot => Box::new(|t| t.powf(0.3)),
        Shape::Stretched => Box::new(move |t| 1.0 - (-(t / tau).sqrt()).exp()),
        Shape::TwoStage => Box::new(move |t| {
            part * exponential(t, tau / 2.0)
                + (1.0 - part) * exponential((t - 0.3 * onset).max(0.0), tau)
        }),
        Shape::Hyperbola => Box::new(move |t| t / (t + tau)),
        Shape::Diffusion => Box::new(move |t| {
            1.0 - (0..40)
                .map(|n| (f64::from(n) + 0.5) * TAU / 2.0)
                .map(|root| 2.0 / root.powi(2) * (-root.powi(2) * t / (3.0 * tau)).exp())
                .sum::<f64>()
        }),
        Shape::DelayedLogarithm => Box::new(move |t| (1.0 + (t - onset / 3.0).max(0.0) / tau).ln()),
        Shape::OilPulse => Box::new(move |t| {
            0.4 * exponential(t, tau) + 0.6 / (1.0 + ((onset - t) / (other / 8.0)).exp())
        }),
        Shape::TwoSourcesSwaying => Box::new(move |t| {
            // A tenth more per kelvin, over a sway of 0.4 K either way, integrated row by row.
            let rate = |t: f64| {
                let gas = part * (-t / tau).exp() / tau + (1.0 - part) * 0.4 / (other + t);
                gas * (0.04 * (TAU * t / period + phase).sin()).exp()
            };
            let rows = (t / ROW_S).round() as u32;
            (0..rows)
                .map(|row| rate((f64::from(row) + 0.5) * ROW_S) * ROW_S)
                .sum()
        }),
        Shape::Evaporation => Box::new(move |t| (t / tau).powi(2).sqrt().tanh()),
        Shape::Bursts => {
            let bursts: Vec<(f64, f64)> = (0..4)
                .map(|_| (dice.between(0.0, end), dice.scaled(30.0, 600.0)))
                .collect();
            Box::new(move |t| {
                bursts
                    .iter()
                    .map(|(from, tau)| exponential((t - from).max(0.0), *tau))
                    .sum::<f64>()
                    + 0.5 * exponential(t, other)
            })
        }
        Shape::HeatedOil => Box::new(move |t| 1.0 - (1.0 + t / tau) * (-t / tau).exp()),
        Shape::Jumps => {
            let jumps: Vec<(f64, f64)> = (0..30)
                .map(|_| (end * dice.unit().powi(2), dice.between(0.0, 1.0)))
                .collect();
            Box::new(move |t| {
                let before = jumps.iter().filter(|(at, _)| *at <= t);
                0.01 * t / end + before.map(|(_, size)| size).sum::<f64>()
            })
        }
        Shape::SevenTenths => Box::new(|t| t.powf(0.7)),
        Shape::EquilibriumSwaying => Box::new(move |t| {
            exponential(t, tau / 4.0) * (1.0 + 0.026 * (TAU * t / period + phase).sin())
        }),
        Shape::Straight => Box::new(|t| t),
    }
}

/// One log of a scenario in 8 L.
pub fn simulate(
    scenario: &Scenario,
    limit: f64,
    minutes: f64,
    volume: f64,
    dice: &mut Generator,
) -> Simulated {
    let end = minutes * 60.0;
    let gas = share(scenario.shape, end, dice);
    let amount = MICRON
        * match scenario.amount {
            Amount::Dry => dice.between(40.0, 250.0),
            Amount::Wet => dice.between(1000.0, 4000.0),
        };
    let all = gas(end).max(1e-12);
    let start = MICRON * dice.between(100.0, 200.0);
    let (open, shut) = (dice.between(0.0, 0.5), dice.between(0.5, 0.8));
    let drift = dice.between(-3.0, 3.0) * MICRON;
    let rate = |x: f64| match scenario.flow {
        Flow::Steady => 1.0,
        Flow::Intermittent => {
            ((x - open) * 10.0).clamp(0.0, 1.0) * ((shut - x) * 10.0).clamp(0.0, 1.0)
        }
    };
    let (noise, step, memory) = match scenario.gauge {
        Gauge::Plain | Gauge::Drifting => (0.01, 1.0, 0.0),
        Gauge::Coarse => (0.01, 10.0, 0.0),
        Gauge::CoarseQuiet => (0.001, 10.0, 0.0),
        Gauge::Quiet => (0.001, 1.0, 0.0),
        Gauge::Remembering => (0.01, 1.0, 0.9),
    };
    let rows = (end / ROW_S).round() as u32;
    let (mut entered, mut error) = (0.0, dice.normal());
    let mut simulated = Simulated {
        time_s: Vec::new(),
        pressure_pa: Vec::new(),
        leak: 0.0,
    };
    for row in 0..=rows {
        let time = f64::from(row) * ROW_S;
        let drifted = match scenario.gauge {
            Gauge::Drifting => drift * time / end,
            _ => 0.0,
        };
        let given_off = if scenario.shape == Shape::None {
            0.0
        } else {
            amount * gas(time) / all
        };
        let true_pa = start + given_off + entered + drifted;
        let shown = true_pa * (1.0 + noise * error) / MICRON;
        simulated.time_s.push(time);
        simulated
            .pressure_pa
            .push((shown / step).round() * step * MICRON);
        entered += scenario.leak * limit * rate((time + 0.5 * ROW_S) / end) / volume * ROW_S;
        error = memory * error + f64::sqrt(1.0 - memory * memory) * dice.normal();
    }
    simulated.leak = entered / (end + ROW_S) * volume;
    simulated
}
