### Methods of the trip: titles, what to know, names of lines, what symbols mean.

## trip

title-trip = A trip's plan, and how far it can be from the best
trip-1 = What is bought today binds every stop after it. Counted in energy, the only products in the model are level times composition. Each is replaced by the four planes around it, of which one is below: what comes out is a linear programme whose optimum no plan can undercut.
trip-2 = Where the planes are too far off, a range is split in two and both halves are looked at. Every plan is run through the exact course of the route before it is shown. So the search can be stopped at any time: the plan holds, and the bound beside it is true.
trip-3 = That a route is impossible is proved in the same way: no part of any range is left in which a plan could be.
level-after-stop-energy = level after a stop, as energy
part-ethanol = part of it that is ethanol
least-level-range-looked = least level in the range looked at
least-part-range-looked = least part in the range looked at
cost-plan = cost of the plan
cost-no-plan-can-undercut = cost that no plan can undercut
