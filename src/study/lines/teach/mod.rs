//! Readings of a line: what they teach about its guesses, and what that changes.

mod model; // guesses → readings as they would be
mod reading; // what was read

pub use reading::{CAREFUL_READING_PCT, Reading, running_hours};

use super::outputs::Outputs;
use super::sample::fits;
use super::subject::Subject;
use super::uncertain::Uncertain;
use super::usual::default_uncertainty;
use crate::error::Result;
use crate::study::calibrate::{Ensemble, EnsembleSettings, Fit, Observation, Problem, calibrate, combination};
use crate::study::draws::{Distribution, Generator, Input, Plan, normal_quantile};
use crate::study::progress::Progress;
use crate::study::spread::{quantile, sorted};
use model::Model;

/// Guesses that elongation, current and oil use can teach.
pub const LEARNABLE: [&str; 5] = [
    "surface.dry_friction",
    "oil.boundary_friction",
    "wear.wear_coefficient_dry",
    "wear.wear_coefficient_boundary",
    "lubrication.capture",
];

/// Those guesses of a subject that enter it, as the register thinks of them, each independent of the others.
pub fn learnable(subject: Subject) -> Result<Uncertain> {
    let of_these = |name: &str| LEARNABLE.iter().any(|path| name == *path || name.ends_with(&format!(".{path}")));
    let doubts: Vec<_> = default_uncertainty(&subject)?.into_iter().filter(|(name, _)| of_these(name)).collect();
    Uncertain::new(subject, &doubts)
}

/// 5, 50 and 95 %.
pub type Quantiles = [f64; 3];

/// What readings taught.
#[derive(Debug, Clone)]
pub struct Taught {
    /// The guesses.
    pub uncertain: Uncertain,
    /// The readings, in order.
    pub readings: Vec<Reading>,
    /// Readings computed with the guesses in their middle, and with the most probable values.
    pub computed: Vec<[f64; 2]>,
    /// Each guess before the readings.
    pub before: Vec<Quantiles>,
    /// And after.
    pub after: Vec<Quantiles>,
    /// Combinations of guesses with how well they are learnt, in sentences, best learnt first.
    pub learnt: Vec<String>,
    /// Share of its guessed spread that is left of each of these.
    pub spread_left: Vec<f64>,
    /// The error of the zero reading after the readings (%, mean and standard deviation); none without elongations.
    pub zero_pct: Option<[f64; 2]>,
    /// Whether a bell curve described the answer; if not, walkers drew it.
    pub bell_shaped: bool,
    /// Split R̂ and effective draws of each guess, where walkers ran.
    pub walkers: Option<(Vec<f64>, Vec<f64>)>,
    /// Half the squared distance from readings and guesses.
    pub misfit: f64,
    /// Starts of the search that agree, of how many.
    pub agreeing_starts: (usize, usize),
    /// Readings that the most probable values leave unexplained, in sentences.
    pub doubtful: Vec<String>,
    /// Draws of the guesses after the readings, a column each.
    pub draws: Vec<Vec<f64>>,
    /// What was predicted.
    pub outputs: Outputs,
    /// Each prediction before and after the readings; NaN where there is none, +∞ for never.
    pub predicted: Vec<[Quantiles; 2]>,
}

/// How to calibrate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TeachSettings {
    /// Error (% of length) of the reading on the new chain that all elongations are taken against; 0: none.
    pub zero_error_pct: f64,
    /// Draws for the predictions, a power of two.
    pub n: usize,
    /// Seed.
    pub seed: u64,
}

impl Default for TeachSettings {
    fn default() -> Self {
        TeachSettings { zero_error_pct: 0.05, n: 1024, seed: 1 }
    }
}

