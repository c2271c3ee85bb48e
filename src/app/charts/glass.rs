//! The sight glass: the tank as a tall glass with what is in it and what is added.

use fillwright::answers::fill::FillAnswer;
use fillwright::message::keys::charts as keys;
use fillwright::quantity::Volume;
use fillwright::quantity::notation::Printer;
use leptos::prelude::*;

use super::svg::width_of;
use crate::app::fill_memos::FillMemos;
use crate::app::session::Session;
use crate::app::widgets::{Rows, said};

/// The picture's own units: whole numbers are fine enough.
const WIDTH: i32 = 166;
const TOP: i32 = 14;
const BOTTOM: i32 = 346;
const LEFT: i32 = 74;
const RIGHT: i32 = 116;
/// So much larger than in a chart are the letters here.
const LARGER: f64 = 1.2;
/// How far from the glass names end.
const NAME: i32 = 10;

/// One layer of fuel in the glass, from one level to another.
#[derive(Clone, Copy, Default, PartialEq)]
struct Layer {
    from: f64,
    to: f64,
    share: f64,
}

/// All numbers of the picture, as fractions of the tank or of neat ethanol.
#[derive(Clone, Default, PartialEq)]
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
    fn of(answer: &FillAnswer, printer: &Printer) -> Self {
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
fn words(answer: &FillAnswer, printer: &Printer) -> String {
    let tank = &answer.asked.problem.tank;
    let level = printer.volume(tank.level.expected());
    let mut glass = keys::Glass { capacity: printer.volume(tank.capacity), level }.say();
    for step in &answer.steps {
        let fuel = &answer.asked.fuels[step.fuel].name;
        glass = keys::GlassThen { glass, volume: printer.volume(step.volume), fuel }.say();
    }
    let Some(blend) = &answer.blend else { return glass };
    let share = printer.grade(blend.share.expected());
    keys::GlassBlend { glass, share, shares: printer.grade_band(blend.share) }.say()
}

/// The picture that the layers are part of.
#[derive(Clone, Copy)]
struct InGlass(Memo<Picture>);

impl InGlass {
    /// A part of the picture that follows it: an entry is answered sooner when only
    /// what changed is written to the page.
    fn part(self, read: impl Fn(&Picture) -> String + Send + Sync + 'static) -> Signal<String> {
        said(move || self.0.with(&read))
    }
}

/// The tank as a tall glass: what is in it, each addition as a layer, the brim
/// and the reserve on the left, the blend with its worst case on the right. The
/// hatched part of a layer's area is its ethanol share.
#[component]
pub(crate) fn SightGlass() -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let picture = InGlass(Memo::new(move |_| {
        fill_memos.answer().map_or_else(Picture::default, |answer| {
            session.printer.with(|printer| Picture::of(&answer, printer))
        })
    }));
    provide_context(picture);
    let count = Memo::new(move |_| picture.0.with(|it| (0_u32..).zip(&it.layers).count()));
    let ids = Signal::derive(move || (0_u32..).take(count.get()).collect());
    let dots = picture.part(|it| bar(it.level.1, it.level.0));
    let reserve = move |read: fn(i32) -> String| picture.part(move |it| read(height(it.reserve)));
    view! {
        <svg
            class="glass"
            viewBox=view_box()
            role="img"
            aria-label=picture.part(|it| it.words.clone())
        >
            <defs>
                <pattern id="glass-dots" width="6" height="6" patternUnits="userSpaceOnUse">
                    <circle class="dots" cx="2" cy="2" r="1.1"></circle>
                </pattern>
            </defs>
            <path class="wall" d=outline()></path>
            <Rows ids=ids row=|index| LayerInGlass(LayerInGlassProps { index }).into_any() />
            <path class="layer" d=dots fill="url(#glass-dots)"></path>
            <path class="mark-line" d=mark_line(TOP, LEFT)></path>
            {name(LEFT - NAME, (TOP + 5).to_string(), keys::BRIM.say().to_owned())}
            <path class="reserve" d=reserve(|y| mark_line(y, RIGHT))></path>
            {name(LEFT - NAME, reserve(|y| (y + 5).to_string()), keys::RESERVE.say().to_owned())}
            {scale()}
            <path class="bracket" d=picture.part(|it| bracket(it.worst))></path>
            <path class="dots" d=picture.part(|it| disc(it.expected))></path>
            <path class="aim" d=picture.part(|it| pointer(f64::midpoint(it.aim.0, it.aim.1)))></path>
        </svg>
    }
}

/// All of the picture, with room for longer names on its left.
fn view_box() -> String {
    let names = [keys::BRIM, keys::RESERVE].map(|it| LARGER * width_of(it.say()));
    let widest = names.into_iter().fold(0.0, f64::max);
    let left = whole((f64::from(LEFT - NAME) - widest).min(0.0));
    format!("{left} 0 {} 360", WIDTH - left)
}

fn outline() -> String {
    format!("M{LEFT} {TOP} V{BOTTOM} H{RIGHT} V{TOP} z")
}

/// A layer with its pattern: stripes as wide as its ethanol share of the period.
#[component]
fn LayerInGlass(index: u32) -> impl IntoView {
    let picture = expect_context::<InGlass>();
    let of_layer = move |read: fn(Layer) -> String| {
        picture.part(move |it| {
            let layer = (0_u32..).zip(&it.layers).find(|(at, _)| *at == index);
            read(layer.map(|(_, layer)| *layer).unwrap_or_default())
        })
    };
    let pattern = format!("glass-hatch-{index}");
    view! {
        <pattern
            id=pattern.clone()
            width="20"
            height="20"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45) scale(0.4)"
        >
            <path class="petrol" d="M0 0 h20 v20 H0 z"></path>
            <path
                class="ethanol"
                d=of_layer(|layer| format!("M0 0 h{} v20 H0 z", whole(20.0 * layer.share)))
            ></path>
        </pattern>
        <path
            class="layer edge"
            d=of_layer(|layer| bar(layer.to, layer.from))
            fill=format!("url(#{pattern})")
        ></path>
    }
}

/// A part of the glass between two levels.
fn bar(top: f64, bottom: f64) -> String {
    format!("M{LEFT} {} H{RIGHT} V{} H{LEFT} z", height(top), height(bottom))
}

/// A line at a level, from left of the glass.
fn mark_line(y: i32, to: i32) -> String {
    format!("M{} {y} H{to}", LEFT - 8)
}

fn name(x: i32, y: impl Into<Signal<String>>, name: String) -> AnyView {
    view! {
        <text x=x.to_string() y=y.into() text-anchor="end">
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
            view! {
                <path class="mark-line" d=format!("M{RIGHT} {y} h5")></path>
                {name(WIDTH - 1, (y + 5).to_string(), format!("E{percent}"))}
            }
            .into_any()
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
