/**
 * How a line of the fruit library is written, and what becomes of it.
 *
 * A line keeps each published number beside the code of its source. Of 100 g edible mass it gives
 * water, sugar, acid and insolubles; other solubles are what is left of 100 g, so the table's
 * rounding (at most 0.05 g) lies in them and every measured figure stays as published. Where the
 * four already exceed 100 g (gooseberry by 0.37 g, plum by 0.05 g) all are scaled down alike.
 * Spices, roots, flowers and green walnuts are not split further: what is not water, sugar or acid
 * counts as insoluble.
 * The edible fraction is of the bought mass; it is 1 where a maker weighs the trimmed thing itself
 * (peel, citrus flesh, flowers, spices, peeled ginger, dry and dried goods).
 */
import type { Fruit, KineticClass, Piece } from '../../../shared/schemas/fruits.ts'
import type { Composition } from '../../../shared/schemas/goods.ts'

/** A number and the code of its source. */
export type Sourced = readonly [value: number, source: string]
/** Typical, low and high value, and the code of their source. */
export type SourcedRange = readonly [typical: number, low: number, high: number, source: string]

export interface FruitRow {
  readonly id: string
  readonly nameEn: string
  readonly namePl: string
  readonly latin: string
  readonly kind: string
  readonly per100gEdible: {
    readonly waterG: Sourced
    readonly sugarG: Sourced
    readonly acidG: Sourced
    readonly insolubleG: Sourced
  }
  readonly edibleFraction: Sourced
  /** Prepared as the trade steeps it, loosely filled; pressing it down adds a tenth to a fifth. */
  readonly bulkDensityKgPerL: Sourced
  readonly kineticClass: KineticClass
  /** As the trade steeps it: half a slice's thickness, or a radius. */
  readonly piece: readonly [shape: Piece['shape'], halfSizeMm: number, source: string]
  readonly drainedLPerKg: SourcedRange
  readonly pressedLPerKg: SourcedRange
  /** First, last and best months in the north-temperate zone; left out for what is sold all year. */
  readonly season?: readonly [
    startMonth: number,
    endMonth: number,
    peakMonths: readonly number[],
    source: string,
  ]
  /** Weeks by which the season lies later around the Mediterranean: earlier is below zero. */
  readonly mediterraneanShiftWeeks?: Sourced
  readonly preparation: string
  readonly steepingStrengthPctVol: SourcedRange
  readonly steepingWeeks: SourcedRange
  readonly fruitKgPerLSpirit: SourcedRange
  readonly finishedSugarGPerL: SourcedRange
  readonly finishedStrengthPctVol: SourcedRange
  readonly restMonths: SourcedRange
  readonly drinkByYears: SourcedRange
  readonly pectinHaze: readonly [risk: 'low' | 'medium' | 'high', source: string]
  readonly hazards: readonly (readonly [text: string, source: string])[]
}

export function fruitOfRow(row: FruitRow): Fruit {
  const { season, mediterraneanShiftWeeks } = row
  const [shape, halfSizeMm] = row.piece
  return {
    id: row.id,
    nameEn: row.nameEn,
    namePl: row.namePl,
    latin: row.latin,
    kind: row.kind,
    composition: compositionOf(row),
    bulkDensityKgPerL: row.bulkDensityKgPerL[0],
    kineticClass: row.kineticClass,
    piece: { shape, halfSizeMm },
    drainedLPerKg: row.drainedLPerKg[0],
    pressedLPerKg: row.pressedLPerKg[0],
    drainedRangeLPerKg: rangeOf(row.drainedLPerKg),
    pressedRangeLPerKg: rangeOf(row.pressedLPerKg),
    ...(season && { season: seasonOf(season) }),
    ...(mediterraneanShiftWeeks && { mediterraneanShiftWeeks: mediterraneanShiftWeeks[0] }),
    preparation: row.preparation,
    steepingStrengthPctVol: rangeOf(row.steepingStrengthPctVol),
    steepingWeeks: rangeOf(row.steepingWeeks),
    fruitKgPerLSpirit: rangeOf(row.fruitKgPerLSpirit),
    finishedSugarGPerL: rangeOf(row.finishedSugarGPerL),
    finishedStrengthPctVol: rangeOf(row.finishedStrengthPctVol),
    restMonths: rangeOf(row.restMonths),
    drinkByYears: rangeOf(row.drinkByYears),
    pectinHaze: row.pectinHaze[0],
    hazards: row.hazards.map(([text]) => text),
    sources: sourcesOf(row),
  }
}

function compositionOf({ per100gEdible, edibleFraction }: FruitRow): Composition {
  const { waterG, sugarG, acidG, insolubleG } = per100gEdible
  const givenG = waterG[0] + sugarG[0] + acidG[0] + insolubleG[0]
  const scale = givenG > 100 ? 100 / givenG : 1
  return {
    edibleFraction: edibleFraction[0],
    waterPct: scale * waterG[0],
    sugarPct: scale * sugarG[0],
    acidPct: scale * acidG[0],
    solublesPct: Math.max(0, 100 - givenG),
    pulpPct: scale * insolubleG[0],
  }
}

const rangeOf = ([typical, low, high]: SourcedRange) => ({ typical, low, high })

const seasonOf = ([startMonth, endMonth, peakMonths]: NonNullable<FruitRow['season']>) => ({
  startMonth,
  endMonth,
  peakMonths: [...peakMonths],
})

/** Source code by field of the fruit; what no figure stands behind is practice or estimate. */
function sourcesOf(row: FruitRow): Record<string, string> {
  const { per100gEdible, season, mediterraneanShiftWeeks } = row
  return {
    'composition.edibleFraction': row.edibleFraction[1],
    'composition.waterPct': per100gEdible.waterG[1],
    'composition.sugarPct': per100gEdible.sugarG[1],
    'composition.acidPct': per100gEdible.acidG[1],
    'composition.solublesPct': 'D',
    'composition.pulpPct': per100gEdible.insolubleG[1],
    bulkDensityKgPerL: row.bulkDensityKgPerL[1],
    kineticClass: 'E',
    piece: row.piece[2],
    drainedLPerKg: row.drainedLPerKg[3],
    pressedLPerKg: row.pressedLPerKg[3],
    ...(season && { season: season[3] }),
    ...(mediterraneanShiftWeeks && { mediterraneanShiftWeeks: mediterraneanShiftWeeks[1] }),
    preparation: 'P',
    steepingStrengthPctVol: row.steepingStrengthPctVol[3],
    steepingWeeks: row.steepingWeeks[3],
    fruitKgPerLSpirit: row.fruitKgPerLSpirit[3],
    finishedSugarGPerL: row.finishedSugarGPerL[3],
    finishedStrengthPctVol: row.finishedStrengthPctVol[3],
    restMonths: row.restMonths[3],
    drinkByYears: row.drinkByYears[3],
    pectinHaze: row.pectinHaze[1],
    ...Object.fromEntries(row.hazards.map(([, source], index) => [`hazards.${index}`, source])),
  }
}
