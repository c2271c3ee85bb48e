### What is said of a calibration, and of a car by its name.

## The verdict

usable = usable
confirm-first = confirm first
do-not-select = do not select

## Why. $low and $high are the ends of the calibration's window, $window is both.

inside = The whole band lies inside { $window }.
inside-with-octane = The whole band lies inside { $window }, octane included.
too-weak = All of the band is below its window, which begins at { $low }.
too-strong = All of the band is above its window, which ends at { $high }.
maybe-too-weak = The low end of the band is below its window, which begins at { $low }: measure.
likely-too-weak = The blend is likely below its window, which begins at { $low }: only if a measurement says otherwise.
maybe-too-strong = The high end of the band is above its window, which ends at { $high }: measure.
likely-too-strong = The blend is likely above its window, which ends at { $high }: only if a measurement says otherwise.
octane-short = It needs RON { $needed }; only { $octane } can be counted on.
maybe-octane-short = It needs RON { $needed }; in the worst case only { $octane } can be counted on.
octane-unknown = It needs RON { $needed }, and the octane of all that is in the tank is not known.
fluid-absent = It counts on injection fluid, and there is none.
fluid-unchecked = It counts on injection fluid: check the level and that it flows.

## Fuelling that does not listen to the lambda sensor

leaner = { $percent } % leaner
richer = { $percent } % richer
# $richest and $leanest are how much leaner or richer.
open-loop-between = Open loop, from { $richest } to { $leanest } than it was written for.
open-loop-up-to = Open loop, up to { $off } than it was written for.

## Prices in two currencies

# $theirs and $ours are prices; $rate is what one of the other currency is worth.
exchanged = { $theirs } is { $ours }: 1 { $currency } is { $rate }, typed on { $day }.

## Cars

unnamed-car = Unnamed car
