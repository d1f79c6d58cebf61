/**
 * A column of a label: blocks under each other, as large as they all have room for. They shrink
 * together down to the smallest letters; what then still has no room is cut, the least important
 * first, and said.
 */
import type { LabelField, LabelOp } from '../../../shared/schemas/labels.ts'
import {
  heightOf,
  rowWidth,
  type Block,
  type SetBlock,
  type SetText,
  type TextBlock,
} from './blocks.ts'
import { breakLines, cutLines, longestWord, type BrokenLines } from './break-lines.ts'
import { drawColumn, type Justify } from './draw-column.ts'
import { mmPerPt, type Box } from './lengths.ts'
import type { Cell } from './place-line.ts'

/** Smaller letters are not read any more; common practice of printers. */
export const leastPt = 5

export interface Column {
  /** Many columns are tried, one is drawn. */
  readonly draw: () => LabelOp[]
  readonly problems: readonly Unfit[]
  /** 0 where everything has the size it was meant to have; what matters more weighs more. */
  readonly strain: number
}

export interface Unfit {
  readonly field: LabelField
  /** Share of the text that is shown. */
  readonly shown: number
}

/** The first to be cut stand last. */
const importance: readonly LabelField[] = [
  'name',
  'strength',
  'volume',
  'allergens',
  'kind',
  'vintage',
  'batch',
  'bottled',
  'cautions',
  'ingredients',
  'energy',
  'drinks',
  'note',
]

/** How small letters may become: what the law asks of the main fields, or what can just be read. */
type Floor = 'lawful' | 'least'

/** Small letters are then 1.2 mm high in the sans, and in the serif. */
const lawfulPt: Readonly<Partial<Record<LabelField, number>>> = {
  name: 7.6,
  strength: 7.1,
  volume: 7.1,
  allergens: 7.1,
}

const floorOf = ({ cells }: TextBlock, floor: Floor): number =>
  floor === 'least' ? leastPt : Math.max(leastPt, ...cells.map(({ field }) => lawfulPt[field] ?? 0))

export function fitColumn(blocks: readonly Block[], box: Box, justify: Justify = 'top'): Column {
  for (const floor of ['lawful', 'least'] as const) {
    const set = largestThatFits(blocks, box, floor)
    if (set) return place(set, box, justify)
  }
  const tight = setAll(blocks, box, 0, 'least')
  cutToFit(tight, box)
  return place(tight, box, justify)
}

function largestThatFits(blocks: readonly Block[], box: Box, floor: Floor): SetBlock[] | undefined {
  const fits = (set: readonly SetBlock[]) =>
    heightOf(set) <= box.height && set.every((one) => one.kind === 'figure' || !one.isStrained)
  const ample = setAll(blocks, box, 1, floor)
  if (fits(ample)) return ample
  let found = setAll(blocks, box, 0, floor)
  if (heightOf(found) > box.height || (floor === 'lawful' && !fits(found))) return undefined
  let low = 0
  let high = 1
  for (let step = 0; step < 6; step += 1) {
    const middle = (low + high) / 2
    const tried = setAll(blocks, box, middle, floor)
    if (heightOf(tried) <= box.height) {
      low = middle
      found = tried
    } else high = middle
  }
  return found
}

const setAll = (blocks: readonly Block[], box: Box, ease: number, floor: Floor): SetBlock[] =>
  blocks.flatMap((block) => setBlock(block, box, ease, floor))

function setBlock(block: Block, box: Box, ease: number, floor: Floor): SetBlock[] {
  if (block.kind === 'figure')
    return [
      { kind: 'figure', block, heightMm: block.leastMm + (block.mostMm - block.leastMm) * ease },
    ]
  const least = floorOf(block, floor)
  const mostPt = Math.max(least, block.mostPt)
  const wanted = least + (mostPt - least) * ease
  if (block.cells.length > 1) {
    const sizePt = Math.max(least, Math.min(wanted, box.width / rowWidth(block, 1)))
    // No room side by side even at the smallest: under each other then.
    if (rowWidth(block, sizePt) > box.width + 1e-6)
      return block.cells.flatMap((cell, index) =>
        setBlock({ ...block, cells: [cell], ...(index > 0 && { gap: 0.1 }) }, box, ease, floor),
      )
    return [{ kind: 'text', block, sizePt, lines: [''], wholeLines: 1, isStrained: false }]
  }
  const sizePt = Math.max(least, Math.min(wanted, comfortablePt(block, box.width)))
  const { lines, isWordBroken } = linesAt(block, sizePt, box.width)
  return [
    { kind: 'text', block, sizePt, lines, wholeLines: lines.length, isStrained: isWordBroken },
  ]
}

