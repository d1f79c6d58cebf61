/**
 * Finds room for a label's two columns and its code: side by side or under each other, in several
 * proportions, with and without the emblem. The arrangement that loses least, then reads best, is kept.
 */
import type { LabelOp } from '../../../shared/schemas/labels.ts'
import { drawCode, greatestSide, leastModuleMm, leastSide, moduleOf } from './code.ts'
import { fitColumn, type Unfit } from './column.ts'
import type { Design, DesignPlan, LabelToSet } from './label-to-set.ts'
import { line, type Box } from './lengths.ts'

export interface Arrangement {
  readonly ops: readonly LabelOp[]
  readonly unfit: readonly Unfit[]
  readonly hasEmblem: boolean
  /** Side of one module; 0 where the code had no room. */
  readonly moduleMm: number | undefined
}

interface Way {
  readonly split: 'beside' | 'below'
  /** Of the content, for the second column; 0 for none. */
  readonly share: number
  /** At the end of the second column, or in a column of its own at the right. */
  readonly code: 'none' | 'inColumn' | 'aside'
  readonly isCodeAmple: boolean
}

/** A code of this module is not worth drawing. */
const hopelessModuleMm = 0.2

const shares = [0.3, 0.38, 0.46, 0.56]

export function arrange(label: LabelToSet, design: Design, wantsEmblem: boolean): Arrangement {
  let best: Tried | undefined
  for (const withEmblem of wantsEmblem ? [true, false] : [false]) {
    const plan = design(label, withEmblem)
    if (withEmblem && !plan.hasEmblem) continue
    const bare = wantsEmblem && !withEmblem ? emblemPenalty : 0
    for (const way of waysOf(label, plan)) {
      const tried = tryWay(label, plan, way)
      const penalty = tried.penalty + bare
      if (!best || penalty < best.penalty - 1e-9) best = { ...tried, penalty }
    }
  }
  if (!best) throw new Error('no way to arrange the label')
  const { draw, ...arrangement } = best
  return { ...arrangement, ops: draw() }
}

interface Tried extends Omit<Arrangement, 'ops'> {
  readonly draw: () => LabelOp[]
  readonly penalty: number
}

const emblemPenalty = 1.2

function waysOf({ code }: LabelToSet, { detail }: DesignPlan): Way[] {
  const splits =
    detail.length === 0
      ? [{ split: 'below', share: 0 } as const]
      : (['below', 'beside'] as const).flatMap((split) => shares.map((share) => ({ split, share })))
  if (!code) return splits.map((split) => ({ ...split, code: 'none', isCodeAmple: false }))
  // Without small print the code has a column to itself, at the side or below.
  const inColumn = detail.length === 0 ? [] : splits
  return [
    ...[true, false].flatMap((isCodeAmple) =>
      inColumn.map((split): Way => ({ ...split, code: 'inColumn', isCodeAmple })),
    ),
    ...[true, false].flatMap((isCodeAmple) =>
      splits.map((split): Way => ({ ...split, code: 'aside', isCodeAmple })),
    ),
    ...(detail.length === 0
      ? shares.map((share): Way => ({ split: 'below', share, code: 'inColumn', isCodeAmple: true }))
      : []),
  ]
}

