/** How deep a JSON text is nested, told before anything recursive meets it. */

/** Nothing in a book or a request goes deeper than 12. */
export const deepestNesting = 64

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