/// Finds what `readings` say of the guesses.
///
/// Every guess is drawn by its normal score, so that its distribution is taken as it is. Readings of elongation carry a
/// common error, that of the zero reading. After a change of oiling the chain grows on from where it was. Where a bell
/// curve does not describe the answer, walkers draw it.
pub fn calibrate_line(
    uncertain: Uncertain,
    readings: Vec<Reading>,
    outputs: &[String],
    settings: TeachSettings,
    progress: &mut Progress<'_>,
) -> Result<Taught> {
    let model = Model::new(&uncertain, &readings, settings)?;
    let outputs = Outputs::of(uncertain.subject(), Some(outputs), None)?.only_numbers()?;
    let parameters = model.parameters();
    fits(settings.n, 3 * parameters.len() + 2 * outputs.len(), "n", "draw fewer")?;
    let observed: Vec<Observation> = readings.iter().map(Reading::observation).collect();
    let compute = |theta: &[f64], y: &mut [f64]| model.readings(theta, y);
    let problem = Problem::new(&parameters, &observed, &compute)?;
    let fit = calibrate(&problem, settings.seed, &mut stage(progress, 0, SEARCHED))?;
    let bell_shaped = fit.is_bell_shaped();
    let seed = settings.seed;
    let walked = if bell_shaped {
        None
    } else {
        let settings = EnsembleSettings { seed, ..Default::default() };
        Some(Ensemble::run(&problem, &fit, &settings, &mut stage(progress, SEARCHED, WALKED))?)
    };
    let count = uncertain.names().len();
    let prior = scores(parameters.len(), settings, |units, theta| {
        units.iter().zip(theta).for_each(|(&u, theta)| *theta = normal_quantile(u));
    })?;
    let posterior = match &walked {
        None => scores(parameters.len(), settings, |units, theta| fit.draw(units, theta))?,
        Some(ensemble) => thinned(ensemble, parameters.len(), settings.n),
    };
    let predicted = model.predict(&outputs, &prior, &posterior, &mut stage(progress, WALKED, ALL))?;
    let natural = |i: usize, z: f64| uncertain.distribution_of(i, uncertain.side_of(i)).at_normal(z);
    let column = |i: usize| posterior.iter().map(|theta| natural(i, theta[i])).collect::<Vec<_>>();
    let draws: Vec<Vec<f64>> = (0..count).map(column).collect();
    let z = normal_quantile(0.95);
    let before = (0..count).map(|i| [-z, 0.0, z].map(|z| natural(i, z))).collect();
    let after = (0..count).map(|i| after(&fit, walked.as_ref(), i, |z| natural(i, z))).collect();
    let at_guess = problem.predict(&vec![0.0; parameters.len()]).unwrap_or_else(|_| vec![f64::NAN; readings.len()]);
    let at_best = problem.predict(&fit.theta)?;
    let named = model.named();
    let zero_pct = (parameters.len() > count).then(|| {
        let sd = settings.zero_error_pct;
        [fit.theta[count] * sd, fit.sd[count] * sd]
    });
    let doubtful = readings.iter().zip(&at_best).filter_map(|(reading, best)| reading.doubtful(*best)).collect();
    Ok(Taught {
        doubtful,
        computed: at_guess.into_iter().zip(at_best).map(|(guess, best)| [guess, best]).collect(),
        learnt: fit.directions.iter().map(|d| d.in_words_of(&combination(&named, &d.weights))).collect(),
        spread_left: fit.directions.iter().map(|d| d.spread_left()).collect(),
        walkers: walked.map(|ensemble| (ensemble.r_hat, ensemble.draws)),
        misfit: fit.misfit,
        agreeing_starts: fit.agreeing_starts,
        uncertain: uncertain.clone(),
        readings: readings.clone(),
        before,
        after,
        zero_pct,
        bell_shaped,
        draws,
        outputs,
        predicted,
    })
}

/// Where the stages end on one scale of progress: the search, the walkers where they are needed, the draws.
const SEARCHED: usize = 100;
const WALKED: usize = 800;
const ALL: usize = 1000;

/// A stage's own steps as those between two marks of the whole.
fn stage<'a>(progress: &'a mut Progress<'_>, from: usize, to: usize) -> impl FnMut(usize, usize) -> bool + 'a {
    move |done, all| progress(from + (to - from) * done / all.max(1), ALL)
}

/// Draws of scores, from evenly spread uniform numbers.
fn scores(width: usize, settings: TeachSettings, of: impl Fn(&[f64], &mut [f64])) -> Result<Vec<Vec<f64>>> {
    let input = |i: usize| Input { name: i.to_string(), distribution: Distribution::Uniform { low: 0.0, high: 1.0 } };
    let plan = Plan::new((0..width).map(input).collect(), None, Generator::Sobol, settings.seed)?;
    plan.check_rows(settings.n)?;
    let row = |row: usize| {
        let (mut units, mut theta) = (vec![0.0; width], vec![0.0; width]);
        plan.unit_row(row as u32, &mut units);
        of(&units, &mut theta);
        theta
    };
    Ok((0..settings.n).map(row).collect())
}

/// `n` draws of the walkers, evenly taken.
fn thinned(ensemble: &Ensemble, width: usize, n: usize) -> Vec<Vec<f64>> {
    let columns: Vec<Vec<f64>> = (0..width).map(|i| ensemble.of(i)).collect();
    let count = columns.first().map_or(0, Vec::len);
    (0..n).map(|row| columns.iter().map(|column| column[row * count / n]).collect()).collect()
}

