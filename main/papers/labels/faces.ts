/**
 * The faces of the labels, measured and shaped by the same library that puts them into the PDF:
 * what is laid out here is what is printed.
 */
import { create, type Font } from 'fontkit'
import type { LabelFace } from '../../../shared/schemas/labels.ts'
import { ratafiaSans } from '../fonts/ratafia-sans.ts'
import { ratafiaSerif } from '../fonts/ratafia-serif.ts'

/** TrueType files by face, for whoever embeds them. */
export const faceFiles: Readonly<Record<LabelFace, Uint8Array>> = {
  serif: ratafiaSerif.medium,
  serifItalic: ratafiaSerif.italic,
  sans: ratafiaSans.regular,
  sansBold: ratafiaSans.bold,
}

/** Who is asked next for a letter that a face does not have. */
const standIns: Readonly<Record<LabelFace, readonly LabelFace[]>> = {
  serif: ['sans'],
  serifItalic: ['serif', 'sans'],
  sans: ['serif'],
  sansBold: ['sans', 'serif'],
}

/** Heights in shares of the letter size. */
export interface FaceMetrics {
  readonly ascent: number
  /** Below the baseline, as a positive share. */
  readonly descent: number
  readonly capHeight: number
  readonly xHeight: number
}

export interface ShapedGlyph {
  /** Names its outline among all faces. */
  readonly key: string
  /** From the start of the run and its baseline, and its advance, in shares of the letter size. */
  readonly x: number
  readonly y: number
  readonly advance: number
}

export interface ShapedRun {
  readonly glyphs: readonly ShapedGlyph[]
  /** In shares of the letter size: the advance, and how far ink reaches above and below the baseline. */
  readonly width: number
  readonly above: number
  readonly below: number
}

const fonts = new Map<LabelFace, Font>()

function fontOf(face: LabelFace): Font {
  const known = fonts.get(face)
  if (known) return known
  const font = create(faceFiles[face])
  fonts.set(face, font)
  return font
}

export function metricsOf(face: LabelFace): FaceMetrics {
  const { ascent, descent, capHeight, xHeight, unitsPerEm } = fontOf(face)
  return {
    ascent: ascent / unitsPerEm,
    descent: -descent / unitsPerEm,
    capHeight: capHeight / unitsPerEm,
    xHeight: xHeight / unitsPerEm,
  }
}

/**
 * The face that a letter of a text in `face`, with the marks on it, is set in; undefined where none
 * of them can set it.
 */
export const faceFor = (face: LabelFace, letter: string): LabelFace | undefined =>
  [face, ...standIns[face]].find((one) => canSet(one, letter))

const settable = new Map<string, boolean>()

function canSet(face: LabelFace, letter: string): boolean {
  const name = `${face} ${letter}`
  const known = settable.get(name)
  if (known !== undefined) return known
  const can = hasAll(fontOf(face), letter) && placesMarks(fontOf(face), letter)
  settable.set(name, can)
  return can
}

const hasAll = (font: Font, letter: string): boolean =>
  [...letter].every((point) => font.hasGlyphForCodePoint(point.codePointAt(0) ?? 0))

/** Of some piles of marks a font does not tell where they stand, and the library gives up on them. */
function placesMarks(font: Font, letter: string): boolean {
  if (!/\p{M}/u.test(letter)) return true
  try {
    font.layout(letter, [])
    return true
  } catch {
    return false
  }
}

const outlines = new Map<string, string>()

/** The outline of a shaped glyph, in shares of the letter size, y downward, as SVG writes paths. */
export const outlineOf = (key: string): string => outlines.get(key) ?? ''

/** A text that its face has all letters of, kerned; the width is that of the PDF's own reckoning. */
export function shape(face: LabelFace, text: string): ShapedRun {
  const font = fontOf(face)
  const { glyphs, positions } = font.layout(text, [])
  let x = 0
  let above = 0
  let below = 0
  const shaped = glyphs.map((glyph, index): ShapedGlyph => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {}
    const key = `${face}:${glyph.id}`
    if (!outlines.has(key)) outlines.set(key, outline(glyph.path, font.unitsPerEm))
    const at = {
      key,
      x: (x + xOffset) / font.unitsPerEm,
      y: -yOffset / font.unitsPerEm,
      advance: xAdvance / font.unitsPerEm,
    }
    x += xAdvance
    if (Number.isFinite(glyph.bbox.maxY)) {
      above = Math.max(above, (yOffset + glyph.bbox.maxY) / font.unitsPerEm)
      below = Math.max(below, -(yOffset + glyph.bbox.minY) / font.unitsPerEm)
    }
    return at
  })
  return { glyphs: shaped, width: x / font.unitsPerEm, above, below }
}

const outline = (path: ReturnType<Font['layout']>['glyphs'][number]['path'], unitsPerEm: number) =>
  path
    .scale(1 / unitsPerEm, -1 / unitsPerEm)
    .toSVG()
    .replaceAll(/-?\d+\.\d+(?:e-\d+)?/g, (number) => String(Math.round(Number(number) * 1e5) / 1e5))
