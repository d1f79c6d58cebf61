/** One line of text as runs of faces, with a box for every letter that no face has. */
import type { LabelFace } from '../../../shared/schemas/labels.ts'
import { faceFor, shape, type ShapedRun } from './faces.ts'

export type LinePart =
  | {
      readonly kind: 'run'
      readonly face: LabelFace
      readonly text: string
      readonly x: number
      readonly run: ShapedRun
    }
  | {
      readonly kind: 'missing'
      readonly letter: string
      readonly x: number
      readonly width: number
    }

/** Lengths in shares of the letter size. */
export interface SetLine {
  readonly parts: readonly LinePart[]
  readonly width: number
  /** How far ink reaches above and below the baseline. */
  readonly above: number
  readonly below: number
}

/** The box of a letter that no face has, and how much room it takes. */
const missingWidth = 0.62

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** Letters as people count them: a base with its marks is one. */
export const lettersOf = (text: string): string[] =>
  // What has no marks, joiners or pairs in it is its own letters.
  /^[\u0020-\u02af\u0370-\u0482\u048a-\u052f\u1e00-\u1fff\u2010-\u2027]*$/.test(text)
    ? text.split('')
    : [...letters.segment(text)].map(({ segment }) => segment)

export function missingLetters(face: LabelFace, text: string): string[] {
  return [...new Set(lettersOf(text).filter((letter) => faceFor(face, letter) === undefined))]
}

const lines = new Map<string, SetLine>()
const mostKept = 5000

export function setLine(face: LabelFace, text: string, tracking = 0): SetLine {
  const key = `${face} ${tracking} ${text}`
  const known = lines.get(key)
  if (known) return known
  const line = setAnew(face, text, tracking)
  // The same words are measured at every size that is tried.
  if (lines.size >= mostKept) lines.clear()
  lines.set(key, line)
  return line
}

function setAnew(face: LabelFace, text: string, tracking: number): SetLine {
  const parts: LinePart[] = []
  let x = 0
  for (const { of, text: stretch } of stretches(face, text)) {
    if (of === undefined) {
      for (const letter of lettersOf(stretch)) {
        parts.push({ kind: 'missing', letter, x, width: missingWidth })
        x += missingWidth + tracking
      }
    } else {
      const run = shape(of, stretch)
      parts.push({ kind: 'run', face: of, text: stretch, x, run })
      x += run.width + tracking * run.glyphs.length
    }
  }
  const reach = (of: 'above' | 'below') =>
    Math.max(0, ...parts.map((part) => (part.kind === 'run' ? part.run[of] : 0)))
  return { parts, width: Math.max(0, x - tracking), above: reach('above'), below: reach('below') }
}

/** Neighbouring letters of one face together, so that they are kerned. */
function stretches(face: LabelFace, text: string) {
  const found: { of: LabelFace | undefined; text: string }[] = []
  for (const letter of lettersOf(text)) {
    const of = faceFor(face, letter)
    const last = found.at(-1)
    if (last && last.of === of) last.text += letter
    else found.push({ of, text: letter })
  }
  return found
}
