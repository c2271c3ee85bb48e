use fillwright::logbook::{Answer, Printer};
use fillwright::quantity::Volume;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::Drawn;

/// The picture's own units.
const WIDTH: f64 = 156.0;
const TOP: f64 = 14.0;
const BOTTOM: f64 = 346.0;
const LEFT: f64 = 64.0;
const RIGHT: f64 = 106.0;

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

fn height(fraction: f64) -> f64 {
    BOTTOM - fraction.clamp(0.0, 1.0) * (BOTTOM - TOP)
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
    let mut text = format!(
        "Sight glass of a {} tank: {} in it",
        printer.volume(tank.capacity),
        printer.volume(tank.level.expected())
    );
    for step in &answer.steps {
        let name = &answer.asked.fuels[step.fuel].name;
        text += &format!(", then {} of {name}", printer.volume(step.volume));
    }
    if let Some(blend) = &answer.blend {
        text += &format!(
            ". The blend is {}, at worst {}.",
            printer.grade(blend.share.expected()),
            printer.grade_band(blend.share)
        );
    }
    text
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
    let x = |share: f64| height(share);
    let hatches: Vec<_> = picture
        .layers
        .iter()
        .enumerate()
        .map(|(index, layer)| {
            let stripe = 8.0 * layer.share;
            view! {
                <pattern
                    id=format!("hatch-{index}")
                    width="8"
                    height="8"
                    patternUnits="userSpaceOnUse"
                    patternTransform="rotate(45)"
                >
                    <rect class="petrol" width="8" height="8"></rect>
                    <rect class="ethanol" width=stripe.to_string() height="8"></rect>
                </pattern>
            }
        })
        .collect();
    let layers: Vec<_> = picture
        .layers
        .iter()
        .enumerate()
        .map(|(index, layer)| {
            let y = height(layer.to);
            view! {
                <rect
                    class="layer edge"
                    x=LEFT.to_string()
                    width=(RIGHT - LEFT).to_string()
                    y=y.to_string()
                    height=(height(layer.from) - y).max(0.0).to_string()
                    fill=format!("url(#hatch-{index})")
                ></rect>
            }
        })
        .collect();
    let ticks: Vec<_> = [0_u32, 25, 50, 75, 100]
        .into_iter()
        .map(|percent| {
            let y = height(f64::from(percent) / 100.0);
            view! {
                <line class="mark-line" x1=RIGHT.to_string() x2=(RIGHT + 5.0).to_string() y1=y.to_string() y2=y.to_string()></line>
                <text x=(WIDTH - 1.0).to_string() y=(y + 5.0).to_string() text-anchor="end">
                    {format!("E{percent}")}
                </text>
            }
        })
        .collect();
    let (low, high) = picture.worst;
    let bracket =
        format!("M{a} {top} h6 V{bottom} h-6", a = RIGHT + 3.0, top = x(high), bottom = x(low));
    let (uncertain_low, uncertain_high) = picture.level;
    let dots_y = height(uncertain_high);
    let aim = f64::midpoint(picture.aim.0, picture.aim.1);
    let here = x(picture.expected);
    view! {
        <svg class="glass" viewBox=format!("0 0 {WIDTH} 360") role="img" aria-label=picture.words>
            <defs>
                {hatches}
                <pattern id="dots" width="6" height="6" patternUnits="userSpaceOnUse">
                    <circle class="dots" cx="2" cy="2" r="1.1"></circle>
                </pattern>
            </defs>
            <rect
                class="wall"
                x=LEFT.to_string()
                y=TOP.to_string()
                width=(RIGHT - LEFT).to_string()
                height=(BOTTOM - TOP).to_string()
                rx="4"
            ></rect>
            {layers}
            <rect
                x=LEFT.to_string()
                width=(RIGHT - LEFT).to_string()
                y=dots_y.to_string()
                height=(height(uncertain_low) - dots_y).max(0.0).to_string()
                fill="url(#dots)"
            ></rect>
            <line class="mark-line" x1=(LEFT - 8.0).to_string() x2=LEFT.to_string() y1=TOP.to_string() y2=TOP.to_string()></line>
            <text x=(LEFT - 10.0).to_string() y=(TOP + 5.0).to_string() text-anchor="end">"brim"</text>
            <line
                class="reserve"
                x1=(LEFT - 8.0).to_string()
                x2=RIGHT.to_string()
                y1=height(picture.reserve).to_string()
                y2=height(picture.reserve).to_string()
            ></line>
            <text x=(LEFT - 10.0).to_string() y=(height(picture.reserve) + 5.0).to_string() text-anchor="end">
                "reserve"
            </text>
            {ticks}
            <path class="bracket" d=bracket></path>
            <circle class="dots" cx=(RIGHT + 9.0).to_string() cy=here.to_string() r="4"></circle>
            <path
                class="aim"
                d=format!("M{} {} l-7 -4 v8 z", RIGHT + 2.0, x(aim))
            ></path>
        </svg>
    }
}
