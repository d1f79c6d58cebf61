/** A batch begins: fruit bought and charged, sugar or spirit over it, and the first weeks. */
import { msPerDay, msPerHour } from '../../shared/spans-of-time.ts'
import { reduce } from '../engine/index.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { litresPerKg, type BatchStory } from './batch-plan.ts'
import { instant } from './days.ts'
import type { Ingredient } from './house-kinds.ts'
import { readAlcoholometer, readTwoInstruments } from './instrument-shelf.ts'
import { spiritPctVol } from './pantry-keeper.ts'
import { emptyVessel } from './vessels.ts'

const tens = (amount: number) => 10 * Math.round(amount / 10)
const minutes = (count: number) => count * 60_000

interface Dose {
  readonly strongMl: number
  readonly waterMl: number
  readonly layerSugarG: number
}

/** Spirit, water and sugar for the fruit, in the tens that a maker measures. */
function doseOf({ fruitKg, plan: { kind } }: BatchStory): Dose {
  const spiritMl = (1000 * fruitKg) / kind.kgPerLSpirit
  const strongMl = tens((spiritMl * kind.spiritPctVol) / spiritPctVol)
  const { waterMl } = reduce({
    volumeMl: strongMl,
    strengthPctVol: spiritPctVol,
    targetPctVol: kind.spiritPctVol,
  })
  return {
    strongMl,
    waterMl: tens(waterMl),
    layerSugarG: tens(1000 * fruitKg * kind.layerSugarShare),
  }
}

export async function begin(story: BatchStory, atMs: number): Promise<void> {
  const { plan, hand, diary } = story
  const mlPerKg = 1000 * litresPerKg(plan.kind)
  const wishMl = plan.fruitKg * mlPerKg
  const { jarId, roomMl } = await emptyVessel(hand, 'fruit', { wishMl, leastMl: wishMl / 6 })
  story.fruitJarId = jarId
  story.fruitKg = Math.min(plan.fruitKg, Math.floor((20 * roomMl) / mlPerKg) / 20)
  const dose = doseOf(story)
  await buyFruit(story, atMs - 2 * msPerHour)
  if (dose.layerSugarG > 0) {
    await layer(story, dose, atMs)
    diary.at(atMs + 16.5 * msPerHour, (ms) => pourSpirit(story, dose, ms))
  } else {
    await pourSpirit(story, dose, atMs)
    await readFirst(story, atMs + minutes(15))
    await hand.record(...charges(story, atMs + minutes(30)))
  }
  keepAnEye(story, atMs)
  if (plan.mishaps.includes('spoiled')) diary.at(atMs + 9 * msPerDay, (ms) => spoil(story, ms))
}

const lotOf = (story: BatchStory, { fruitId }: Ingredient) =>
  `${story.batchId}-${fruitId.replaceAll('_', '-')}`

const boughtG = ({ fruitKg }: BatchStory, { kgPerKg }: Ingredient) => tens(1000 * fruitKg * kgPerKg)

async function buyFruit(story: BatchStory, atMs: number): Promise<void> {
  const { kind, isFromFreezer, mishaps } = story.plan
  const extraG = mishaps.includes('fruitLeftOver') ? 400 : 0
  await story.hand.record(
    ...kind.ingredients.map((ingredient): Move => {
      const massG = boughtG(story, ingredient) + extraG
      const priceMinor = Math.round((ingredient.priceMinorPerKg * massG) / 1000)
      return {
        kind: 'buy',
        at: instant(atMs),
        lotId: lotOf(story, ingredient),
        goods: { kind: 'fruit', fruitId: ingredient.fruitId },
        massG,
        ...(priceMinor > 0 && { priceMinor }),
        ...(isFromFreezer && { note: 'From the freezer.' }),
      }
    }),
  )
}

function charges(story: BatchStory, atMs: number): Move[] {
  const { batchId, fruitJarId: jarId, plan } = story
  return plan.kind.ingredients.map((ingredient) => {
    const massG = boughtG(story, ingredient)
    const refuseG = tens(massG * ingredient.refuseShare)
    return {
      kind: 'charge',
      at: instant(atMs),
      batchId,
      jarId,
      lotId: lotOf(story, ingredient),
      massG,
      ...(refuseG > 0 && { refuseG }),
      cut: plan.isFromFreezer ? 'frozen' : ingredient.cut,
    }
  })
}

