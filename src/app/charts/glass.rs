use fillwright::logbook::{Answer, Printer};
use fillwright::quantity::Volume;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::Drawn;

/// The picture's own units: whole numbers are fine enough.
const WIDTH: i32 = 166;
const TOP: i32 = 14;
const BOTTOM: i32 = 346;
const LEFT: i32 = 74;
const RIGHT: i32 = 116;

/// One layer of fuel in the glass, from one level to another.
#[derive(Clone, PartialEq)]
struct Layer {
    from: f64,
    to: f64,
    share: f64,
}

/// All numbers of the picture, as fractions of the tank or of neat ethanol.
#[derive(Clone, PartialEq)]
struct Picture {
    layers: Vec<Layer>,
    level: (f64, f64),
    reserve: f64,
    worst: (f64, f64),
    expected: f64,
    aim: (f64, f64),
    words: String,
}

fn height(fraction: f64) -> i32 {
    BOTTOM - whole(fraction.clamp(0.0, 1.0) * f64::from(BOTTOM - TOP))
}

#[expect(clippy::cast_possible_truncation, reason = "a coordinate inside the picture")]
fn whole(value: f64) -> i32 {
    value.round() as i32
}

impl Picture {
    fn of(answer: &Answer, printer: &Printer) -> Self {
        let problem = &answer.asked.problem;
        let tank = &problem.tank;
        let part = |volume: Volume| (volume / tank.capacity).value;
        let mut layers = vec![Layer {
            from: 0.0,
            to: part(tank.level.expected()),
            share: tank.share.expected().fraction(),
        }];
        let already = problem.offers.iter().enumerate().map(|(fuel, offer)| (fuel, offer.poured));
        let to_pour = answer.steps.iter().map(|step| (step.fuel, step.volume));
        for (fuel, volume) in already.chain(to_pour) {
            let from = layers.last().map_or(0.0, |layer| layer.to);
            let to = from + part(volume);
            if to > from {
                layers.push(Layer {
                    from,
                    to,
                    share: problem.offers[fuel].share.expected().fraction(),
                });
            }
        }
        let share = answer.blend.as_ref().map(|blend| blend.share);
        let worst = share.map_or((0.0, 0.0), |s| (s.low().fraction(), s.high().fraction()));
        Self {
            level: (part(tank.level.low()), part(tank.level.high())),
            reserve: part(tank.reserve),
            worst,
            expected: share.map_or(0.0, |share| share.expected().fraction()),
            aim: (problem.aim.low().fraction(), problem.aim.high().fraction()),
            words: words(answer, printer),
            layers,
        }
    }
}

/// The picture in words.
fn words(answer: &Answer, printer: &Printer) -> String {
    let tank = &answer.asked.problem.tank;
    let tank = format!(
        "Sight glass of a {} tank: {} in it",
        printer.volume(tank.capacity),
        printer.volume(tank.level.expected())
    );
    let steps = answer.steps.iter().map(|step| {
        let name = &answer.asked.fuels[step.fuel].name;
        format!(", then {} of {name}", printer.volume(step.volume))
    });
    let blend = answer.blend.as_ref().map(|blend| {
        let share = printer.grade(blend.share.expected());
        format!(". The blend is {share}, at worst {}.", printer.grade_band(blend.share))
    });
    std::iter::once(tank).chain(steps).chain(blend).collect()
}

/// The tank as a tall glass: what is in it, each addition as a layer, the brim
/// and the reserve on the left, the blend with its worst case on the right. The
/// hatched part of a layer's area is its ethanol share.
#[component]
pub(crate) fn SightGlass() -> impl IntoView {
    let state = State::here();
    let picture = Callback::new(move |()| {
        let Some(answer) = state.answer() else { return Vec::new() };
        let picture = state.printer.with(|printer| Picture::of(&answer, printer));
        vec![drawn(picture).into_any()]
    });
    view! { <Drawn what=picture /> }
}

