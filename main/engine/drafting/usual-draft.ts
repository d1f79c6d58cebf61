/** A draft to begin with: a fruit as the trade usually steeps it, by the library's typical numbers. */
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'
import { reduce } from '../alcoholometry/reduce.ts'

/** Where the library knows nothing; common practice, no source. */
const usual = { strengthPctVol: 60, fruitKgPerL: 1, weeks: 6, sugarShare: 0.25 }

export interface UsualDraft {
  readonly fruit: Fruit
  readonly fruitG: number
  readonly spiritPctVol: number
  readonly startAt: string
}

export function usualDraft({ fruit, fruitG, spiritPctVol, startAt }: UsualDraft): DraftSpec {
  const isDry = fruit.kineticClass === 'dry' || fruit.kineticClass === 'driedFruit'
  const litres = fruitG / 1000 / (fruit.fruitKgPerLSpirit?.typical ?? usual.fruitKgPerL)
  const steepPctVol = fruit.steepingStrengthPctVol?.typical ?? usual.strengthPctVol
  const { spiritMl, waterMl } = cutSpirit(litres * 1000, spiritPctVol, steepPctVol)
  const sugarG = Math.round((usual.sugarShare * fruitG) / 10) * 10
  return {
    startAt,
    fruits: [{ fruitId: fruit.id, massG: fruitG, refuseShare: 0, cut: usualCut(fruit) }],
    sweetenerId: 'sugar',
    layeringSugarG: isDry ? 0 : sugarG,
    layeringDays: isDry ? 0 : 1,
    spirits: [{ strengthPctVol: spiritPctVol, volumeMl: spiritMl }],
    steepWaterMl: waterMl,
    steepWeeks: fruit.steepingWeeks?.typical ?? usual.weeks,
    temperatureC: 20,
    turned: 'weekly',
    sugarDraws: isDry || sugarG <= 0 ? [] : [{ sugarG, days: 10 }],
    isPressed: false,
    finishWaterMl: 0,
    finishSugarG: 0,
    finishSpiritMl: 0,
    settleDays: 14,
    filters: ['cloth', 'paper'],
    bottleSizeMl: 500,
    vessels: { steep: [], extracts: [] },
  }
}

/** Spirit and water that together give the volume wanted, cut to the steeping strength. */
function cutSpirit(wantedMl: number, fromPctVol: number, toPctVol: number) {
  if (fromPctVol <= toPctVol) return { spiritMl: wantedMl, waterMl: 0 }
  const perLitre = reduce({ volumeMl: 1000, strengthPctVol: fromPctVol, targetPctVol: toPctVol })
  const scale = wantedMl / perLitre.resultMl
  return { spiritMl: Math.round(1000 * scale), waterMl: Math.round(perLitre.waterMl * scale) }
}

function usualCut({ kineticClass }: Fruit): Cut {
  switch (kineticClass) {
    case 'cutSoft':
    case 'hardSlice':
      return 'cut'
    case 'waxySkin':
      return 'pricked'
    case 'softWhole':
    case 'thinSkin':
    case 'dry':
    case 'driedFruit':
      return 'whole'
  }
}