async function layer(story: BatchStory, dose: Dose, atMs: number): Promise<void> {
  const { batchId, fruitJarId: jarId, hand, pantry, plan, diary } = story
  const portions = await pantry.take('sugar', dose.layerSugarG, atMs)
  const sugars = portions.map(({ lotId, amount }): Move => ({
    kind: 'sugar',
    at: instant(atMs + minutes(40)),
    batchId,
    jarId,
    lotId,
    massG: amount,
  }))
  const [last] = sugars.slice(-1)
  const isMistyped = plan.mishaps.includes('sugarMistyped') && last?.kind === 'sugar'
  const written = isMistyped
    ? [...sugars.slice(0, -1), { ...last, massG: last.massG / 10 }]
    : sugars
  const moveIds = await hand.record(...charges(story, atMs), ...written)
  if (plan.mishaps.includes('fruitLeftOver'))
    await hand.record({
      kind: 'discard',
      at: instant(atMs + minutes(50)),
      from: { lotId: lotOf(story, plan.kind.ingredients[0]) },
      note: 'The rest went into a cake.',
    })
  const mistypedId = moveIds.at(-1)
  if (isMistyped && mistypedId)
    diary.at(atMs + 12 * msPerHour, () =>
      hand.amend(mistypedId, { ...last, note: 'A nought was missing.' }),
    )
}

async function pourSpirit(story: BatchStory, dose: Dose, atMs: number): Promise<void> {
  const { batchId, fruitJarId: jarId, hand, pantry } = story
  const at = instant(atMs)
  const portions = await pantry.take('spirit', dose.strongMl, atMs)
  await hand.record(
    ...portions.map(({ lotId, amount }): Move => ({
      kind: 'pourSpirit',
      at,
      batchId,
      jarId,
      lotId,
      volumeMl: amount,
    })),
    { kind: 'pourWater', at, batchId, jarId, volumeMl: dose.waterMl },
  )
}

/** The reduced spirit before fruit comes to it: the one time an alcoholometer is right. */
async function readFirst(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitJarId: jarId, hand, noise, plan } = story
  if (plan.isSparse) return
  const contents = await hand.look(batchId, jarId, atMs)
  const reading = readAlcoholometer(contents, noise)
  await hand.record({ kind: 'read', at: instant(atMs), batchId, jarId, reading })
}

/** Turning the jar, looking in, and a sample on the way. */
function keepAnEye(story: BatchStory, startMs: number): void {
  const { plan, diary, noise } = story
  if (plan.isSparse) return
  const { steepDays } = plan.kind
  if (steepDays >= coolStandDays) diary.at(startMs + msPerHour, (ms) => standCool(story, ms))
  for (let day = 3; day < Math.min(steepDays - 2, 40); day += Math.round(noise.between(4, 12)))
    diary.at(startMs + day * msPerDay + noise.between(0, 4) * msPerHour, (ms) => stir(story, ms))
  for (const day of [...earlyDays.filter((early) => early < 0.4 * steepDays), 0.6 * steepDays])
    diary.at(startMs + Math.round(day) * msPerDay, (ms) => sample(story, ms))
  if (plan.mishaps.includes('crushUndone'))
    diary.at(startMs + 7 * msPerDay, (ms) => crushTheWrongJar(story, ms))
}

/** While strength still falls, a sample tells how fast this fruit is. */
const earlyDays = [2, 6]

/** What steeps for long goes down to the cool end of the cellar. */
const coolStandDays = 40

async function standCool({ batchId, fruitJarId: jarId, hand, isOver }: BatchStory, atMs: number) {
  if (isOver) return
  const kept = { temperatureC: 16, turned: 'weekly' } as const
  await hand.record({ kind: 'keep', at: instant(atMs), batchId, jarId, ...kept })
}

async function stir({ batchId, fruitJarId: jarId, hand, isOver }: BatchStory, atMs: number) {
  if (!isOver) await hand.record({ kind: 'stir', at: instant(atMs), batchId, jarId })
}

async function sample(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitJarId: jarId, hand, noise, isOver } = story
  if (isOver) return
  const contents = await hand.look(batchId, jarId, atMs)
  const reading = readTwoInstruments(contents, noise)
  await hand.record({ kind: 'read', at: instant(atMs), batchId, jarId, reading })
}

async function crushTheWrongJar(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitJarId: jarId, hand } = story
  await hand.record({ kind: 'crush', at: instant(atMs), batchId, jarId })
  await hand.undo(batchId)
  await hand.record({
    kind: 'remark',
    at: instant(atMs + minutes(4)),
    batchId,
    note: 'Crushed the jar beside this one, not this. Taken back.',
  })
}

async function spoil(story: BatchStory, atMs: number): Promise<void> {
  const { batchId, fruitJarId: jarId, hand } = story
  story.isOver = true
  await hand.record(
    {
      kind: 'remark',
      at: instant(atMs),
      batchId,
      note: 'Fruit stood above the liquid through a week of heat: grey fur on top. All of it out.',
    },
    { kind: 'discard', at: instant(atMs + minutes(10)), from: { jarId, part: 'all' } },
  )
}
