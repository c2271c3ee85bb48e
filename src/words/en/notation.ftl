### Words that stand in a figure.

band = { $low } to { $high }
between = between { $low } and { $high }
# The same in per cent, and with a unit after both.
band-percent = { $low } to { $high } %
band-unit = { $low } to { $high } { $unit }
mile = mile
at-the-crank = { $power } at the crank
at-the-wheels = { $power } at the wheels
# An air-fuel ratio on the scale of petrol, with the one that belongs to lambda 1.
afr-of-petrol = AFR { $ratio } (λ 1 is { $one }, petrol scale)
afr-of-blend = AFR { $ratio } (λ 1 is { $one }, this blend)
