/** A fruit while its facts are being edited: numbers may be missing, cautions are lines of text. */
import type { Fruit, KineticClass, Piece, Range } from '../../../shared/schemas/fruits.ts'
import { rangedFields, type RangedField } from './facts.ts'

type Maybe = number | undefined

export interface RangeDraft {
  readonly low: Maybe
  readonly typical: Maybe
  readonly high: Maybe
}

export interface FruitDraft {
  readonly nameEn: string
  readonly namePl: string
  readonly latin: string
  readonly kind: string
  readonly kineticClass: KineticClass
  readonly preparation: string
  readonly hazards: string
  readonly ediblePct: Maybe
  readonly waterPct: Maybe
  readonly sugarPct: Maybe
  readonly acidPct: Maybe
  readonly pulpPct: Maybe
  readonly drained: RangeDraft
  readonly pressed: RangeDraft
  readonly ranges: Readonly<Record<RangedField, RangeDraft>>
  readonly bulkDensityKgPerL: Maybe
  readonly pieceShape: Piece['shape'] | 'none'
  readonly halfSizeMm: Maybe
  readonly isSeasonal: boolean
  readonly startMonth: number
  readonly endMonth: number
  readonly peakMonths: readonly number[]
  readonly shiftWeeks: Maybe
  readonly pectinHaze: NonNullable<Fruit['pectinHaze']> | 'unknown'
}

export function draftOf(fruit: Fruit): FruitDraft {
  const { composition, season, piece } = fruit
  return {
    nameEn: fruit.nameEn,
    namePl: fruit.namePl,
    latin: fruit.latin,
    kind: fruit.kind,
    kineticClass: fruit.kineticClass,
    preparation: fruit.preparation,
    hazards: fruit.hazards.join('\n'),
    ediblePct: 100 * composition.edibleFraction,
    waterPct: composition.waterPct,
    sugarPct: composition.sugarPct,
    acidPct: composition.acidPct,
    pulpPct: composition.pulpPct,
    drained: rangeDraft(fruit.drainedRangeLPerKg, fruit.drainedLPerKg),
    pressed: rangeDraft(fruit.pressedRangeLPerKg, fruit.pressedLPerKg),
    ranges: Object.fromEntries(
      rangedFields.map((field) => [field, rangeDraft(fruit[field])]),
    ) as Record<RangedField, RangeDraft>,
    bulkDensityKgPerL: fruit.bulkDensityKgPerL,
    pieceShape: piece?.shape ?? 'none',
    halfSizeMm: piece?.halfSizeMm,
    isSeasonal: season !== undefined,
    startMonth: season?.startMonth ?? 6,
    endMonth: season?.endMonth ?? 8,
    peakMonths: season?.peakMonths ?? [],
    shiftWeeks: fruit.mediterraneanShiftWeeks,
    pectinHaze: fruit.pectinHaze ?? 'unknown',
  }
}

const rangeDraft = (range: Range | undefined, typical?: number): RangeDraft => ({
  low: range?.low,
  typical: typical ?? range?.typical,
  high: range?.high,
})

/** What is not water, sugar, acid or insoluble; below zero where those exceed 100 %. */
export function restPct({ waterPct, sugarPct, acidPct, pulpPct }: FruitDraft): Maybe {
  if (waterPct === undefined || sugarPct === undefined) return undefined
  if (acidPct === undefined || pulpPct === undefined) return undefined
  const rest = 100 - (waterPct + sugarPct + acidPct + pulpPct)
  // Adding up tenths leaves a trace that is nobody's fault.
  return Math.abs(rest) < 1e-9 ? 0 : rest
}

export type RangeProblem = 'needed' | 'allThree' | 'order'

export function problemOfRange(
  { low, typical, high }: RangeDraft,
  isNeeded: boolean,
): RangeProblem | undefined {
  if (low !== undefined && typical !== undefined && high !== undefined)
    return low <= typical && typical <= high ? undefined : 'order'
  const isBlank = low === undefined && high === undefined
  if (isNeeded) return isBlank && typical !== undefined ? undefined : 'needed'
  return isBlank && typical === undefined ? undefined : 'allThree'
}

