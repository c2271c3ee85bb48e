## What is always there

skip = Skip to the content
views = Views
example = Example
invented = Invented example.
every-figure = Every figure is made up.
own-car = Enter my own car
export-now = Export now
download-aside = Download what is kept aside

## The names of the views, on their tabs

fill = Fill
tank = Tank
hardware = Hardware
trip = Trip
car = Car
methods = Methods
shared = Shared

## Versions, and what works without a network

new-version = A new version is ready.
use-it = Use it now
later = Later
kept = Kept on this device: from now on it works without a network too.
planner-missing = The part that plans could not be loaded: reload the page.

## What is still to be filled in, or wrong

to-fill-in = Still to fill in
is-wrong = Something is wrong
and-more = And { $count } more.
# $what is how many entries are wrong or missing.
not-updated-alone = Not updated
not-updated = Not updated: { $what }
not-kept = Not kept yet: { $what }

## Where there is no calibration; the second is a link

no-calibration = No calibration is entered.
enter-yours = Enter yours under Car.

## Taking back

undo = Undo

## Sheets for the printer

print = Print
invented-sheet = Invented example: every figure is made up.
sources = Sources

## Workings, folded; the second is a link to Methods

workings = Workings and sources
all-formulas = All formulas and constants, with their sources
