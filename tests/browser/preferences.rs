//! What people tell their system that they need: less motion, more contrast, its own
//! colours. Contrast is measured here by the formula of WCAG 2.2, of what the browser says
//! it draws; axe measures texts too, but neither borders nor pictures.

use serde_json::{Value, json};

use crate::app;
use crate::harness::{Page, browse};
use crate::states::State;

/// What has less contrast than it needs: texts (their least is given), borders of what
/// can be acted on, marks in pictures, and the outline of what has the focus.
const TOO_FAINT: &str = r"
    const [least_of_text, least] = arguments;
    const rgba = text => {
        const found = text.match(/^rgba?\(([^)]+)\)$/);
        if (!found) throw new Error(`not understood: ${text}`);
        const [red, green, blue, alpha = 1] = found[1].split(/[ ,/]+/).map(Number);
        return [red, green, blue, alpha];
    };
    const over = ([red, green, blue, alpha], below) =>
        [red, green, blue].map((it, at) => it * alpha + below[at] * (1 - alpha));
    const luminance = colour => {
        const [red, green, blue] = colour.map(it => it / 255)
            .map(it => it <= 0.04045 ? it / 12.92 : ((it + 0.055) / 1.055) ** 2.4);
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const contrast = (one, other) => {
        const [dark, light] = [one, other].map(luminance).sort((a, b) => a - b);
        return (light + 0.05) / (dark + 0.05);
    };
    // What an element stands on: its own ground and those around it, down to an opaque one.
    const ground = element => {
        const layers = [];
        for (let at = element; at; at = at.parentElement) {
            layers.push(rgba(getComputedStyle(at).backgroundColor));
            if (layers.at(-1)[3] === 1) break;
        }
        if (layers.at(-1)[3] !== 1) throw new Error('nothing opaque');
        return layers.reverse().reduce((below, layer) => over(layer, below), [0, 0, 0]);
    };
    const seen = element => element.checkVisibility({ visibilityProperty: true })
        && !element.closest('.visually-hidden, .skip, .sheet');
    const wrong = [];
    const tell = (what, found, element) => wrong.push(
        `${what} ${found.toFixed(2)}: ${element.outerHTML.replace(/\s+/g, ' ').slice(0, 140)}`);

    const forced = matchMedia('(forced-colors: active)').matches;
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (texts.nextNode()) {
        const element = texts.currentNode.parentElement;
        if (!texts.currentNode.data.trim() || !seen(element)) continue;
        const { color, fill } = getComputedStyle(element);
        const below = ground(element);
        const ink = over(rgba(element.closest('svg') ? fill : color), below);
        // Under forced colours the browser lays the page's ground under words, unless told not to.
        const has_plate = forced && getComputedStyle(element).forcedColorAdjust === 'auto';
        const found = contrast(ink, has_plate ? ground(document.body) : below);
        if (found < least_of_text) tell('text', found, element);
    }

    const edge = element => {
        const { borderTopColor, borderTopWidth, borderTopStyle, backgroundColor } =
            getComputedStyle(element);
        const below = ground(element.parentElement);
        const own = contrast(over(rgba(backgroundColor), below), below);
        if (borderTopStyle === 'none' || parseFloat(borderTopWidth) < 1) return own;
        return Math.max(own, contrast(over(rgba(borderTopColor), below), below));
    };
    const controls = '.control, select, button, .options label, label.button';
    for (const element of document.querySelectorAll(controls)) {
        if (!seen(element)) continue;
        const found = edge(element);
        if (found < least) tell('border', found, element);
    }

    // Lines that help the eye along, and grounds whose lines or names tell what they are.
    const helps = '.grid, .hatch, .band, .window, .wall, .layer, .code *, pattern *';
    const shapes = 'svg :is(path, line, rect, circle, polyline, polygon)';
    for (const shape of document.querySelectorAll(shapes)) {
        const box = shape.getBBox();
        if (!seen(shape) || shape.matches(helps) || !(box.width + box.height)) continue;
        const style = getComputedStyle(shape);
        const below = ground(shape.ownerSVGElement);
        const paints = [
            [style.stroke, style.strokeOpacity, parseFloat(style.strokeWidth)],
            [style.fill, style.fillOpacity, 1],
        ];
        const found = paints
            .filter(([paint, opacity, width]) => paint.startsWith('rgb') && opacity > 0 && width > 0)
            .map(([paint, opacity]) => {
                const [red, green, blue, alpha] = rgba(paint);
                return contrast(over([red, green, blue, alpha * opacity], below), below);
            });
        if (found.length && Math.max(...found) < least) tell('mark', Math.max(...found), shape);
    }

    const stops = 'a[href], button, input, select, textarea, summary, [tabindex=\'0\']';
    for (const stop of document.querySelectorAll(stops)) {
        if (!seen(stop)) continue;
        stop.focus({ focusVisible: true, preventScroll: true });
        const shown = [stop, stop.parentElement, stop.closest('label')].find(it =>
            it && getComputedStyle(it).outlineStyle !== 'none' && getComputedStyle(it).opacity > 0);
        if (!shown) { tell('no outline', 0, stop); continue; }
        const below = ground(shown.parentElement);
        const found = contrast(over(rgba(getComputedStyle(shown).outlineColor), below), below);
        if (found < least) tell('outline', found, stop);
    }
    document.activeElement.blur();

    const sets = [
        ...[...document.querySelectorAll('.options .row')].map(it =>
            [...it.querySelectorAll('label')].map(it => [it.matches(':has(:checked)'), it])),
        [...document.querySelectorAll('nav a')].map(it => [it.hasAttribute('aria-current'), it]),
    ];
    for (const set of sets) {
        const chosen = set.find(([is, it]) => is && seen(it))?.[1];
        const other = set.find(([is, it]) => !is && seen(it))?.[1];
        if (!chosen || !other) continue;
        const signs = it => {
            const { borderTopColor, borderBottomColor } = getComputedStyle(it);
            const below = ground(it);
            return [below, over(rgba(borderTopColor), below), over(rgba(borderBottomColor), below)];
        };
        const others = signs(other);
        const found = Math.max(...signs(chosen).map((it, at) => contrast(it, others[at])));
        if (found < least) tell('state', found, chosen);
    }
    return wrong;";

/// Each with the features that the system tells of.
const AS_IS: [&[(&str, &str)]; 2] =
    [&[("prefers-color-scheme", "light")], &[("prefers-color-scheme", "dark")]];
const MORE_CONTRAST: [&[(&str, &str)]; 2] = [
    &[("prefers-color-scheme", "light"), ("prefers-contrast", "more")],
    &[("prefers-color-scheme", "dark"), ("prefers-contrast", "more")],
];
const FORCED_COLOURS: [&[(&str, &str)]; 2] = [
    &[("prefers-color-scheme", "light"), ("forced-colors", "active")],
    &[("prefers-color-scheme", "dark"), ("forced-colors", "active")],
];

/// Views with all that they can show.
const FULL: [State; 12] = [
    State::Welcome,
    State::FillMissing,
    State::FillOpen,
    State::FillImpossible,
    State::FillWrong,
    State::TankOpen,
    State::TankFillWrong,
    State::HardwareOpen,
    State::HardwareWrong,
    State::TripWrong,
    State::CarWrong,
    State::MethodsOpen,
];

#[test]
fn texts_borders_and_pictures_stand_out() {
    stands_out(&AS_IS, 4.5, 3.0);
}

#[test]
fn with_more_contrast_they_stand_out_more() {
    stands_out(&MORE_CONTRAST, 7.0, 4.5);
}

#[test]
fn in_the_colours_of_the_system_all_can_be_told() {
    stands_out(&FORCED_COLOURS, 4.5, 3.0);
}

#[test]
fn what_is_faint_is_noticed() {
    browse(async |page| {
        State::Fill.reach(page).await;
        assert_eq!(too_faint(page, 4.5, 3.0).await, [""; 0]);
        for (rule, what) in [
            ("h2 { color: #999 !important }", "text 2.85"),
            (".control { border-color: #ddd !important }", "border 1."),
            (".glass .bracket { stroke: #ccc !important }", "mark 1."),
            (":focus-visible { outline-color: #eee !important }", "outline 1."),
            (".options label { all: unset !important }", "state 1.00"),
        ] {
            spoil(page, rule).await;
            let found = too_faint(page, 4.5, 3.0).await;
            assert!(found.iter().any(|it| it.starts_with(what)), "{rule}: {found:#?}");
        }
    });
}

/// So who asks for less motion has it already.
#[test]
fn nothing_moves() {
    const MOVES: &str = r"
        const seconds = text => text.split(', ').map(it => parseFloat(it) * (it.endsWith('ms') ? 0.001 : 1));
        const longest = text => Math.max(...seconds(text));
        const wrong = document.getAnimations().map(it => `runs: ${it.effect.target.outerHTML.slice(0, 80)}`);
        for (const element of document.querySelectorAll('*'))
            for (const part of [null, '::before', '::after']) {
                const style = getComputedStyle(element, part);
                const { transitionDuration, animationName, animationDuration, scrollBehavior } = style;
                const moves = longest(transitionDuration) > 0.01
                    || animationName !== 'none' && longest(animationDuration) > 0.01
                    || scrollBehavior === 'smooth';
                if (moves) wrong.push(`moves: ${element.outerHTML.slice(0, 80)}`);
            }
        return wrong;";
    browse(async |page| {
        let moving = async || page.script(MOVES, vec![]).await;
        for state in [State::FillOpen, State::TankOpen, State::HardwareOpen, State::TripOpen] {
            state.reach(page).await;
            if state == State::FillOpen {
                page.type_in(app::LEVEL, "40").await;
                page.sees("40").await;
            }
            assert_eq!(moving().await, json!([]), "{state:?}");
            spoil(page, ".card { transition: all 1s }").await;
            assert_ne!(moving().await, json!([]), "{state:?}");
            spoil(page, "").await;
        }
    });
}

/// Adds a rule that should not be.
async fn spoil(page: &Page, rule: &str) {
    let add = "
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(arguments[0]);
        document.adoptedStyleSheets = [sheet];";
    page.script(add, vec![json!(rule)]).await;
}

fn stands_out(looks: &[&[(&str, &str)]], text: f64, other: f64) {
    browse(async |page| {
        let mut wrong = Vec::new();
        for state in FULL {
            state.reach(page).await;
            for look in looks {
                page.emulate("", look).await;
                let (_, last) = look[look.len() - 1];
                let (_, scheme) = look[0];
                page.screenshot(&format!("{}-{scheme}-{last}", state.name())).await;
                let faint = too_faint(page, text, other).await;
                wrong.extend(faint.into_iter().map(|it| format!("{state:?}, {scheme}: {it}")));
            }
            page.emulate("", &[]).await;
        }
        assert!(wrong.is_empty(), "{} are too faint:\n{}", wrong.len(), wrong.join("\n"));
    });
}

async fn too_faint(page: &Page, text: f64, other: f64) -> Vec<String> {
    let found = page.script(TOO_FAINT, vec![json!(text), json!(other)]).await;
    let found = found.as_array().expect("what is too faint");
    found.iter().filter_map(Value::as_str).map(str::to_owned).collect()
}
