/**
 * What a zip from elsewhere may be. Names are never used as paths here, but a file with names that
 * climb out was made to do harm to some program, and is refused whole.
 */
import type { OpenZip } from '../zip-reader.ts'
import { ExportUnfit } from './export-unfit.ts'

const mostEntries = 500
/** Forty years of a large cellar come to about 0.2 GB. */
const mostBytes = 2 * 1024 ** 3
/** Rows that repeat each other pack to a fiftieth at most; a bomb packs to a thousandth. */
const mostRatio = 200
const smallBytes = 64 * 1024 ** 2

export function mustBeSafe({ entries }: OpenZip): void {
  if (entries.size > mostEntries) throw new ExportUnfit('tooLarge', 'too many files inside')
  let bytes = 0
  let packed = 0
  for (const entry of entries.values()) {
    if (!isSafeName(entry.name))
      throw new ExportUnfit('unsafeNames', 'a name inside climbs out of its folder')
    bytes += entry.bytes
    packed += entry.packed
  }
  const isBomb = bytes > smallBytes && bytes > mostRatio * packed
  if (bytes > mostBytes || isBomb) throw new ExportUnfit('tooLarge', 'too large once unpacked')
}

/** A plain path downward, on every system. */
export function isSafeName(name: string): boolean {
  // oxlint-disable-next-line no-control-regex -- they are what is looked for
  if (name === '' || name.length > 300 || /[\\:\u0000-\u001f\u007f]/.test(name)) return false
  return name
    .replace(/\/$/, '')
    .split('/')
    .every((step) => step !== '' && !/^\s*\.{1,2}\s*$/.test(step))
}
