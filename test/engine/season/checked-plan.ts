/**
 * What is wrong with a plan, found without the code that makes plans: jars taken twice, over- or
 * underfilled, weeks out of season, sums that do not add up, limits passed. Empty when all is right.
 */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type { SeasonPlan } from '../../../shared/schemas/season.ts'

export interface PlanBeside {
  readonly fruitOf: (fruitId: string) => Fruit
  /** What the pantry has of spirit, sugar, honey, and of each fruit. */
  readonly spiritMl: number
  readonly sweetenerG: (id: 'sugar' | 'honey') => number
  readonly pantryFruitG: (fruitId: string) => number
  /** The batch that stands in a jar when the plan is made. */
  readonly batchIn: (jarId: string) => string | undefined
}

const weekMs = 7 * 24 * 3_600_000

export function faultsOf(plan: SeasonPlan, beside: PlanBeside): string[] {
  return [
    ...jarFaults(plan, beside),
    ...replayFaults(plan),
    ...fillFaults(plan),
    ...seasonFaults(plan, beside),
    ...sumFaults(plan, beside),
    ...limitFaults(plan),
  ]
}

function jarFaults({ spans, jars, weekCount }: SeasonPlan, { batchIn }: PlanBeside): string[] {
  const known = new Set(jars.map(({ jarId }) => jarId))
  const faults = spans
    .filter(({ jarId }) => !known.has(jarId))
    .map(({ jarId }) => `no jar ${jarId}`)
  const weeks = new Map<string, string>()
  for (const { jarId, fromWeek, toWeek, use, batchKey = '', batchId = '' } of spans)
    for (let week = fromWeek; week < toWeek; week += 1) {
      const at = `${jarId} in week ${week}`
      const who = `${use} ${batchKey}${batchId}`
      const before = weeks.get(at)
      if (before !== undefined) faults.push(`${at}: ${before}, and ${who}`)
      weeks.set(at, who)
    }
  for (const { jarId, use, batchId } of spans)
    if (use === 'standing' && batchId !== batchIn(jarId))
      faults.push(`${batchId} is not in ${jarId}`)
  for (const { jarId, usedWeeks } of jars) {
    const filled = Array.from({ length: weekCount }, (_, week) =>
      weeks.get(`${jarId} in week ${week}`),
    )
    const held = filled.filter((who) => who !== undefined && !who.startsWith('cleaning')).length
    if (held !== usedWeeks) faults.push(`${jarId} holds something ${held} weeks, not ${usedWeeks}`)
  }
  return faults
}

const replayFaults = ({ batches }: SeasonPlan): string[] =>
  batches.flatMap(({ key, volumeMl: { low, high }, replay }) => {
    // To a millilitre: what is poured is rounded.
    const isIn = replay.volumeMl > low - 1.001 && replay.volumeMl < high + 1.001
    return replay.isWithinBand && !isIn ? [`${key} comes to ${replay.volumeMl} ml`] : []
  })

function fillFaults({ batches, jars, spans, wishes }: SeasonPlan): string[] {
  const capacity = new Map(jars.map(({ jarId, capacityMl }) => [jarId, capacityMl]))
  return batches.flatMap(({ key, steepJars, settleJars, fruitG }) => {
    const own = [...steepJars, ...settleJars]
    const faults = own.flatMap(({ jarId, fillMl, fillShare }) => {
      const size = capacity.get(jarId) ?? 0
      const isWrong = Math.abs(fillMl / size - fillShare) > 1e-6
      const isOff = fillShare > 0.95 + 1e-6 || fillShare < 0.4 - 1e-6
      return isWrong || isOff ? [`${key} fills ${jarId} to ${fillShare.toFixed(3)}`] : []
    })
    const inJarsG = steepJars.reduce((sum, jar) => sum + jar.fruitG, 0)
    if (Math.abs(inJarsG - fruitG) > 0.01) faults.push(`${key} has ${inJarsG} g in jars`)
    for (const { jarId } of own) {
      const mine = spans.find((span) => span.jarId === jarId && span.batchKey === key)
      const washed = spans.some(
        (span) =>
          span.jarId === jarId &&
          span.use === 'cleaning' &&
          mine !== undefined &&
          span.fromWeek === mine.toWeek &&
          span.toWeek - span.fromWeek === wishes.cleaningWeeks,
      )
      if (!mine) faults.push(`${key} has no span in ${jarId}`)
      else if (wishes.cleaningWeeks > 0 && !washed) faults.push(`${jarId} is not washed`)
    }
    return faults
  })
}

