/** The seasons that are over: what was made in each, and what went wrong. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import type { BatchPlan } from './batch-plan.ts'
import { atHour, lastTime } from './days.ts'
import type { BlendGift } from './house-blend.ts'
import { houseKinds, type KindName } from './house-kinds.ts'
import type { Mishap } from './mishap.ts'
import { seededNoise } from './seeded-noise.ts'

interface PastBatch {
  readonly kind: KindName
  readonly fruitKg: number
  readonly mishaps?: readonly Mishap[]
  readonly isSparse?: true
  readonly gift?: BlendGift
}

/** From the latest to the first. */
const seasons: readonly (readonly PastBatch[])[] = [
  [
    { kind: 'blackberry', fruitKg: 1.8 },
    { kind: 'sourCherry', fruitKg: 2, mishaps: ['spilled'] },
    { kind: 'quince', fruitKg: 2.8 },
    { kind: 'cornelian', fruitKg: 1.9 },
    { kind: 'raspberry', fruitKg: 1.7, mishaps: ['sugarMistyped'] },
    { kind: 'gingerHoney', fruitKg: 0.35 },
    { kind: 'sloe', fruitKg: 1.4 },
  ],
  [
    { kind: 'apricot', fruitKg: 1.9 },
    { kind: 'walnut', fruitKg: 1.3 },
    { kind: 'japaneseQuince', fruitKg: 1.5, mishaps: ['crushUndone'] },
    { kind: 'rowan', fruitKg: 1 },
    {
      kind: 'sourCherry',
      fruitKg: 2,
      mishaps: ['bottlesMiscounted'],
      gift: { volumeMl: 700 },
    },
    { kind: 'orangePeel', fruitKg: 0.2 },
    {
      kind: 'damson',
      fruitKg: 1.6,
      mishaps: ['alcoholometerInSweet'],
      gift: { volumeMl: 500 },
    },
  ],
  [
    { kind: 'cornelian', fruitKg: 1.8, mishaps: ['bottleBroken'] },
    { kind: 'sourCherry', fruitKg: 2, mishaps: ['fruitLeftOver'] },
    { kind: 'plum', fruitKg: 2, isSparse: true },
    { kind: 'blackcurrant', fruitKg: 1.7 },
    { kind: 'sloe', fruitKg: 1.2 },
    { kind: 'elderflower', fruitKg: 0.3 },
    { kind: 'raspberry', fruitKg: 1.4, mishaps: ['drawnTwice'] },
  ],
  [
    { kind: 'sourCherry', fruitKg: 2, isSparse: true },
    { kind: 'blackcurrant', fruitKg: 1.5, mishaps: ['sugarMistyped'] },
    { kind: 'walnut', fruitKg: 1.4 },
    { kind: 'damson', fruitKg: 1.6 },
    { kind: 'strawberry', fruitKg: 1.5, mishaps: ['spoiled'] },
    { kind: 'gingerHoney', fruitKg: 0.3 },
  ],
  [
    { kind: 'sourCherry', fruitKg: 2 },
    { kind: 'raspberry', fruitKg: 1.2 },
    { kind: 'quince', fruitKg: 2.4, isSparse: true },
    { kind: 'sloe', fruitKg: 1.3, mishaps: ['alcoholometerInSweet'] },
    { kind: 'orangePeel', fruitKg: 0.2 },
  ],
]

/** Nothing of a past season began later than this before today, so that all of it is in bottles. */
const oldEnoughDays = 260

export function pastBatches(nowMs: number): BatchPlan[] {
  return seasons.flatMap((batches, yearsBefore) =>
    batches.map(({ kind: name, fruitKg, mishaps = [], isSparse = false, gift }): BatchPlan => {
      const kind = houseKinds[name]
      const noise = seededNoise(`${name} ${yearsBefore}`)
      const picked = lastTime(kind.pickedOn, nowMs - oldEnoughDays * msPerDay, yearsBefore)
      const startMs = atHour(picked + Math.round(noise.around(3)) * msPerDay, noise.between(14, 18))
      return {
        kind,
        startMs,
        fruitKg,
        isFromFreezer: false,
        isSparse,
        mishaps,
        ...(gift && { gift }),
      }
    }),
  )
}
