/** One label drawn: its texts cleaned, arranged by its design, and all that should be seen about it. */
import {
  labelFields,
  type LabelDesign,
  type LabelField,
  type LabelOp,
  type LabelPart,
  type LabelProblem,
  type LabelText,
} from '../../../shared/schemas/labels.ts'
import { arrange } from './arrange.ts'
import { cleanText, type CleanText } from './clean-text.ts'
import { codeOf, leastModuleMm, recordOf } from './code.ts'
import { glass } from './designs/glass.ts'
import { lamplight } from './designs/lamplight.ts'
import { ledger } from './designs/ledger.ts'
import { neck, neckFields } from './designs/neck.ts'
import { parlour } from './designs/parlour.ts'
import { metricsOf } from './faces.ts'
import { inksOf } from './inks.ts'
import type { Design } from './label-to-set.ts'
import { mmPerPt } from './lengths.ts'
import { missingLetters } from './set-line.ts'

export interface LabelToDraw {
  readonly text: LabelText
  readonly colour: string
  readonly bottleSizeMl: number
  readonly design: LabelDesign
  readonly part: LabelPart
  readonly shown: readonly LabelField[]
  readonly hasCode: boolean
  readonly hasEmblem: boolean
  readonly widthMm: number
  readonly heightMm: number
}

type Problem = Omit<LabelProblem, 'labelIndex'>

export interface DrawnLabel {
  readonly ops: readonly LabelOp[]
  readonly problems: readonly Problem[]
}

/** Height of a small x for what must be on a label: Regulation (EU) 1169/2011, article 13; from memory. */
export const leastXHeightMm = 1.2

/** What that height is asked of. */
const lawsFields: readonly LabelField[] = ['name', 'strength', 'volume', 'allergens']

const designs: Readonly<Record<LabelDesign, Design>> = { parlour, ledger, glass, lamplight }

export function drawLabel(label: LabelToDraw): DrawnLabel {
  const isNeck = label.part === 'neck'
  const shown = new Set<LabelField>(
    label.shown.filter((field) => !isNeck || neckFields.some((one) => one === field)),
  )
  const cleaned = new Map(labelFields.map((field) => [field, cleanText(label.text[field])]))
  const textOf = (isWanted: (field: LabelField) => boolean) =>
    Object.fromEntries(
      labelFields.map((field) => [field, isWanted(field) ? (cleaned.get(field)?.text ?? '') : '']),
    ) as LabelText
  const text = textOf((field) => shown.has(field))
  const wantsCode = label.hasCode && !isNeck
  const code = wantsCode ? codeOf(recordOf(textOf(() => true))) : undefined
  const arrangement = arrange(
    { ...label, text, inks: inksOf(label.colour), code },
    isNeck ? neck(label.design) : designs[label.design],
    label.hasEmblem,
  )
  const { ops, unfit, hasEmblem, moduleMm } = arrangement
  return {
    ops,
    problems: [
      ...unfit.map(({ field, shown: value }): Problem => ({
        code: 'doesNotFit',
        severity: 'warning',
        field,
        value,
      })),
      ...[...cleaned].flatMap(([field, clean]) => (shown.has(field) ? letters(field, clean) : [])),
      ...codeProblems(wantsCode, moduleMm),
      ...(label.hasEmblem && !hasEmblem
        ? [{ code: 'emblemLeftOut', severity: 'note' } as const]
        : []),
      ...(isNeck ? [] : smallLetters(ops)),
    ],
  }
}

function letters(field: LabelField, { text, hadControls, isRightToLeft }: CleanText): Problem[] {
  const characters = missingLetters('sans', text)
  return [
    ...(characters.length > 0
      ? [{ code: 'noLetters', severity: 'warning', field, characters } as const]
      : []),
    ...(isRightToLeft ? [{ code: 'rightToLeft', severity: 'warning', field } as const] : []),
    ...(hadControls ? [{ code: 'controlsLeftOut', severity: 'note', field } as const] : []),
  ]
}

function codeProblems(wantsCode: boolean, moduleMm: number | undefined): Problem[] {
  if (!wantsCode) return []
  if (!moduleMm) return [{ code: 'codeLeftOut', severity: 'warning' }]
  if (moduleMm >= leastModuleMm - 1e-6) return []
  return [{ code: 'codeTooFine', severity: 'warning', value: moduleMm, limit: leastModuleMm }]
}

function smallLetters(ops: readonly LabelOp[]): Problem[] {
  return lawsFields.flatMap((field) => {
    const heights = ops.flatMap((op) =>
      op.op === 'text' && op.field === field
        ? [op.sizePt * mmPerPt * metricsOf(op.face).xHeight]
        : [],
    )
    const value = Math.min(...heights)
    if (heights.length === 0 || value >= leastXHeightMm - 1e-6) return []
    return [{ code: 'smallLetters', severity: 'note', field, value, limit: leastXHeightMm }]
  })
}
