/** The page for whoever finds a bag when nobody is left to ask: what it is, what is where, and how each part opens. */
export function readMeFirst(title: string, date: string, reels: number): string {
  return `READ ME FIRST
=============

This folder is a copy of a catalogue of studio tapes: "${title}".
It was made on ${date}. It describes ${reels} reels.
Nothing in it needs the program that made it.

WHAT IS WHERE
-------------
data/collection/    The catalogue itself. One text file for each reel, and for each
                    record, machine, type of tape, place and person that has to do
                    with them. They are plain text (UTF-8): any text editor opens
                    them. Between the two lines "---" stand facts, a key and a value
                    a line; below them the owner's own account. Photographs lie
                    beside the entry that they belong to, as the camera made them.
data/site/          The same as pages for a web browser. Where they don't open from
                    the disk, have a web server show the folder, for example with
                    "python3 -m http.server" inside it. The entries say the same.
data/site/catalogue.json
                    The same facts for programs, with what was worked out.
manifest-sha512.txt A checksum of every file in data/, so that one can prove that
                    none has changed: "sha512sum -c manifest-sha512.txt".
                    The folder follows the open standard BagIt (RFC 8493).

HOW TO READ AN ENTRY
--------------------
status: held        the owner had the tape; lent, elsewhere, missing, gone and
                    destroyed mean what they say
a missing key       nobody recorded it
none                known to be none
1974-03, 1974~, 197X
                    dates as far as they are known (ISO 8601-2, EDTF)
readings:           what a label in a photograph says, letter by letter; ? is a
                    character that can't be read, {1|7} one of these

THE TAPES THEMSELVES
--------------------
They may be the only copies. Don't play, wind, bake or clean a tape to see what it
is: tapes of some years shed, stick or break, and heat, mould and solvents harm
people and tapes. Ask someone with experience in transferring old tapes first. Keep
them cool and dry, upright, away from magnets.

Owning a tape is not owning the rights in what is on it.
Entries may hold names, addresses and prices: show them to nobody without thinking.
`;
}
