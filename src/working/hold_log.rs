//! A day-long log of a pressure test: the loss fitted over its whole course, and its uncertainty budget.

use crate::job::{PressureTest, Visit};
use crate::quantity::Flavour;
use crate::text::Message;
use crate::working::hold_air::Air;
use crate::working::hold_budget::{Budget, Cause, Contribution};
use crate::working::hold_change::nitrogenous;
use crate::working::hold_verdict::is_long;
use crate::working::pressure_log::{BEHIND_S, Course, FOLLOWED, LogFit, fit_log};
use crate::working::working::{Figure, Method, Origin, Value, Working};

/// Pressure lost over a log.
pub static LOG_CHANGE: Method = Method {
    id: "log-pressure-change",
    name: "Pressure lost beyond what temperature explains, fitted over the whole log",
    formula: "p = [ZT ÷ (ZT)₀] × (P₀ − D × t ÷ t_end) + c₁ × dT/dt + c₂ × (T − T̄) by least squares;  Δ = D;  u²(Δ) = u_fit² + u_share² + u_step² + u²(air);  U = 3u",
    mathematics: "p = (Z T) / (Z T)_0 dot (P_0 - D dot t / t_\"end\") + c_1 dot (d T) / (d t) + c_2 dot (T - overline(T)), \\ Delta = D, quad u^2(Delta) = u_\"fit\"^2 + u_\"share\"^2 + u_\"step\"^2 + u^2(\"air\")",
    source: "least squares with the share and the lag held near 1 and 0; real gas at constant volume, Z of nitrogen from the table made with CoolProp 8.0.0; variance times the integrated autocorrelation; a reading's step as step/√12, JCGM 100:2008 F.2.2.1; coverage factor 3, after simulated logs",
};

/// Longest stretch without a row that is passed over in silence, s.
const GAP_S: f64 = 3600.0;

/// Where the share and its doubt come from.
pub const SIMULATED: &str = "in simulated logs the interval built with it held the true leak in 87 to 100 % of runs; not measured on this plant";

/// The loss over a log of a day; `None` where two readings have to do, with the reason if there is a log.
pub(super) fn log_change(
    test: &PressureTest,
    visit: &Visit,
    id: &str,
    reasons: &mut Vec<Message>,
) -> Option<(Figure, Budget)> {
    let log = test.log.as_ref()?;
    if !nitrogenous(test) || log.temperature_k.is_empty() {
        return None;
    }
    if !is_long(test) {
        reasons.push(Message::of("hold-reason-log-short"));
        return None;
    }
    let mut working = Working::of(&LOG_CHANGE, id, Message::of("hold-change-title"));
    let mut air = Air::of(visit);
    let air_pa = if log.gauge {
        air.take(&mut working)
    } else {
        0.0
    };
    let fit = fit_log(&Course {
        time_s: &log.time_s,
        pressure_pa: &log.pressure_pa,
        air_pa,
        temperature_k: &log.temperature_k,
    });
    let Some(fit) = fit else {
        reasons.push(Message::of("hold-reason-log-unfit"));
        return None;
    };
    let origin = log.span.map_or(Origin::Constant("the log"), Origin::Note);
    take_fit(&mut working, &fit, log.time_s.len(), &origin);
    let mut budget = Budget::default();
    for (symbol, cause, what, pascal, origin) in [
        (
            "u_fit",
            Cause::Scatter,
            "budget-scatter",
            fit.scatter_pa,
            origin.clone(),
        ),
        (
            "u_share",
            Cause::Temperature,
            "budget-share-followed",
            fit.following_pa,
            Origin::Assumed(SIMULATED),
        ),
        (
            "u_step",
            Cause::Gauge,
            "budget-step",
            log.pressure_step_pa / 12f64.sqrt(),
            origin,
        ),
    ] {
        let part = Contribution {
            cause,
            what: Message::of(what),
            pascal,
            origin,
        };
        budget.add(&mut working, symbol, part);
    }
    air.contribute(&mut working, &mut budget);
    let widest = log.time_s.windows(2).filter_map(|pair| match pair {
        [a, b] => Some(b - a),
        _ => None,
    });
    if widest.fold(0.0, f64::max) > GAP_S {
        working.note(Message::of("hold-note-gaps"));
    }
    let figure = working.finish(Value::Computed {
        flavour: Flavour::PressureDifference,
        si: fit.lost_pa,
        uncertainty: Some(3.0 * budget.variance().sqrt()),
    });
    Some((figure, budget))
}

/// Takes what the fit found into the working.
fn take_fit(working: &mut Working, fit: &LogFit, rows: usize, origin: &Origin) {
    let computed = |flavour, si| Value::Computed {
        flavour,
        si,
        uncertainty: None,
    };
    working.input("rows", Value::Number(rows as f64, 0), origin.clone());
    working.input(
        "means",
        Value::Number(fit.means as f64, 0),
        Origin::Constant("averages over equal times, 288 in the log at most"),
    );
    working.input(
        "s",
        computed(Flavour::PressureDifference, fit.residual_pa),
        Origin::Constant("standard deviation of the means about the fit"),
    );
    working.input(
        "r",
        Value::Number(fit.correlation, 1),
        Origin::Constant("integrated autocorrelation: so many means in a row say the same"),
    );
    working.input(
        "u(share)",
        Value::Percent(100.0 * FOLLOWED, 0),
        Origin::Assumed("holds c₂: gas follows all of a change of temperature, to within this"),
    );
    working.input(
        "u(lag)",
        computed(Flavour::Duration, BEHIND_S),
        Origin::Assumed("holds c₁: gas is not behind the thermometer, to within this"),
    );
    let Some((share, behind)) = fit.followed.zip(fit.behind_s) else {
        working.note(Message::of("hold-note-temperature-still"));
        return;
    };
    let fitted = Origin::Constant("fitted, from c₂ and c₁");
    working.input("share", Value::Percent(100.0 * share, 0), fitted.clone());
    working.input("lag", computed(Flavour::Duration, behind), fitted);
}
