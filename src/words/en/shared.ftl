### Words that more than one feature uses.

entries = { $count ->
    [one] { $count } entry
   *[other] { $count } entries
}
