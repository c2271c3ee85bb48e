### What was done, and what taking it back did: sentences without their full stop.

example-opened = Example opened
example-closed = Example closed
example-removed = Example removed
example-brought-back = Example brought back
fill-recorded = Fill recorded
fill-taken-back = Fill taken back
entry-added = Entry added
entry-taken-back = Entry taken back
entry-changed = Entry changed
entry-as-before = Entry as before
entry-removed = Entry removed
entry-brought-back = Entry brought back
entry-removed-again = Entry removed again
entry-cancelled = Entry cancelled
fuel-removed = Fuel removed
fuel-brought-back = Fuel brought back
calibration-removed = Calibration removed
calibration-brought-back = Calibration brought back
curve-removed = Curve removed
curve-brought-back = Curve brought back
table-imported = Table imported
table-as-before = Table as before
part-removed = Part removed
part-brought-back = Part brought back
stop-removed = Stop removed
stop-brought-back = Stop brought back
trip-goes-on-from-here = Trip goes on from here
trip-and-fill-as-before = Trip and fill as before
car-added = Car added
car-taken-back = Car taken back
car-removed = Car removed
car-brought-back = Car brought back
car-removed-again = Car removed again
file-merged = File merged
everything-as-before = Everything as before
everything-replaced-by-the-file = Everything replaced by the file
shared-fill-in-use = Shared fill in use
fill-as-before = Fill as before
shared-car-in-use = Shared car in use
car-as-before = Car as before
shared-trip-in-use = Shared trip in use
trip-as-before = Trip as before

# What a button takes back: $deed is one of those above.
undo = Undo: { $deed }
