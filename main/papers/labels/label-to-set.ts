/** One label, ready to be laid out: only what is to be shown, in letters that can be set. */
import type { LabelField, LabelOp, LabelPart, LabelText } from '../../../shared/schemas/labels.ts'
import type { Block, TextBlock } from './blocks.ts'
import type { Unfit } from './column.ts'
import type { Code } from './code.ts'
import type { Inks } from './inks.ts'
import type { Box } from './lengths.ts'
import type { Cell } from './place-line.ts'

export interface LabelToSet {
  readonly part: LabelPart
  /** Empty where a field is not shown. */
  readonly text: LabelText
  readonly widthMm: number
  readonly heightMm: number
  readonly inks: Inks
  readonly bottleSizeMl: number
  readonly code: Code | undefined
}

/** What a design makes of a label: what is always drawn, and the blocks to arrange in the rest. */
export interface DesignPlan {
  readonly ground: readonly LabelOp[]
  /** Texts of the ground that had no room there. */
  readonly groundUnfit: readonly Unfit[]
  readonly content: Box
  readonly main: readonly Block[]
  readonly justifyMain: 'top' | 'middle' | 'bottom'
  readonly detail: readonly Block[]
  readonly rule: string
  readonly code: { readonly dark: string; readonly ground: string }
  /** The bottle is in it. */
  readonly hasEmblem: boolean
}

export type Design = (label: LabelToSet, withEmblem: boolean) => DesignPlan

/** Letter sizes that suit a label: they grow with the side of a square as large. */
export interface Sizes {
  readonly heroPt: number
  readonly middlePt: number
  readonly strengthPt: number
  readonly finePt: number
}

export function sizesOf({ widthMm, heightMm }: LabelToSet): Sizes {
  const sideMm = Math.sqrt(widthMm * heightMm)
  return {
    heroPt: 0.36 * sideMm,
    middlePt: Math.max(7, 0.15 * sideMm),
    strengthPt: Math.max(7, 0.145 * sideMm),
    finePt: Math.min(11, Math.max(5.5, 2.2 + 0.075 * sideMm)),
  }
}

/** No cell where there is nothing to say. */
export function cell(
  label: LabelToSet,
  field: LabelField,
  face: Cell['face'],
  colour: string,
  tracking = 0,
): Cell[] {
  const text = label.text[field]
  return text === '' ? [] : [{ field, text, face, colour, tracking }]
}

/** No block where none of its cells has anything to say. */
export const block = (cells: readonly Cell[], shape: Omit<TextBlock, 'kind' | 'cells'>): Block[] =>
  cells.length === 0 ? [] : [{ kind: 'text', cells, ...shape }]

/** The small print, one field under the other. */
export function smallPrint(
  label: LabelToSet,
  align: TextBlock['align'],
  { ink, quiet }: { readonly ink: string; readonly quiet: string },
): Block[] {
  const { finePt } = sizesOf(label)
  const fine = (field: LabelField, face: Cell['face'], colour: string, gap: number) =>
    block(cell(label, field, face, colour), { mostPt: finePt, align, mostLines: 12, gap })
  return [
    ...fine('ingredients', 'sans', ink, 0),
    ...fine('allergens', 'sansBold', ink, 0.15),
    ...fine('bottled', 'sans', ink, 0.5),
    ...fine('batch', 'sans', ink, 0.15),
    ...fine('energy', 'sans', quiet, 0.5),
    ...fine('drinks', 'sans', quiet, 0.15),
    ...fine('cautions', 'sans', quiet, 0.5),
    ...fine('note', 'serifItalic', ink, 0.5),
  ]
}