const rangeOf = ({ low, typical, high }: RangeDraft): Range | undefined =>
  low === undefined || typical === undefined || high === undefined
    ? undefined
    : { low, typical, high }

/** The fruit as the draft has it; undefined while something is missing or out of order. */
export function fruitOfDraft(draft: FruitDraft, from: Fruit): Fruit | undefined {
  const composition = compositionOf(draft, from)
  const { drained, pressed, ranges, bulkDensityKgPerL, halfSizeMm, pieceShape } = draft
  if (draft.nameEn.trim() === '' || draft.kind.trim() === '' || !composition) return undefined
  if (bulkDensityKgPerL === undefined) return undefined
  if (problemOfRange(drained, true) || problemOfRange(pressed, true)) return undefined
  if (drained.typical === undefined || pressed.typical === undefined) return undefined
  if (rangedFields.some((field) => problemOfRange(ranges[field], false))) return undefined
  if (pieceShape !== 'none' && halfSizeMm === undefined) return undefined
  const piece = pieceShape !== 'none' && halfSizeMm ? { shape: pieceShape, halfSizeMm } : undefined
  return {
    id: from.id,
    nameEn: draft.nameEn.trim(),
    namePl: draft.namePl.trim(),
    latin: draft.latin.trim(),
    kind: draft.kind.trim(),
    composition,
    kineticClass: draft.kineticClass,
    ...(piece && { piece }),
    drainedLPerKg: drained.typical,
    pressedLPerKg: pressed.typical,
    bulkDensityKgPerL,
    ...(from.pace !== undefined && { pace: from.pace }),
    ...given('drainedRangeLPerKg', rangeOf(drained)),
    ...given('pressedRangeLPerKg', rangeOf(pressed)),
    ...seasonOf(draft),
    preparation: draft.preparation.trim(),
    ...Object.assign({}, ...rangedFields.map((field) => given(field, rangeOf(ranges[field])))),
    ...(draft.pectinHaze !== 'unknown' && { pectinHaze: draft.pectinHaze }),
    hazards: draft.hazards
      .split('\n')
      .map((line) => line.trim())
      .filter(Boolean),
    sources: from.sources,
  }
}

const given = <Key extends string, Value>(key: Key, value: Value | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { [K in Key]?: Value }

function compositionOf(draft: FruitDraft, from: Fruit): Fruit['composition'] | undefined {
  const { ediblePct, waterPct, sugarPct, acidPct, pulpPct } = draft
  const solublesPct = restPct(draft)
  if (ediblePct === undefined || solublesPct === undefined || solublesPct < 0) return undefined
  const was = draftOf(from)
  const isAsBefore = (['waterPct', 'sugarPct', 'acidPct', 'pulpPct'] as const).every(
    (part) => draft[part] === was[part],
  )
  const edibleFraction =
    ediblePct === was.ediblePct ? from.composition.edibleFraction : ediblePct / 100
  // The rest of rounded parts may differ in its last digit: what was not touched stays as it was.
  if (isAsBefore) return { ...from.composition, edibleFraction }
  return {
    edibleFraction,
    waterPct: waterPct as number,
    sugarPct: sugarPct as number,
    acidPct: acidPct as number,
    solublesPct,
    pulpPct: pulpPct as number,
  }
}

function seasonOf(draft: FruitDraft): Pick<Fruit, 'season' | 'mediterraneanShiftWeeks'> {
  if (!draft.isSeasonal) return {}
  const { startMonth, endMonth, peakMonths, shiftWeeks } = draft
  return {
    season: { startMonth, endMonth, peakMonths: [...peakMonths] },
    ...(shiftWeeks !== undefined && { mediterraneanShiftWeeks: shiftWeeks }),
  }
}
