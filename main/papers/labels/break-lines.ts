/** Text broken into lines of a width: at spaces and after hyphens, within a word only where it must be. */
import type { LabelFace } from '../../../shared/schemas/labels.ts'
import { lettersOf, setLine } from './set-line.ts'

export interface Setting {
  readonly face: LabelFace
  /** Between letters, in shares of the letter size. */
  readonly tracking: number
}

const ellipsis = '…'

export interface BrokenLines {
  readonly lines: string[]
  /** A word is longer than a line and runs on in the next. */
  readonly isWordBroken: boolean
}

/** `width` in shares of the letter size. */
export function breakLines(text: string, { face, tracking }: Setting, width: number): BrokenLines {
  const widthOf = (line: string) => setLine(face, line, tracking).width
  if (text === '') return { lines: [], isWordBroken: false }
  if (widthOf(text) <= width) return { lines: [text], isWordBroken: false }
  let isWordBroken = false
  const lines: string[] = []
  let line = ''
  let used = 0
  const start = (word: string) => {
    let rest = word
    while (widthOf(rest.trimEnd()) > width) {
      const head = longestFitting(rest, (part) => widthOf(part) <= width)
      if (head.length === rest.length) break
      lines.push(head)
      isWordBroken = true
      rest = rest.slice(head.length)
    }
    line = rest
    used = widthOf(rest) + tracking
  }
  for (const word of wordsOf(text)) {
    if (line !== '' && used + widthOf(word.trimEnd()) <= width) {
      line += word
      used += widthOf(word) + tracking
      continue
    }
    if (line !== '') lines.push(line.trimEnd())
    start(word)
  }
  if (line.trimEnd() !== '') lines.push(line.trimEnd())
  return { lines, isWordBroken }
}

/** Each with the spaces after it. A no-break space keeps words together. */
const wordsOf = (text: string): string[] => text.match(/[^ -]*(?:-| +|$)/g)?.filter(Boolean) ?? []

/** Width of the widest word, in shares of the letter size. */
export const longestWord = (text: string, { face, tracking }: Setting): number =>
  Math.max(0, ...wordsOf(text).map((word) => setLine(face, word.trimEnd(), tracking).width))

/** At least one letter, however narrow the line. */
function longestFitting(word: string, fits: (text: string) => boolean): string {
  const letters = lettersOf(word)
  let low = 1
  let high = letters.length
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (fits(letters.slice(0, middle).join(''))) low = middle
    else high = middle - 1
  }
  return letters.slice(0, low).join('')
}

/** The first lines, the last of them ending in … where more would come. */
export function cutLines(
  lines: readonly string[],
  most: number,
  { face, tracking }: Setting,
  width: number,
): string[] {
  if (lines.length <= most || most <= 0) return lines.slice(0, Math.max(0, most))
  const kept = lines.slice(0, most)
  const last = lettersOf(kept.at(-1) ?? '')
  while (
    last.length > 0 &&
    setLine(face, last.join('').trimEnd() + ellipsis, tracking).width > width
  )
    last.pop()
  return [...kept.slice(0, -1), last.join('').trimEnd() + ellipsis]
}
