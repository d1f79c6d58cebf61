/** What an export says to whoever unpacks it. */
export const readMe = `This is a whole cellar book kept with Ratafia, written out in an open form.

tables/        the cellar for reading: open these in any spreadsheet. The numbers are rounded, and
               nothing is read back from here.
data/          the cellar itself, all of it, one file for each table of the book. JSON Lines: each
               line is one JSON object. Numbers are exact.
schemas/       what a line of each file under data/ looks like, as JSON Schema (draft 2020-12).
manifest.json  when and by which version this was made, what it holds, and the SHA-256 of each file.

Units are part of the names: capacityMl is in millilitres, massG in grams, strengthPctVol in percent
by volume at 20 degrees Celsius. Prices (priceMinor) are in the smallest unit of the currency that
manifest.json names. Instants are in UTC.

data/move.jsonl is the ledger. Nothing in it is ever changed: a move that was amended has another
line with the same id and the next version, and one that was struck has a last line whose payload
is null. Everything else about matter (what stands in which jar, how strong it is, how many bottles
are left) follows from the newest version of each move.

To go on with this cellar in Ratafia: Safekeeping, "Bring in an exported cellar".
`