function tryWay(label: LabelToSet, plan: DesignPlan, way: Way): Tried {
  const aside = way.code === 'aside' ? besideOf(label, plan.content, way) : undefined
  const { mainBox, secondBox, divider } = splitBox(plan, aside?.rest ?? plan.content, way)
  const main = fitColumn(plan.main, mainBox, plan.justifyMain)
  const inColumn =
    way.code === 'inColumn' && secondBox ? endOf(label, plan, secondBox, way) : undefined
  const detail =
    secondBox && plan.detail.length > 0
      ? fitColumn(
          plan.detail,
          inColumn?.rest ?? secondBox,
          way.split === 'below' ? 'middle' : 'top',
        )
      : undefined
  const codeBox = aside?.codeBox ?? inColumn?.codeBox
  const moduleMm = label.code && codeBox ? moduleOf(label.code, codeBox.width) : undefined
  const isDrawn = moduleMm !== undefined && moduleMm >= hopelessModuleMm
  const draw = () => [
    ...plan.ground,
    ...divider,
    ...main.draw(),
    ...(detail?.draw() ?? []),
    ...(label.code && codeBox && isDrawn
      ? drawCode(label.code, codeBox, plan.code.dark, plan.code.ground)
      : []),
  ]
  const unfit = [...plan.groundUnfit, ...main.problems, ...(detail?.problems ?? [])]
  const shown = label.code ? (isDrawn ? moduleMm : 0) : undefined
  return {
    draw,
    unfit,
    hasEmblem: plan.hasEmblem,
    moduleMm: shown,
    penalty: penaltyOf(unfit, shown) + main.strain + (detail?.strain ?? 0),
  }
}

const gapOf = ({ width, height }: Box): number =>
  Math.min(3.5, 0.7 + 0.035 * Math.min(width, height))

function splitBox(
  { rule }: DesignPlan,
  content: Box,
  { split, share }: Way,
): { mainBox: Box; secondBox?: Box; divider: LabelOp[] } {
  if (share === 0) return { mainBox: content, divider: [] }
  const { x, y, width, height } = content
  const gap = gapOf(content)
  const stroke = { colour: rule, widthMm: 0.15 }
  if (split === 'below') {
    const second = height * share - gap
    const at = y + height - second - gap
    return {
      mainBox: { x, y, width, height: height - second - 2 * gap },
      secondBox: { x, y: y + height - second, width, height: second },
      divider: [{ op: 'path', of: 'rule', d: line(x, at, x + width, at), stroke }],
    }
  }
  const second = width * share - gap
  const at = x + width - second - gap
  return {
    mainBox: { x, y, width: width - second - 2 * gap, height },
    secondBox: { x: x + width - second, y, width: second, height },
    divider: [{ op: 'path', of: 'rule', d: line(at, y, at, y + height), stroke }],
  }
}

interface CodePlace {
  readonly codeBox: Box
  readonly rest: Box
}

const sideOf = ({ code }: LabelToSet, { isCodeAmple }: Way, roomMm: number): number =>
  code ? Math.min(isCodeAmple ? greatestSide(code) : leastSide(code), roomMm) : 0

/** At the right of a box, half way up. */
function besideOf(label: LabelToSet, box: Box, way: Way): CodePlace {
  const { x, y, width, height } = box
  const side = sideOf(label, way, Math.min(height, 0.6 * width))
  const gap = gapOf(box)
  return {
    codeBox: { x: x + width - side, y: y + (height - side) / 2, width: side, height: side },
    rest: { x, y, width: width - side - gap, height },
  }
}

/** At the end of its column: right of the small print, under it, or alone in the middle. */
function endOf(label: LabelToSet, { detail }: DesignPlan, box: Box, way: Way): CodePlace {
  if (detail.length > 0 && way.split === 'below') return besideOf(label, box, way)
  const { x, y, width, height } = box
  const side = sideOf(label, way, Math.min(width, height))
  const top = detail.length > 0 ? height - side : (height - side) / 2
  return {
    codeBox: { x: x + (width - side) / 2, y: y + top, width: side, height: side },
    rest: { x, y, width, height: Math.max(0, height - side - 1) },
  }
}

/** What is lost weighs most; then a code too fine to read. How small letters are comes on top. */
function penaltyOf(unfit: readonly Unfit[], moduleMm: number | undefined): number {
  const lost = unfit.reduce((sum, { shown }) => sum + 6 + 60 * (1 - shown), 0)
  if (moduleMm === undefined || moduleMm >= leastModuleMm - 1e-9) return lost
  return lost + 5 + 20 * (1 - moduleMm / leastModuleMm)
}
