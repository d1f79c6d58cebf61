/** From steeped fruit to its extracts: drawing off, a sugar draw, pressing, the pulp thrown out. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import { liquidVolumeMl } from '../engine/index.ts'
import { addMatter } from '../../shared/matter.ts'
import type { JarContents } from '../../shared/schemas/cellar.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { rhythmOf, type BatchStory } from './batch-plan.ts'
import { atHour, instant } from './days.ts'
import { readAlcoholometer, readJug, readTwoInstruments } from './instrument-shelf.ts'
import { emptyVessel, vesselIfAny } from './vessels.ts'

const minutes = (count: number) => count * 60_000

/** Puts the deeds of this part in the diary; each leaves a batch alone that was thrown away. */
export function planExtracts(story: BatchStory): void {
  const { plan, diary } = story
  const { drawOff, cover, pourOff, press } = rhythmOf(plan.kind)
  const on = (day: number, hour: number, deed: (story: BatchStory, ms: number) => Promise<void>) =>
    diary.at(atHour(plan.startMs + day * msPerDay, hour), async (ms) => {
      if (!story.isOver) await deed(story, ms)
    })
  on(drawOff, 17, drawFirst)
  if (plan.kind.drawSugarShare > 0) {
    on(cover, 17.5, coverFruit)
    on(pourOff, 18, pourOffDraw)
  }
  on(press, 10, pressOut)
}

/** All the ethanol of a jar as the volume it makes at the finished strength. */
function finishedMl(story: BatchStory, { free, held, bed, resting }: JarContents): number {
  const { strengthPctVol } = story.plan.kind.finished
  const { ethanolG } = addMatter(addMatter(free, held), bed)
  const ethanolMl = liquidVolumeMl({ ethanolG, waterG: 0, sugarG: 0 })
  return Math.max((100 * ethanolMl) / strengthPctVol, 1.12 * (resting?.volumeMl ?? 0))
}

async function drawFirst(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitJarId, hand, noise, plan } = story
  const contents = await hand.look(batchId, fruitJarId, atMs)
  const { jarId, roomMl } = await emptyVessel(hand, 'liquid', {
    wishMl: finishedMl(story, contents),
    leastMl: 1.15 * (contents.resting?.volumeMl ?? 0),
  })
  story.extractJarId = jarId
  story.extractRoomMl = roomMl
  const at = instant(atMs)
  // Who measures what runs off learns what the fruit keeps; no two lots of fruit keep the same.
  const measuredMl =
    10 * Math.round(((contents.liquid?.volumeMl ?? 0) * noise.between(0.95, 1.04)) / 10)
  const volume = plan.isSparse ? {} : { volumeMl: measuredMl }
  await hand.record({
    kind: 'drawOff',
    at,
    batchId,
    fromJarId: fruitJarId,
    toJarId: jarId,
    ...volume,
  })
  const read = async (laterMin: number, reader: typeof readJug, note?: string): Promise<Move> => {
    const ms = atMs + minutes(laterMin)
    const reading = reader(await hand.look(batchId, jarId, ms), noise)
    return { kind: 'read', at: instant(ms), batchId, jarId, reading, ...(note && { note }) }
  }
  const readings = [await read(20, readJug)]
  if (!plan.isSparse) readings.push(await read(30, readTwoInstruments))
  if (plan.mishaps.includes('alcoholometerInSweet'))
    readings.push(await read(40, readAlcoholometer, 'Can that be? The fruit took it all?'))
  await hand.record(...readings)
  if (plan.mishaps.includes('spilled')) await spill(story, atMs + minutes(50))
}

async function spill(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, extractJarId: jarId, hand } = story
  const { liquid } = await hand.look(batchId, jarId, atMs)
  if (!liquid) return
  await hand.record({
    kind: 'correct',
    at: instant(atMs),
    found: { jarId, volumeMl: Math.round(liquid.volumeMl) - 140 },
    note: 'Over the table, the shoes and the cat. Measured what is left.',
  })
}

async function coverFruit(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitKg, fruitJarId: jarId, hand, pantry, plan } = story
  const sugarG = 10 * Math.round(100 * fruitKg * plan.kind.drawSugarShare)
  const portions = await pantry.take('sugar', sugarG, atMs)
  await hand.record(
    ...portions.map(({ lotId, amount }): Move => ({
      kind: 'coverWithSugar',
      at: instant(atMs),
      batchId,
      jarId,
      lotId,
      massG: amount,
    })),
  )
}

async function pourOffDraw(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitJarId, hand } = story
  const toJarId = await secondJar(story, atMs)
  const at = instant(atMs)
  await hand.record({ kind: 'drawOff', at, batchId, fromJarId: fruitJarId, toJarId })
}

/**
 * A second jar for what comes after the first extract, big enough for all that is left; with none
 * free it joins the first at once.
 */
async function secondJar(story: BatchStory, atMs: number): Promise<string> {
  const { batchId, fruitJarId, hand } = story
  if (story.secondJarId !== '') return story.secondJarId
  const { resting } = await hand.look(batchId, fruitJarId, atMs)
  const room = await vesselIfAny(hand, 'liquid', { wishMl: resting?.volumeMl ?? 0 })
  story.secondJarId = room?.jarId ?? ''
  return room?.jarId ?? story.extractJarId
}

/** Presses the fruit and throws the cake out; in a busy season the fruit goes out unpressed. */
async function pressOut(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitJarId, hand, plan } = story
  const rinsedAt = instant(atMs + minutes(45))
  if (plan.isSparse || plan.kind.isNeverPressed) {
    await hand.record({ kind: 'discard', at: rinsedAt, from: { jarId: fruitJarId, part: 'all' } })
    return
  }
  const toJarId = await secondJar(story, atMs)
  await hand.record(
    { kind: 'press', at: instant(atMs), batchId, fromJarId: fruitJarId, toJarId },
    { kind: 'discard', at: rinsedAt, from: { jarId: fruitJarId, part: 'all' } },
  )
}
