/** Rows as JSON Lines, one JSON value a line; what comes from elsewhere is read within limits. */
import { ExportUnfit } from './export-unfit.ts'

/** The longest line of a book, a kept season plan, is under 1 MB. */
export const mostLineBytes = 16 * 1024 * 1024
/** Nothing in a book goes deeper than 12. */
export const mostDepth = 64

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
  if (depthOf(line) > mostDepth) throw new ExportUnfit('tooLarge', 'a line is nested too deep')
  try {
    return JSON.parse(line)
  } catch (error) {
    throw new ExportUnfit('notBySchema', 'a line is not JSON', { cause: error })
  }
}

const quote = 0x22
const backslash = 0x5c
const opens = new Set([0x5b, 0x7b])
const closes = new Set([0x5d, 0x7d])

/** How deep brackets stand within each other; those within texts do not count. */
export function depthOf(json: string): number {
  let depth = 0
  let deepest = 0
  let isInText = false
  for (let at = 0; at < json.length; at += 1) {
    const code = json.charCodeAt(at)
    if (isInText) {
      if (code === backslash) at += 1
      else if (code === quote) isInText = false
    } else if (code === quote) isInText = true
    else if (opens.has(code)) {
      depth += 1
      deepest = Math.max(deepest, depth)
    } else if (closes.has(code)) depth -= 1
  }
  return deepest
}
