### Words that more than one feature uses.

entries = { $count ->
    [one] { $count } entry
   *[other] { $count } entries
}

# Parts of a list: the last is joined by a word, all others by commas.
and = { $others } and { $last }
or = { $others } or { $last }
