## What is read of a chart

# $chart is its title.
read = Read { $chart }
# Where the crosshair stands.
at = at { $place }
no-figures = No figures yet
no-figure = no figure
value = { $line } { $value }
value-between = { $line } { $value }, between { $low } and { $high }
fill = fill
level-read = level read
share-read = share read
other-entry = other entry

## What lies beyond a chart

up-to = { $line }, up to { $value } at { $place }
down-to = { $line }, down to { $value } at { $place }
beyond = Beyond the chart: { $what }.

## A chart as a table

as-a-table = As a table
noted = Noted
newest-first = { $what }, newest first
newest-first-cut = { $what }, newest first; { $older } older rows are left out
at-most = { $name }: at most { $bound }
at-least = { $name }: at least { $bound }
level-from-to = { $level } from { $from } to { $to }
value-at = { $value } at { $place }
window = { $name }: { $from } to { $to }

## The sight glass, which shows the tank in layers

brim = brim
reserve = reserve
glass = Sight glass of a { $capacity } tank: { $level } in it
# $glass is what it says so far.
glass-then = { $glass }, then { $volume } of { $fuel }
glass-blend = { $glass }. The blend is { $share }, at worst { $shares }.
