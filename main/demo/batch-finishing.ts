/** Marrying the extracts, bringing them to the house's taste, clearing, filtering and bottling. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import { composeSolution, describeSolution, sweeten } from '../engine/index.ts'
import type { Liquid } from '../../shared/schemas/cellar.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { fillBottles } from './bottling.ts'
import { rhythmOf, type BatchStory } from './batch-plan.ts'
import { atHour, instant } from './days.ts'
import { readBoilOff, readTwoInstruments } from './instrument-shelf.ts'
import { vesselIfAny } from './vessels.ts'

const tens = (amount: number) => 10 * Math.round(amount / 10)
const minutes = (count: number) => count * 60_000

export function planFinishing(story: BatchStory): void {
  const { plan, diary } = story
  const { marry, filter, bottle } = rhythmOf(plan.kind)
  const on = (day: number, hour: number, deed: (story: BatchStory, ms: number) => Promise<void>) =>
    diary.at(atHour(plan.startMs + day * msPerDay, hour), async (ms) => {
      if (!story.isOver) await deed(story, ms)
    })
  on(marry, 18.5, marryExtracts)
  if (!plan.isSparse) on(marry + 6, 20, tasteMarried)
  on(filter, 16, filterClear)
  on(bottle, 15, bottleAll)
}

async function marryExtracts(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, extractJarId, secondJarId, hand } = story
  if (secondJarId !== '')
    await hand.record({
      kind: 'marry',
      at: instant(atMs),
      batchId,
      parts: [{ jarId: extractJarId }, { jarId: secondJarId }],
      toJarId: extractJarId,
    })
  const ms = atMs + minutes(20)
  const { liquid } = await hand.look(batchId, extractJarId, ms)
  if (!liquid) return
  await bringToTaste(story, liquid, ms)
  await stirInAcid(story, liquid, ms + minutes(15))
}

/** Weighed by what was drawn off, before sugar and water stretched it: a cautious hand. */
async function stirInAcid(story: BatchStory, { volumeMl }: Liquid, atMs: number): Promise<void> {
  const { batchId, extractJarId: jarId, hand, pantry, plan } = story
  const massG = Math.round(((plan.kind.addedAcidGPerL ?? 0) * volumeMl) / 1000)
  if (massG === 0) return
  const at = instant(atMs)
  const portions = await pantry.take('acid', massG, atMs)
  await hand.record(
    ...portions.map(({ lotId, amount }): Move => ({
      kind: 'addAcid',
      at,
      batchId,
      jarId,
      lotId,
      massG: amount,
    })),
  )
}

/** Sugar to the wanted sweetness, and water where it is still stronger than the house likes. */
async function bringToTaste(story: BatchStory, liquid: Liquid, atMs: number): Promise<void> {
  const { batchId, extractJarId: jarId, hand, noise, pantry, plan } = story
  const { finished, sweetener } = plan.kind
  // Tastes of an evening: no two batches end alike.
  const dose = doseOf(liquid, {
    strengthPctVol: finished.strengthPctVol * (1 + noise.around(0.035)),
    sugarGPerL: finished.sugarGPerL * (1 + noise.around(0.06)),
  })
  // A jar too small for all the water and sugar gets its share of both.
  const addedMl = 0.62 * dose.sugarG + dose.waterMl
  const share = Math.min(1, Math.max(0, story.extractRoomMl - liquid.volumeMl) / addedMl)
  const at = instant(atMs)
  // Honey brings a fifth less sugar than its mass.
  const sweetG = tens((share * dose.sugarG) / (sweetener === 'honey' ? 0.82 : 1))
  const portions = sweetG > 0 ? await pantry.take(sweetener, sweetG, atMs) : []
  const moves = portions.map(({ lotId, amount }): Move => ({
    kind: 'sugar',
    at,
    batchId,
    jarId,
    lotId,
    massG: amount,
  }))
  const waterMl = tens(share * dose.waterMl)
  if (waterMl > 0) moves.push({ kind: 'pourWater', at, batchId, jarId, volumeMl: waterMl })
  if (moves.length > 0) await hand.record(...moves)
}

function doseOf(
  liquid: Liquid,
  finished: { readonly strengthPctVol: number; readonly sugarGPerL: number },
): { sugarG: number; waterMl: number } {
  const { volumeMl, strengthPctVol, sugarGPerL, acidGPerL } = liquid
  const here = composeSolution({ volumeMl, strengthPctVol, sugarGPerL, acidGPerL })
  const stretched = (volumeMl * strengthPctVol) / finished.strengthPctVol
  const wanted = composeSolution({ ...finished, volumeMl: stretched, acidGPerL })
  if (wanted.waterG > here.waterG && wanted.sugarG >= here.sugarG)
    return { sugarG: wanted.sugarG - here.sugarG, waterMl: wanted.waterG - here.waterG }
  const targetSugarGPerL = Math.max(finished.sugarGPerL, sugarGPerL)
  return { sugarG: sweeten({ ...liquid, targetSugarGPerL }).sugarG, waterMl: 0 }
}

async function tasteMarried(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, extractJarId: jarId, hand, noise } = story
  const reading = readTwoInstruments(await hand.look(batchId, jarId, atMs), noise)
  const at = instant(atMs)
  await hand.record(
    { kind: 'stir', at, batchId, jarId },
    { kind: 'read', at, batchId, jarId, reading },
  )
}

async function filterClear(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, extractJarId, hand, noise, plan } = story
  const { liquid } = await hand.look(batchId, extractJarId, atMs)
  const wishMl = liquid?.volumeMl ?? 0
  // With every vessel taken it is rinsed, and filled again through the filter.
  const clearJarId = (await vesselIfAny(hand, 'liquid', { wishMl }))?.jarId ?? extractJarId
  await hand.record({
    kind: 'filter',
    at: instant(atMs),
    batchId,
    fromJarId: extractJarId,
    toJarId: clearJarId,
    medium: plan.isSparse ? 'cloth' : noise.pick(['paper', 'paper', 'cloth', 'racking']),
  })
  story.extractJarId = clearJarId
  if (plan.isSparse) return
  const ms = atMs + minutes(50)
  const { free, ...contents } = await hand.look(batchId, clearJarId, ms)
  const reading = readBoilOff({ ...contents, free }, noise)
  await hand.record({ kind: 'read', at: instant(ms), batchId, jarId: clearJarId, reading })
  if (describeSolution(free).strengthPctVol < 20)
    await hand.record({
      kind: 'remark',
      at: instant(ms + minutes(5)),
      batchId,
      note: 'Weaker than meant. Keep it cold and drink it first.',
    })
}

async function bottleAll(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, extractJarId, hand, diary, noise, blend, opened, laid, plan } = story
  const { isSparse, kind, mishaps } = plan
  const { restMonths, tastings } = kind
  if (plan.gift) await blend.add(extractJarId, plan.gift, atMs - minutes(30))
  await fillBottles(
    { hand, diary, opened, laid, noise, batchId, kind, restMonths, isSparse, mishaps },
    extractJarId,
    atMs,
  )
  diary.at(atMs + minutes(60), (ms) => remarkOn(story, tastings[0], ms))
  diary.at(atMs + restMonths * 31 * msPerDay, (ms) => remarkOn(story, tastings[1], ms))
}

async function remarkOn({ batchId, hand }: BatchStory, note: string, atMs: number) {
  await hand.record({ kind: 'remark', at: instant(atMs), batchId, note })
}
