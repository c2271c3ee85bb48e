## A fuel on offer

not-to-be-had = Not to be had
ethanol = Ethanol
ethanol-hint = What you expect
may-be = May be
may-be-hint = From–to: 70–85
octane = Octane, at least
price = Price
# Of a grade: the standard, what is known of it, and where from.
grade = { $standard }. { $note } Source: { $source }.
more = Name, how much there is, MON
name = Name
limit = At most
limit-hint = A can, say
mon = MON, at least
use-all = Use all of that
keep = Keep among my fuels
kept = Kept among your fuels.
remove = Remove

## Adding one

add-a-fuel = Add a fuel
add = Add
another = Another fuel, to be filled in
# $fuel is one that the person keeps.
my = My { $fuel }
# The name of one that is added without a name.
fuel = Fuel { $number }
