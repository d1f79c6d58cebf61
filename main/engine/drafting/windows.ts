/** Where a draft stands within the windows that the fruit library gives, and where it left them. */
import type {
  ChainStage,
  DraftSpec,
  DraftWarning,
  WindowShown,
} from '../../../shared/schemas/drafts.ts'
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { massFractionOfStrength } from '../alcoholometry/strength.ts'
import { densityOfSpirit } from '../alcoholometry/density-of-spirit.ts'
import { matterOf, sumMatter, type Matter } from '../../../shared/matter.ts'
import { densityOfWater } from '../solution/density-of-water.ts'
import { describeLiquid } from '../ledger/jar-liquid.ts'

/** The fruit there is most of: its windows are the draft's. */
export function leadingFruit(spec: DraftSpec, fruitOf: (id: string) => Fruit): Fruit {
  const heaviest = spec.fruits.reduce((most, fruit) => (fruit.massG > most.massG ? fruit : most))
  return fruitOf(heaviest.fruitId)
}

/** What is poured on the fruit, as if mixed beforehand: spirit and water. */
export function steepingLiquor(spec: DraftSpec): Liquid | undefined {
  const waterG = (spec.steepWaterMl * densityOfWater(20)) / 1000
  const spirits = spec.spirits.map(({ strengthPctVol, volumeMl }): Matter => {
    const massFraction = massFractionOfStrength(strengthPctVol)
    const massG = (volumeMl * densityOfSpirit({ massFraction, temperatureC: 20 })) / 1000
    return matterOf({ ethanolG: massG * massFraction, waterG: massG * (1 - massFraction) })
  })
  return describeLiquid(sumMatter([...spirits, matterOf({ waterG })]))
}

export const chargedKg = ({ fruits }: DraftSpec): number =>
  fruits.reduce((sum, { massG, refuseShare }) => sum + massG * (1 - refuseShare), 0) / 1000

export function windowsOf(
  spec: DraftSpec,
  fruit: Fruit,
  finished: Liquid | undefined,
): WindowShown[] {
  const liquor = steepingLiquor(spec)
  const values: Record<WindowShown['window'], number | undefined> = {
    steepingStrengthPctVol: liquor?.strengthPctVol,
    fruitKgPerLSpirit: liquor && chargedKg(spec) / (liquor.volumeMl / 1000),
    steepingWeeks: spec.steepWeeks,
    finishedSugarGPerL: finished?.sugarGPerL,
    finishedStrengthPctVol: finished?.strengthPctVol,
  }
  return (Object.keys(values) as WindowShown['window'][]).flatMap((window) => {
    const value = values[window]
    const range = fruit[window]
    return value === undefined || !range ? [] : [{ window, value, ...range }]
  })
}

/** Half of the last digit that a screen shows: nobody is warned of what looks like the limit. */
const slackShare = 0.005

const stageOfWindow: Record<WindowShown['window'], ChainStage['key'][]> = {
  steepingStrengthPctVol: ['steeping'],
  fruitKgPerLSpirit: ['steeping'],
  steepingWeeks: ['steeping'],
  finishedSugarGPerL: ['bottled', 'filtered', 'married'],
  finishedStrengthPctVol: ['bottled', 'filtered', 'married'],
}

export const windowWarnings = (
  windows: readonly WindowShown[],
  stages: readonly ChainStage[],
): DraftWarning[] =>
  windows
    .filter(({ value, low, high }) => {
      const slack = slackShare * Math.max(high, 1e-9)
      return value < low - slack || value > high + slack
    })
    .map(({ window, value, low, high }) => {
      const stage = stages.findIndex(({ key }) => stageOfWindow[window].includes(key))
      return { code: 'outsideWindow', window, value, low, high, ...(stage >= 0 && { stage }) }
    })
