//! The field that adds a fuel.

use fillwright::document::{Field, FuelPart, NewFuel, OfferedAt};
use fillwright::fuel::grades::catalogue;
use fillwright::message::keys::fuels as keys;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::{Button, Choices};

/// The key of a choice in the list of fuels to add.
const OTHER: &str = "other";
const OWN: &str = "own-";

/// What adds a fuel: one of the owner's, one of the catalogue, or another.
#[component]
pub(super) fn AddFuel(place: OfferedAt) -> impl IntoView {
    let session = Session::here();
    let to_add = RwSignal::new(OTHER.to_owned());
    let choices =
        Memo::new(move |_| {
            let mut choices = vec![(OTHER.to_owned(), keys::ANOTHER.say().to_owned())];
            session.document.with(|it| {
                choices.extend(
                    it.here.car.own_fuels.iter().map(|own| {
                        (format!("{OWN}{}", own.id), keys::My { fuel: &own.name }.say())
                    }),
                );
            });
            choices.extend(catalogue().map(|grade| {
                let (name, region) = (grade.name.say(), grade.region.say());
                (grade.id.to_owned(), format!("{name} ({region})"))
            }));
            choices
        });
    let add = Callback::new(move |()| {
        let key = to_add.get_untracked();
        let mut added = None;
        session.document.update(|it| {
            let fuel = chosen(&key);
            added = it.offer(place, fuel, |count| match fuel {
                NewFuel::Grade(grade) => grade.name.say().to_owned(),
                NewFuel::Own(_) | NewFuel::Other => keys::Fuel { number: count.to_string() }.say(),
            });
        });
        if let Some(added) = added {
            let part = Some(Field::Fuel(added, FuelPart::Share).id());
            session.route.update(|route| route.part = part);
        }
    });
    let id = match place {
        OfferedAt::Pump => "fuel-to-add".to_owned(),
        OfferedAt::Stop(id) => format!("fuel-to-add-{id}"),
    };
    view! {
        <div class="add">
            <Choices
                id=id
                label=keys::ADD_A_FUEL.say()
                choices=choices.into()
                chosen=to_add.into()
                on_choice=Callback::new(move |key| to_add.set(key))
            />
            <Button label=keys::ADD.say() on_press=add />
        </div>
    }
}

/// The fuel that a choice names.
fn chosen(key: &str) -> NewFuel {
    let own = key.strip_prefix(OWN).and_then(|id| id.parse::<u32>().ok()).map(NewFuel::Own);
    let grade = || catalogue().find(|grade| grade.id == key).map(NewFuel::Grade);
    own.or_else(grade).unwrap_or(NewFuel::Other)
}
