### Why something stored, a file, a link or a code cannot be read or made.

## What was stored

storage-unavailable = This browser does not let the page store anything, so entries last only until it is closed. A normal (not private) window keeps them; an export keeps them too.
storage-full = The last change could not be stored: this page's storage is full. It holds until the page is closed. Export everything, then forget what you no longer need.
# $reason is the browser's own word for it.
storage-refused = The last change could not be stored ({ $reason }). It holds until the page is closed. Export everything, to be safe.
# $reason is one of those under “Documents”.
stored-unreadable = What was stored cannot be read: { $reason }. It is kept aside.
stored-rebuilt = What was stored cannot be read: { $reason }. It is kept aside, and what is on show was put together from the last copy and the entries of the log: look through it.
stored-blocked = What was stored cannot be read, and there is no room to keep it aside. Until there is, nothing new is stored over it. Download it, then forget it.
entries-unreadable = { $count } of the stored entries cannot be read and are kept aside; of { $restored } an earlier copy is on show.

## Documents: each stands after a colon, and a full stop follows

document-too-new = this was written by a later version (schema { $found }); this version reads schema { $read }: update, or keep the text
document-too-large = { $bytes } bytes are too many; at most { $most } are read
# $reason is what the parser of JSON says, in English, or one of the next two.
no-document = this is not a stored document: { $reason }
no-number = { $number } is no number of a fuel or a part
same-identity = two cars have the identity { $identity }

## Files that were chosen, likewise

file-too-large = the file has { $bytes } bytes; at most { $most } are read
file-closed = the browser could not open the file: choose it again
file-no-text = the file is no text in UTF-8: save it as one and choose it again

## Links, likewise

link-too-long = the link has { $length } characters; at most { $most } are read: ask for the file that an export makes
too-much-for-a-link = this takes a link of { $length } characters, and at most { $most } arrive everywhere: send the file instead that “Export everything” under Car makes
link-of-no-kind = the link does not begin as a shared fill, car or trip does: copy it anew, from its beginning to its end
link-too-new = the link has the form { $found } of a later version; this version reads form { $read }: update, then open it again
link-damaged = the link is incomplete or damaged: copy it anew, from its beginning to its end
link-payload-too-large = the link unpacks to more than { $most } bytes, which nobody typed: do not use it
link-holds-more = { $kind ->
    [fill] the link says that it holds a fill, but holds a log or other cars too: do not use it
    [car] the link says that it holds a car, but holds a log or other cars too: do not use it
   *[trip] the link says that it holds a trip, but holds a log or other cars too: do not use it
}
link-blank = { $kind ->
    [fill] there is no fill in it yet: enter one first
    [car] there is no car in it yet: enter one first
   *[trip] there is no trip in it yet: enter one first
}
link-from-the-log = it starts from the log, and what is in the tank cannot be worked out from there: put right what is missing, or type what is in it

## What of a shared thing is out of bounds, likewise

text-too-long = the text that begins “{ $quoted }” has { $length } characters; at most { $most } are shared by link: shorten it, or export everything as a file
# $code is the number of the character in hexadecimal digits.
control-character = a text holds the control character U+{ $code }, which could hide what it says: type the text “{ $quoted }” anew
list-too-long = a list has { $length } entries; at most { $most } are shared by link: shorten it, or export everything as a file

## Codes to scan, likewise

picture-too-long = { $bytes } characters are more than a QR code can hold: send the link itself
