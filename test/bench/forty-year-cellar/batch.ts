/** One batch from the market to the bottles: as many moves as a diligent maker writes down. */
import type { Move } from '../../../shared/schemas/moves.ts'
import { msPerDay, msPerHour } from '../../../shared/spans-of-time.ts'
import { atHour, instant, yearOf } from '../../../main/demo/days.ts'
import { glassTasted } from '../../../main/demo/glass-tasted.ts'
import type { HouseKind } from '../../../main/demo/house-kinds.ts'
import { seededNoise, type Noise } from '../../../main/demo/seeded-noise.ts'
import { planBottles } from './bottles.ts'
import type { Clerk } from './clerk.ts'

export interface Telling {
  readonly clerk: Clerk
  readonly kind: HouseKind
  readonly batchId: string
  readonly startMs: number
  readonly fruitKg: number
  readonly jarId: string
  readonly extractJarId: string
  readonly noise: Noise
}

export interface BatchAsked {
  readonly kind: HouseKind
  readonly batchId: string
  readonly startMs: number
}

/** Days from the start to each stage; the last is when both jars stand empty again. */
export function rhythm({ steepDays }: HouseKind) {
  const draw = steepDays + 2
  return { first: steepDays, cover: draw, press: draw + 9, finish: draw + 14, bottle: draw + 40 }
}

export async function tellBatch(
  clerk: Clerk,
  { kind, batchId, startMs }: BatchAsked,
  jars: { readonly jarId: string; readonly extractJarId: string },
): Promise<void> {
  const noise = seededNoise(batchId)
  const fruitKg = Math.round(10 * noise.between(3.2, 5.8)) / 10
  const telling = { clerk, kind, batchId, startMs, fruitKg, noise, ...jars }
  await clerk.ask('batches.open', {
    id: batchId,
    name: `${kind.title} ${yearOf(startMs)}`,
    colour: kind.colour,
    note: '',
    openedAt: instant(startMs),
  })
  const days = rhythm(kind)
  const on = (day: number, hour: number, moves: (ms: number) => Move[] | Promise<Move[]>) =>
    clerk.plan(atHour(startMs + day * msPerDay, hour), moves)
  on(0, 14, (ms) => begin(telling, ms))
  on(1, 10, (ms) => pourOver(telling, ms))
  for (let day = 3; day < days.first; day += 5 + Math.round(noise.between(0, 4)))
    on(day, 9 + noise.between(0, 8), (ms) => turned(telling, telling.jarId, ms))
  on(days.first, 17, (ms) => drawFirst(telling, ms))
  on(days.cover, 17, (ms) => cover(telling, ms))
  on(days.press, 16, (ms) => empty(telling, ms))
  on(days.finish, 18, (ms) => bringToTaste(telling, ms))
  for (const later of [4, 11, 19])
    on(days.finish + later, 20, (ms) => turned(telling, telling.extractJarId, ms))
  on(days.bottle, 15, (ms) => bottleAll(telling, ms))
}

const lot = ({ batchId }: Telling, of: string) => `${batchId}-${of}`

function begin(telling: Telling, ms: number): Move[] {
  const { batchId, fruitKg, jarId, kind, noise } = telling
  const [{ fruitId, refuseShare, cut }] = kind.ingredients
  const massG = Math.round(1000 * fruitKg)
  const bought = instant(ms - 3 * msPerHour)
  const at = instant(ms)
  const sugarG = Math.round(massG * (0.35 + kind.layerSugarShare))
  const price = (perUnit: number) => Math.round(perUnit * noise.between(0.8, 1.3))
  return [
    {
      kind: 'buy',
      at: bought,
      lotId: lot(telling, 'fruit'),
      goods: { kind: 'fruit', fruitId },
      massG,
      priceMinor: price(0.4 * massG),
    },
    {
      kind: 'buy',
      at: bought,
      lotId: lot(telling, 'spirit'),
      goods: { kind: 'spirit', strengthPctVol: 96 },
      volumeMl: Math.round(0.75 * massG),
      priceMinor: price(2 * massG),
    },
    {
      kind: 'buy',
      at: bought,
      lotId: lot(telling, 'sugar'),
      goods: { kind: 'sweetener', sweetenerId: 'sugar' },
      massG: sugarG,
      priceMinor: price(0.1 * sugarG),
    },
    {
      kind: 'charge',
      at,
      batchId,
      jarId,
      lotId: lot(telling, 'fruit'),
      massG,
      refuseG: Math.round(massG * refuseShare),
      cut,
    },
    {
      kind: 'sugar',
      at,
      batchId,
      jarId,
      lotId: lot(telling, 'sugar'),
      massG: Math.round(sugarG * 0.3),
    },
    { kind: 'remark', at, batchId, note: 'Washed, and dried on the big table.' },
  ]
}

