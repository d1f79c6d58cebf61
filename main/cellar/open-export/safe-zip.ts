/** How large a zip from elsewhere may be. */
import type { OpenZip } from '../zip-reader.ts'
import { ExportUnfit } from './export-unfit.ts'

const mostEntries = 500
/** Forty years of a large cellar come to about 0.2 GB. */
const mostBytes = 2 * 1024 ** 3
/** Rows that repeat each other pack to a fiftieth at most; a bomb packs to a thousandth. */
const mostRatio = 200
const smallBytes = 64 * 1024 ** 2

export function mustHaveRoom({ entries }: OpenZip): void {
  if (entries.size > mostEntries) throw new ExportUnfit('tooLarge', 'too many files inside')
  let bytes = 0
  let packed = 0
  for (const entry of entries.values()) {
    bytes += entry.bytes
    packed += entry.packed
  }
  const isBomb = bytes > smallBytes && bytes > mostRatio * packed
  if (bytes > mostBytes || isBomb) throw new ExportUnfit('tooLarge', 'too large once unpacked')
}