/// 5, 50 and 95 % of a guess after the readings.
fn after(fit: &Fit, walked: Option<&Ensemble>, i: usize, natural: impl Fn(f64) -> f64) -> Quantiles {
    match walked {
        None => {
            let [low, high] = fit.interval(i, 0.9);
            [low, fit.theta[i], high].map(natural)
        }
        Some(ensemble) => {
            let rising = sorted(&ensemble.of(i));
            [0.05, 0.5, 0.95].map(|p| natural(quantile(&rising, p)))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Doubt;
    use super::*;
    use crate::error::Code;
    use crate::line::{Growth, Line};
    use crate::study::unwatched;

    fn oven() -> (Line, Line) {
        let line = |text: &str| Line::from_toml(text).unwrap();
        let now = line(include_str!("../../../../python/pinfilm/data/oven_now.toml"));
        (now, line(include_str!("../../../../python/pinfilm/data/oven_proposed.toml")))
    }

    fn guesses(subject: Subject) -> Uncertain {
        let names = ["wear.wear_coefficient_dry", "wear.wear_coefficient_boundary", "surface.dry_friction"];
        let doubts: Vec<_> = names.iter().map(|name| (name.to_string(), Doubt::Register)).collect();
        Uncertain::new(subject, &doubts).unwrap()
    }

    fn taught(uncertain: Uncertain, readings: Vec<Reading>, outputs: &[&str]) -> Result<Taught> {
        let outputs: Vec<String> = outputs.iter().map(|path| path.to_string()).collect();
        calibrate_line(uncertain, readings, &outputs, TeachSettings { n: 256, ..Default::default() }, &mut unwatched)
    }

    fn elongation(pct: f64, running_h: f64, changed_at_h: Option<f64>) -> Reading {
        Reading::Elongation { pct, error_pct: 0.05, running_h, changed_at_h }
    }

    /// Readings made with a dry wear coefficient of 4e-4 find it again, and the prediction narrows about the truth.
    #[test]
    fn three_elongations_teach_the_dry_wear() {
        let (mut truth, _) = oven();
        truth.wear.wear_coefficient_dry = 4e-4;
        let growth = Growth::of(&truth).unwrap();
        let readings = [4000.0, 8000.0, 12_000.0].map(|h| elongation(growth.elongation_pct(h), h, None)).to_vec();
        let found = taught(guesses(oven().0.into()), readings, &["wear.life_years"]).unwrap();
        let [low, middle, high] = found.after[0];
        assert!(low < 4e-4 && 4e-4 < high && high / low < 4.0, "{:?}", found.after);
        assert!((middle / 4e-4).ln().abs() < 0.4);
        // friction is not seen by elongation
        let width = |q: Quantiles| q[2] - q[0];
        assert!(width(found.after[2]) > 0.9 * width(found.before[2]));
        assert!(
            found.learnt.iter().any(|text| text.contains("wear_coefficient_dry") && text.contains(": learnt")),
            "{:#?}",
            found.learnt
        );
        let life = crate::line::evaluate(&truth).unwrap().wear.life_years;
        let [before, after] = found.predicted[0];
        assert!(after[0] < life && life < after[2] && width(after) < width(before), "{before:?} {after:?} {life}");
        assert!(found.computed.iter().zip(&found.readings).all(|(c, r)| (c[1] - r.observation().value).abs() < 0.05));
    }

    #[test]
    fn after_a_change_the_chain_grows_on_from_where_it_was() {
        let (now, proposed) = oven();
        let (slow, fast) = (Growth::of(&proposed).unwrap(), Growth::of(&now).unwrap());
        let readings = vec![elongation(0.5, 2000.0, None), elongation(0.5, 4000.0, Some(2000.0))];
        let found = taught(guesses((now, proposed).into()), readings, &["payback_days"]).unwrap();
        let at = fast.elongation_pct(2000.0);
        let age = slow.running_h(at);
        assert!((slow.elongation_pct(age) - at).abs() < 1e-9);
        // the second reading says that hardly anything was added
        assert!(found.computed[1][1] - found.computed[0][1] < 0.1, "{:?}", found.computed);
        assert!(found.predicted[0][1][1] > 0.0);
    }

    #[test]
    fn a_reading_that_nothing_explains_is_doubted() {
        // no friction makes this motor draw 5 A
        let readings = vec![Reading::Number { path: "drive.current_a".into(), value: 5.0, error: 0.1 }];
        let found = taught(guesses(oven().0.into()), readings, &["wear.life_years"]).unwrap();
        assert!(found.doubtful.iter().any(|text| text.contains("was read as 5")), "{:?}", found.doubtful);
    }

    #[test]
    fn the_headlines_are_results() {
        use super::super::headlines;
        let (now, proposed) = oven();
        for subject in [Subject::from(now.clone()), (now, proposed).into()] {
            let outcome = subject.outcome().unwrap();
            let paths: Vec<String> = headlines(&subject).iter().map(|path| path.to_string()).collect();
            Outputs::of(&subject, Some(&paths), Some(&outcome)).unwrap().only_numbers().unwrap();
        }
    }

    #[test]
    fn bad_readings_say_what_to_change() {
        let refused = |reading: Reading| {
            taught(guesses(oven().0.into()), vec![reading], &["wear.life_years"]).map(|_| ()).unwrap_err()
        };
        assert_eq!(refused(elongation(0.3, -1.0, None)).code, Code::OutOfRange);
        assert!(refused(elongation(0.3, 100.0, Some(50.0))).message.contains("(now, proposed)"));
        let number = |path: &str, error: f64| Reading::Number { path: path.into(), value: 1.0, error };
        assert!(refused(number("drive.curent_a", 0.1)).message.contains("drive.current_a"));
        assert_eq!(refused(number("drive.current_a", 0.0)).code, Code::OutOfRange);
        assert_eq!(
            taught(guesses(oven().0.into()), vec![], &["wear.life_years"]).map(|_| ()).unwrap_err().code,
            Code::Missing
        );
    }
}