fn drawn(picture: Picture) -> impl IntoView {
    let hatches: Vec<_> = picture.layers.iter().enumerate().map(hatch).collect();
    let layers: Vec<_> = picture.layers.iter().enumerate().map(layer).collect();
    let dots = bar(height(picture.level.1), height(picture.level.0), "glass-dots", "layer");
    view! {
        <svg class="glass" viewBox=format!("0 0 {WIDTH} 360") role="img" aria-label=picture.words>
            <defs>
                {hatches}
                <pattern id="glass-dots" width="6" height="6" patternUnits="userSpaceOnUse">
                    <circle class="dots" cx="2" cy="2" r="1.1"></circle>
                </pattern>
            </defs>
            <path class="wall" d=outline()></path>
            {layers}
            {dots}
            {mark(1.0, "brim", LEFT, "mark-line")}
            {mark(picture.reserve, "reserve", RIGHT, "reserve")}
            {scale()}
            <path class="bracket" d=bracket(picture.worst)></path>
            <path class="dots" d=disc(picture.expected)></path>
            <path class="aim" d=pointer(f64::midpoint(picture.aim.0, picture.aim.1))></path>
        </svg>
    }
}

fn outline() -> String {
    format!("M{LEFT} {TOP} V{BOTTOM} H{RIGHT} V{TOP} z")
}

/// The pattern of a layer: stripes as wide as its ethanol share of the period.
fn hatch((index, layer): (usize, &Layer)) -> AnyView {
    let stripe = format!("M0 0 h{} v20 H0 z", whole(20.0 * layer.share));
    view! {
        <pattern
            id=format!("glass-hatch-{index}")
            width="20"
            height="20"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45) scale(0.4)"
        >
            <path class="petrol" d="M0 0 h20 v20 H0 z"></path>
            <path class="ethanol" d=stripe></path>
        </pattern>
    }
    .into_any()
}

fn layer((index, layer): (usize, &Layer)) -> AnyView {
    let pattern = format!("glass-hatch-{index}");
    bar(height(layer.to), height(layer.from), &pattern, "layer edge")
}

/// A part of the glass, filled with a pattern.
fn bar(top: i32, bottom: i32, pattern: &str, class: &'static str) -> AnyView {
    let d = format!("M{LEFT} {top} H{RIGHT} V{bottom} H{LEFT} z");
    view! { <path class=class d=d fill=format!("url(#{pattern})")></path> }.into_any()
}

/// A level with its name on the left.
fn mark(level: f64, name: &'static str, to: i32, class: &'static str) -> AnyView {
    let y = height(level);
    let line = format!("M{} {y} H{to}", LEFT - 8);
    label(LEFT - 10, y, name.to_owned(), line, class)
}

fn label(x: i32, y: i32, name: String, line: String, class: &'static str) -> AnyView {
    view! {
        <path class=class d=line></path>
        <text x=x.to_string() y=(y + 5).to_string() text-anchor="end">
            {name}
        </text>
    }
    .into_any()
}

/// The scale of shares on the right.
fn scale() -> Vec<AnyView> {
    [0_u32, 25, 50, 75, 100]
        .into_iter()
        .map(|percent| {
            let y = height(f64::from(percent) / 100.0);
            let line = format!("M{RIGHT} {y} h5");
            label(WIDTH - 1, y, format!("E{percent}"), line, "mark-line")
        })
        .collect()
}

/// The worst case, beside the scale.
fn bracket((low, high): (f64, f64)) -> String {
    format!("M{} {} h6 V{} h-6", RIGHT + 3, height(high), height(low))
}

/// A disc where the blend is expected.
fn disc(share: f64) -> String {
    format!("M{} {} a4 4 0 1 0 8 0 a4 4 0 1 0 -8 0 z", RIGHT + 5, height(share))
}

/// A pointer where the blend is wanted.
fn pointer(share: f64) -> String {
    format!("M{} {} l-8 -5 v10 z", RIGHT + 1, height(share))
}
