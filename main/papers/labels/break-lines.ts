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
  readonly lines: readonly string[]
  /** A word is longer than a line and runs on in the next. */
  readonly isWordBroken: boolean
}

/** `width` in shares of the letter size. */
export function breakLines(text: string, setting: Setting, width: number): BrokenLines {
  const key = `${setting.face} ${setting.tracking} ${width.toFixed(3)} ${text}`
  const known = broken.get(key)
  if (known) return known
  const found = breakAnew(text, setting, width)
  // Many arrangements ask for the same column.
  if (broken.size >= mostKept) broken.clear()
  broken.set(key, found)
  return found
}

const broken = new Map<string, BrokenLines>()
const mostKept = 4000

function breakAnew(text: string, { face, tracking }: Setting, width: number): BrokenLines {
  const widthOf = (line: string) => setLine(face, line, tracking).width
  if (text === '') return { lines: [], isWordBroken: false }
  if (widthOf(text) <= width) return { lines: [text], isWordBroken: false }
  let isWordBroken = false
  const lines: string[] = []
  let line = ''
  let used = 0
  const start = (word: string) => {
    const pieces =
      widthOf(word.trimEnd()) > width ? pieced(word, { face, tracking }, width) : [word]
    isWordBroken ||= pieces.length > 1
    lines.push(...pieces.slice(0, -1))
    line = pieces.at(-1) ?? ''
    used = widthOf(line) + tracking
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

/** A word cut where lines end; at least one letter a line, however narrow. Kerning is left aside. */
function pieced(word: string, { face, tracking }: Setting, width: number): string[] {
  const pieces: string[] = []
  let piece = ''
  let used = 0
  for (const letter of lettersOf(word)) {
    const needed = setLine(face, letter, tracking).width
    if (piece !== '' && letter !== ' ' && used + needed > width) {
      pieces.push(piece)
      piece = ''
      used = 0
    }
    piece += letter
    used += needed + tracking
  }
  return piece === '' ? pieces : [...pieces, piece]
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
  const isTooWide = () => setLine(face, last.join('').trimEnd() + ellipsis, tracking).width > width
  while (last.length > 0 && isTooWide()) last.pop()
  return [...kept.slice(0, -1), last.join('').trimEnd() + ellipsis]
}
