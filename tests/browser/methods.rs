//! Where each number comes from: nothing is laid out before it is opened, and a link
//! leads to the very formula.

use fillwright::fuel::constants;
use fillwright::fuel::grades::catalogue;
use fillwright::{hardware, tank};

use crate::app;
use crate::harness::{Page, browse};

/// The example, at the Methods view.
async fn methods(page: &Page) {
    page.open("").await;
    page.click("button", app::EXAMPLE).await;
    page.click("link", "Methods").await;
    page.sees("Where does each number come from?").await;
}

/// So many elements there are.
async fn count(page: &Page, selector: &str) -> Option<i64> {
    const COUNT: &str = "return document.querySelectorAll(arguments[0]).length;";
    page.script(COUNT, vec![selector.into()]).await.as_i64()
}

#[test]
fn the_constants_are_those_of_the_core() {
    browse(async |page| {
        methods(page).await;
        assert_eq!(count(page, "#constants table").await, Some(0));
        page.open("#/methods/constants").await;
        page.becomes(Some(3), async || count(page, "#constants table").await).await;
        let all = constants::ALL.len() + hardware::constants::ALL.len() + tank::figures().len();
        let rows = count(page, "#constants tbody tr").await;
        assert_eq!(rows, i64::try_from(all).ok());
        // Recalled figures say so beside themselves.
        page.sees("common practice").await;
        page.sees("density of ethanol at 15 degC").await;
    });
}

#[test]
fn a_link_from_the_workings_leads_to_the_formula() {
    const OPEN: &str = "
        const methods = [...document.querySelectorAll('.method')];
        return methods.filter(it => it.open).map(it => it.id).join();";
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.sees("Makes E30").await;
        page.open("#/methods/octane").await;
        page.sees("moles in a litre of ethanol, mol/L").await;
        let open = page.script(OPEN, vec![]).await;
        assert_eq!(open.as_str(), Some("octane"));
        page.open("#/fill/workings").await;
        page.click("link", "All formulas and constants, with their sources").await;
        page.sees("Mean share of what is to be added").await;
    });
}

#[test]
fn every_grade_is_there_and_every_caution() {
    browse(async |page| {
        methods(page).await;
        page.open("#/methods/grades").await;
        let grades = i64::try_from(catalogue().count()).ok();
        page.becomes(grades, async || count(page, "#grades tbody tr").await).await;
        page.open("#/methods/cautions").await;
        page.sees("Methanol is toxic").await;
        page.open("#/methods/limits").await;
        page.sees("Volumes are taken as additive").await;
    });
}
