/**
 * Looks at a jar and says what a careful maker should see: limits of the craft reference
 * (preservation, cyanide, vessels), marked there as found, estimate or common practice.
 */
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Caution } from '../../../shared/schemas/cellar.ts'
import type { JarState } from '../ledger/cellar-state.ts'
import { describeJar } from '../ledger/jar-liquid.ts'
import { uncoveredBy } from './uncovered.ts'

/** Sugar and raw fruit without spirit begin to ferment; common practice, no source. */
export const sugarOnlyLimitHours = 24

/** Delle number from which yeast does not grow; Kunkee & Amerine 1968 by a wine-laboratory note. */
export const delleLimit = 75

/** Least strength while fruit is in; estimate and common practice. */
export const steepingLimitPctVol = 20

/** From this strength vapour burns at room temperature; flash-point table. */
export const flammablePctVol = 40

/** Whole stones should not stay in longer; common practice, no source. */
export const stonesLimitDays = 56

/** Sugar (g/L) and strength together keep yeast away: g/L ÷ 10 + 4.5 · % vol. */
export const delleNumber = (strengthPctVol: number, sugarGPerL: number): number =>
  sugarGPerL / 10 + 4.5 * strengthPctVol

export interface JarToCheck {
  readonly jarId: string
  readonly jar: JarState
  readonly capacityMl: number
  readonly nowMs: number
  readonly fruitOf: (fruitId: string) => Fruit
}

export function jarCautions(check: JarToCheck): Caution[] {
  const { jarId, jar, capacityMl } = check
  const contents = describeJar(jarId, jar)
  const days = (check.nowMs - jar.stageSinceMs) / msPerDay
  const at = { batchId: jar.batchId, jarId }
  const cautions: Caution[] = []
  const warn = (code: Caution['code'], value: number, limit: number) =>
    cautions.push({ code, severity: 'warning', ...at, value, limit })
  const note = (code: Caution['code'], value: number, limit: number) =>
    cautions.push({ code, severity: 'note', ...at, value, limit })

  const { resting, fillMl } = contents
  const hasFruit = jar.fruit !== null
  const isWithoutSpirit = (resting?.strengthPctVol ?? 0) === 0
  if (hasFruit && isWithoutSpirit && days * 24 > sugarOnlyLimitHours)
    warn('sugarOnlyTooLong', days * 24, sugarOnlyLimitHours)
  if (resting && !isWithoutSpirit) {
    const delle = delleNumber(resting.strengthPctVol, resting.sugarGPerL)
    if (delle < delleLimit) warn('mayFerment', delle, delleLimit)
    if (hasFruit && resting.strengthPctVol < steepingLimitPctVol)
      warn('weakForFruit', resting.strengthPctVol, steepingLimitPctVol)
  }
  if (fillMl > safeFillFraction * capacityMl)
    warn('jarOverfull', fillMl, safeFillFraction * capacityMl)
  const bare = uncoveredBy(jarId, jar)
  if (bare) note('uncovered', bare.freeMl, bare.gapsMl)
  const undissolvedG = contents.bed.sugarG
  if (undissolvedG > 1 && jar.stage !== 'layered') note('sugarUndissolved', undissolvedG, 0)
  if (jar.fruit && hasStones(jar, check.fruitOf) && days > stonesLimitDays && !isWithoutSpirit)
    warn('stonesTooLong', days, stonesLimitDays)
  return cautions
}

/** Whole stones are in the jar: stone fruit that was charged with more than its flesh. */
export function hasStones(jar: JarState, fruitOf: (fruitId: string) => Fruit): boolean {
  const { fruit } = jar
  if (!fruit?.fruits.some(({ fruitId }) => fruitOf(fruitId).kind === 'stoneFruit')) return false
  const chargedG = fruit.fruits.reduce((sum, { massG }) => sum + massG, 0)
  return chargedG - fruit.edibleG > 0.02 * chargedG
}
