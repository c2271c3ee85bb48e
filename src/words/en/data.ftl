## All that was entered, out and in

data = Data
data-hint = All of it is on this device only. An export is a copy to keep, or to take to another device.
export-all = Export everything
export-log = Export the log as a table
nothing-taken = Nothing was taken in: { $why }.
import = Import an export
import-hint = An export from another device brings its cars and their logs.
merge-hint = Merging adds what is new and leaves your settings and forms. Replacing takes the file for everything; what is not in it is removed. Both can be undone.
use-it = Use it
merge = Merge
replace = Replace everything
cancel = Cancel

## What a file would bring, in a list after the name of a car

a-new-car = a new car
no-entries = no entries
entries-new = { $count ->
    [one] { $count } entry new
   *[other] { $count } entries new
}
entries-changed = { $count } changed
entries-same = { $count } as here
entries-removed = { $count } of them removed
days = { $from } to { $to }

## What was removed, or cannot be read

removed-entries = { $count ->
    [one] { $count } removed entry
   *[other] { $count } removed entries
}
removed-cars = { $count ->
    [one] { $count } removed car
   *[other] { $count } removed cars
}
unreadable = { $count ->
    [one] { $count } text that could not be read
   *[other] { $count } texts that could not be read
}
still-kept = Still kept: { $what }.
forget = Forget for good
forget-sure = Press again: this cannot be undone
download-unreadable = Download the unreadable texts

## Sharing by link

share-fill = Share this fill
share-car = Share this car
share-trip = Share this trip
share-short = As a link, or a code to scan
no-link = There is no link: { $why }.
whoever-has-it = Whoever has the link can read all of that; it is not kept anywhere else.
copied = Copied.
not-copied = The browser did not let it be copied: select the link and copy it.
not-handed-over = The device could not hand it over: copy the link.
link = Link
copy-link = Copy the link
send-it = Send it …
no-code = There is no code: { $why }.
code = QR code of the link above

## What somebody shared

unreadable-link = This link cannot be read
unreadable-link-means = Nothing was taken in, and nothing has changed: { $why }.
go-to-fill = Go to Fill
only-shown = It is only shown so far: nothing of yours has changed.
not-yours = Its figures are somebody else's. Look through them before you rely on them.
take-it = Take it
leave-it = Leave it