const comfortable = new WeakMap<TextBlock, Map<number, number>>()

/** The largest size at which a block keeps to its lines and breaks no word. */
function comfortablePt(block: TextBlock, widthMm: number): number {
  const byWidth = comfortable.get(block) ?? new Map<number, number>()
  comfortable.set(block, byWidth)
  const known = byWidth.get(widthMm)
  if (known !== undefined) return known
  const isComfortable = (sizePt: number) => {
    const { lines, isWordBroken } = linesAt(block, sizePt, widthMm)
    return !isWordBroken && lines.length <= block.mostLines
  }
  const [cell] = block.cells
  const longest = cell ? longestWord(cell.text, settingOf(cell)) * mmPerPt : 0
  let found = Math.max(leastPt, Math.min(block.mostPt, widthMm / Math.max(longest, 1e-6)))
  if (!isComfortable(found)) {
    let low = leastPt
    for (let step = 0; step < 7; step += 1) {
      const middle = (low + found) / 2
      if (isComfortable(middle)) low = middle
      else found = middle
    }
    found = low
  }
  byWidth.set(widthMm, found)
  return found
}

function linesAt({ cells }: TextBlock, sizePt: number, widthMm: number): BrokenLines {
  const [cell] = cells
  if (!cell) return { lines: [], isWordBroken: false }
  return breakLines(cell.text, settingOf(cell), widthMm / (sizePt * mmPerPt))
}

const settingOf = ({ face, tracking = 0 }: Cell) => ({ face, tracking })

const rank = (set: SetText): number =>
  Math.min(...set.block.cells.map(({ field }) => importance.indexOf(field)))

/** Takes lines away, the least important first, until the rest has room. */
function cutToFit(column: SetBlock[], box: Box): void {
  const texts = column.filter((set) => set.kind === 'text')
  const leastFirst = texts.toSorted((a, b) => rank(b) - rank(a))
  for (const set of leastFirst) {
    const whole = set.lines
    while (heightOf(column) > box.height && set.lines.length > 0) set.lines = set.lines.slice(0, -1)
    const [cell] = set.block.cells
    if (cell && set.block.cells.length === 1 && set.lines.length < whole.length)
      set.lines = cutLines(
        whole,
        set.lines.length,
        settingOf(cell),
        box.width / (set.sizePt * mmPerPt),
      )
  }
}

const place = (column: readonly SetBlock[], box: Box, justify: Justify): Column => ({
  draw: () => drawColumn(column, box, justify),
  problems: column.flatMap((set) => (set.kind === 'text' ? unfitOf(set) : [])),
  strain: strainOf(column),
})

/** How much it matters that a field is as large as its design wants it. */
const weightOf = ({ cells }: TextBlock): number =>
  Math.max(...cells.map(({ field }) => (field === 'name' ? 6 : (lawfulPt[field] ?? 4) / 7)))

const strainOf = (column: readonly SetBlock[]): number =>
  column.reduce((sum, set) => {
    if (set.kind === 'figure') {
      const { leastMm, mostMm } = set.block
      return sum + (mostMm > 2 ? 0.4 * (1 - (set.heightMm - leastMm) / (mostMm - leastMm || 1)) : 0)
    }
    const lost = 1 - Math.min(1, set.sizePt / Math.max(leastPt, set.block.mostPt))
    return sum + weightOf(set.block) * lost * lost + (set.isStrained ? 3 : 0)
  }, 0)

function unfitOf(set: SetText): Unfit[] {
  if (set.lines.length === set.wholeLines) return []
  return set.block.cells.map(({ field, text }) => {
    const shown = set.block.cells.length > 1 ? 0 : set.lines.join(' ').replace(/…$/, '').length
    return { field, shown: text.length === 0 ? 1 : Math.min(1, shown / text.length) }
  })
}