function pourOver(telling: Telling, ms: number): Move[] {
  const { batchId, fruitKg, jarId } = telling
  const at = instant(ms)
  return [
    {
      kind: 'pourSpirit',
      at,
      batchId,
      jarId,
      lotId: lot(telling, 'spirit'),
      volumeMl: Math.round(750 * fruitKg),
    },
    { kind: 'pourWater', at, batchId, jarId, volumeMl: Math.round(200 * fruitKg) },
    { kind: 'keep', at, batchId, jarId, temperatureC: 17, turned: 'weekly' },
  ]
}

function turned({ batchId, noise }: Telling, jarId: string, ms: number): Move[] {
  const at = instant(ms)
  const stir: Move = { kind: 'stir', at, batchId, jarId }
  if (noise.happens(0.7)) return [stir]
  return [stir, { kind: 'remark', at, batchId, note: 'Clear above, and darker than yesterday.' }]
}

function drawFirst({ batchId, jarId, extractJarId }: Telling, ms: number): Move[] {
  const pour = { fromJarId: jarId, toJarId: extractJarId }
  return [{ kind: 'drawOff', at: instant(ms), batchId, ...pour }]
}

function cover(telling: Telling, ms: number): Move[] {
  const { batchId, fruitKg, jarId } = telling
  const massG = Math.round(150 * fruitKg)
  const lotId = lot(telling, 'sugar')
  return [{ kind: 'coverWithSugar', at: instant(ms), batchId, jarId, lotId, massG }]
}

function empty({ batchId, jarId, extractJarId }: Telling, ms: number): Move[] {
  const pour = { batchId, fromJarId: jarId, toJarId: extractJarId }
  return [
    { kind: 'drawOff', at: instant(ms), ...pour },
    { kind: 'press', at: instant(ms + msPerHour), ...pour },
    { kind: 'discard', at: instant(ms + 2 * msPerHour), from: { jarId, part: 'all' } },
  ]
}

async function bringToTaste(telling: Telling, ms: number): Promise<Move[]> {
  const { batchId, clerk, extractJarId: jarId, kind, noise } = telling
  const at = instant(ms)
  const { liquid } = await look(clerk, batchId, jarId, at)
  const { strengthPctVol } = kind.finished
  const waterMl = liquid ? liquid.volumeMl * (liquid.strengthPctVol / strengthPctVol - 1) : 0
  const temperatureC = 18
  const volumeMl = Math.round(liquid?.volumeMl ?? 0)
  const tasted = glassTasted(kind, 1, noise)
  return [
    {
      kind: 'read',
      at,
      batchId,
      jarId,
      reading: { instrument: 'measuringJug', volumeMl, temperatureC },
    },
    ...(waterMl > 10
      ? [{ kind: 'pourWater', at, batchId, jarId, volumeMl: Math.round(waterMl) } as const]
      : []),
    { kind: 'taste', at: instant(ms + msPerHour), batchId, jarId, ...tasted },
  ]
}

async function bottleAll(telling: Telling, ms: number): Promise<Move[]> {
  const { batchId, clerk, extractJarId, noise } = telling
  const at = instant(ms)
  const { liquid } = await look(clerk, batchId, extractJarId, at)
  const count = Math.floor((0.97 * (liquid?.volumeMl ?? 0)) / 500)
  const filtered: Move = {
    kind: 'filter',
    at,
    batchId,
    fromJarId: extractJarId,
    toJarId: extractJarId,
    medium: 'paper',
    lossMl: 0.02 * (liquid?.volumeMl ?? 0),
  }
  const filled = planBottles(telling, count, ms + msPerHour)
  return [
    filtered,
    ...filled,
    {
      kind: 'discard',
      at: instant(ms + 2 * msPerHour),
      from: { jarId: extractJarId, part: 'all' },
    },
    { kind: 'remark', at: instant(ms + 3 * msPerHour), batchId, note: noise.pick(endings) },
  ]
}

const endings = ['Corked and waxed.', 'Labels tomorrow.', 'One cork short.'] as const

/** What stands in a jar once everything before it is written: a preview, which writes nothing. */
async function look(clerk: Clerk, batchId: string, jarId: string, at: string) {
  await clerk.writeUp(Date.parse(at))
  const moves: Move[] = [{ kind: 'stir', at, batchId, jarId }]
  const { steps, refusals } = await clerk.ask('moves.preview', { moves })
  const contents = steps[0]?.after[0]
  if (!contents) throw new Error(`nothing in ${jarId}: ${JSON.stringify(refusals)}`)
  return contents
}