/** North-temperate months alone: a week outside them by more than five weeks is no season at all. */
function seasonFaults(plan: SeasonPlan, { fruitOf, pantryFruitG }: PlanBeside): string[] {
  const taken = new Map<string, number>()
  const faults = plan.batches.flatMap(({ key, kindId, source, fruitG, startAt, week }) => {
    const wrong: string[] = []
    const startMs = Date.parse(plan.startAt) + week * weekMs
    if (startMs !== Date.parse(startAt)) wrong.push(`${key} starts on ${startAt}`)
    if (source === 'pantry') taken.set(kindId, (taken.get(kindId) ?? 0) + fruitG)
    const { season } = fruitOf(kindId)
    if (source === 'pantry' || !season || season.startMonth === 1) return wrong
    const month = new Date(startMs + 3.5 * 24 * 3_600_000).getUTCMonth() + 1
    const length = (season.endMonth - season.startMonth + 12) % 12
    const into = (month - season.startMonth + 12) % 12
    const isIn = into <= length + 1 || into === 11
    return isIn ? wrong : [...wrong, `${key} starts in month ${month}`]
  })
  for (const [kindId, usedG] of taken)
    if (usedG > pantryFruitG(kindId) + 0.01) faults.push(`${usedG} g of ${kindId} from the pantry`)
  return faults
}

const sum = <T>(all: readonly T[], of: (one: T) => number | undefined): number =>
  all.reduce((total, one) => total + (of(one) ?? 0), 0)

function sumFaults(plan: SeasonPlan, { spiritMl, sweetenerG }: PlanBeside): string[] {
  const { batches, purchases, totals, kinds } = plan
  const faults: string[] = []
  const equal = (what: string, a: number, b: number) => {
    if (Math.abs(a - b) > 1e-6 * Math.max(1, Math.abs(a)) + 1) faults.push(`${what}: ${a} and ${b}`)
  }
  const lines = (what: string) => purchases.filter((line) => line.what === what)
  equal(
    'fruit',
    sum(lines('fruit'), ({ massG }) => massG),
    sum(
      batches.filter(({ source }) => source === 'fresh'),
      ({ spec }) => sum(spec.fruits, ({ massG }) => massG),
    ),
  )
  const pouredMl = sum(
    batches,
    ({ spec }) => sum(spec.spirits, (s) => s.volumeMl) + spec.finishSpiritMl,
  )
  const boughtMl = sum(lines('spirit'), ({ volumeMl }) => volumeMl)
  equal('spirit', boughtMl, Math.max(0, pouredMl - spiritMl))
  equal(
    'spirit in all',
    sum(totals.spirits, (s) => s.volumeMl),
    pouredMl,
  )
  for (const id of ['sugar', 'honey'] as const) {
    const usedG = sum(batches, ({ spec }) =>
      spec.sweetenerId === id
        ? spec.layeringSugarG + spec.finishSugarG + sum(spec.sugarDraws, (d) => d.sugarG)
        : 0,
    )
    const bought = lines('sweetener').filter(({ sweetenerId }) => sweetenerId === id)
    const boughtG = sum(bought, ({ massG }) => massG)
    equal(id, boughtG, Math.max(0, usedG - sweetenerG(id)))
  }
  for (const what of ['bottle', 'cork', 'label'])
    equal(
      what,
      sum(lines(what), ({ count }) => count),
      totals.bottles,
    )
  equal(
    'bottles',
    totals.bottles,
    sum(batches, ({ bottles }) => bottles),
  )
  equal(
    'money',
    totals.moneyMinor,
    sum(purchases, ({ priceMinor }) => priceMinor),
  )
  equal(
    'litres',
    totals.volumeMl.value,
    sum(kinds, ({ plannedMl }) => plannedMl.value),
  )
  for (const { kindId, plannedMl, wantedMl, shortMl } of kinds)
    if (Math.abs(Math.max(0, wantedMl - plannedMl.value) - shortMl) > 10.01)
      faults.push(`${kindId} is short ${shortMl} of ${wantedMl}, planned ${plannedMl.value}`)
  for (const { key, bottles, volumeMl, bottleSizeMl } of batches)
    if (bottles !== Math.floor(volumeMl.value / bottleSizeMl + 1e-6)) faults.push(`${key} bottles`)
  return faults
}

function limitFaults({ wishes: { limits }, totals }: SeasonPlan): string[] {
  const faults: string[] = []
  // A line's price is rounded to the smallest coin.
  if (limits.moneyMinor !== undefined && totals.moneyMinor > limits.moneyMinor + 100)
    faults.push(`costs ${totals.moneyMinor} of ${limits.moneyMinor}`)
  if (limits.shelfBottles !== undefined && totals.bottles > limits.shelfBottles)
    faults.push(`${totals.bottles} bottles for ${limits.shelfBottles} places`)
  return faults
}
