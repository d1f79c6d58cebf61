/** Rows as JSON Lines, one JSON value a line; what comes from elsewhere is read within limits. */
import { depthOf, deepestNesting } from '../../../shared/json-depth.ts'
import { ExportUnfit } from './export-unfit.ts'

/** The longest line of a book, a kept season plan, is under 1 MB. */
export const mostLineBytes = 16 * 1024 * 1024

const newLine = 0x0a

/** The lines of a file that comes in pieces, without their ends. Throws `ExportUnfit`. */
export async function* linesIn(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
  const text = (bytes: Uint8Array) => {
    try {
      return decoder.decode(bytes)
    } catch (error) {
      throw new ExportUnfit('notBySchema', 'a line is not UTF-8', { cause: error })
    }
  }
  let begun: Uint8Array[] = []
  let begunBytes = 0
  for await (const piece of pieces) {
    let from = 0
    for (;;) {
      const end = piece.indexOf(newLine, from)
      const part = piece.subarray(from, end < 0 ? piece.length : end)
      begunBytes += part.length
      if (begunBytes > mostLineBytes) throw new ExportUnfit('tooLarge', 'a line is too long')
      begun.push(part)
      if (end < 0) break
      yield text(begun.length === 1 ? part : Buffer.concat(begun))
      begun = []
      begunBytes = 0
      from = end + 1
    }
  }
  if (begunBytes > 0) yield text(Buffer.concat(begun))
}

/** The value in a line. Deep nesting is refused before anything recursive meets it. */
export function valueIn(line: string): unknown {
  if (depthOf(line) > deepestNesting) throw new ExportUnfit('tooLarge', 'a line is nested too deep')
  try {
    return JSON.parse(line)
  } catch (error) {
    throw new ExportUnfit('notBySchema', 'a line is not JSON', { cause: error })
  }
}
