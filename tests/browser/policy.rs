//! What the page's content security policy keeps out. That the app itself lives
//! within it is shown by every other test: the browser writes each breach to the
//! console, and a test ends with a look at that.

use serde_json::json;

use crate::app;
use crate::harness::browse;

#[test]
fn what_is_not_the_apps_own_is_kept_out() {
    const TRY: &str = "
        const [act, done] = [arguments[0], arguments[arguments.length - 1]];
        addEventListener(
            'securitypolicyviolation',
            event => done(`${event.effectiveDirective} ${event.blockedURI.split('/')[0]}`),
            { once: true },
        );
        const added = (name, settings) =>
            document.head.append(Object.assign(document.createElement(name), settings));
        ({
            script: () => added('script', { textContent: 'window.wasRun = true' }),
            handler: () => document.body.setAttribute('onclick', 'window.wasRun = true'),
            style: () => added('style', { textContent: 'body { color: red }' }),
            attribute: () => document.body.setAttribute('style', 'color: red'),
            image: () => new Image().src = 'data:image/gif;base64,R0lGODlhAQABAAAAACw=',
            request: () => fetch('https://elsewhere.invalid/').catch(() => {}),
            base: () => added('base', { href: 'https://elsewhere.invalid/' }),
            frame: () => document.body.append(
                Object.assign(document.createElement('iframe'), { src: 'https://elsewhere.invalid/' })),
        })[act]();";
    browse(async |page| {
        page.open("").await;
        app::kept(page).await;
        for (act, breach) in [
            ("script", "script-src-elem inline"),
            ("handler", "script-src-attr inline"),
            ("style", "style-src-elem inline"),
            ("attribute", "style-src-attr inline"),
            ("image", "img-src data"),
            ("request", "connect-src https:"),
            ("base", "base-uri https:"),
            ("frame", "frame-src https:"),
        ] {
            assert_eq!(page.script_that_calls_back(TRY, vec![act.into()]).await, json!(breach));
        }
        assert_eq!(page.script("return window.wasRun ?? false", vec![]).await, json!(false));
        let stored = "return document.cookie";
        assert_eq!(page.script(stored, vec![]).await, json!(""));
        // The browser tells of each, as it would of one of the app's own.
        let told = page.console().await;
        assert!(told.iter().all(|it| it.message.contains("Content Security Policy")), "{told:?}");
        assert!(told.len() >= 8, "{told:?}");
    });
}
