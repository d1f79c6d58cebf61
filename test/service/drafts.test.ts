import { describe, expect, it } from 'vitest'
import type { FollowedStage } from '../../shared/schemas/drafts.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import type { Jar } from '../../shared/schemas/cellar.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

const cellarJars: Jar[] = ['one', 'two', 'three', 'four'].map((id) => ({
  id,
  name: `Jar ${id}`,
  shape: 'jar',
  capacityMl: 5000,
  isRetired: false,
}))

async function begun(t: Trial) {
  await t.ask('jars.add', { jars: cellarJars })
  const usual = { fruitId: 'sour_cherry', massG: 2000, spiritPctVol: 96 }
  return t.ask('drafts.usual', usual)
}

const draftOf = (spec: Awaited<ReturnType<typeof begun>>['spec'], name = 'Cherries') => ({
  id: 'd1',
  name,
  spec,
  pins: ['fruit' as const],
  wishes: { bottles: 6, strengthPctVol: 30 },
  note: '',
})

describe('drafts', () => {
  it('begins as the trade makes it: typical strength and sugar, the fruit at hand', async () => {
    const t = await trial()
    const { spec, wishes } = await begun(t)
    expect(spec.fruits[0]?.massG).toBe(2000)
    expect(wishes).toMatchObject({ strengthPctVol: 32, sugarGPerL: 200 })
    const outcome = await t.ask('drafts.reckon', { spec })
    expect(outcome.finished?.strengthPctVol).toBeCloseTo(32, 1)
    expect(outcome.bottles).toBe(wishes.bottles)
    t.service.close()
  })

  it('are kept, changed and removed', async () => {
    const t = await trial()
    const { spec } = await begun(t)
    await t.ask('drafts.keep', draftOf(spec))
    t.setNow('2026-11-21T18:00:00Z')
    const changed = await t.ask('drafts.keep', draftOf(spec, 'Dark cherries'))
    expect(changed.changedAt > changed.createdAt).toBe(true)
    expect((await t.ask('drafts.list', {})).map(({ draft }) => draft.name)).toEqual([
      'Dark cherries',
    ])
    await t.ask('drafts.remove', { draftId: 'd1' })
    expect((await t.refusal('drafts.page', { draftId: 'd1' })).code).toBe('notFound')
    expect((await t.refusal('drafts.remove', { draftId: 'd1' })).code).toBe('notFound')
    t.service.close()
  })

  it('refuse a fruit that nobody knows, and numbers that are none', async () => {
    const t = await trial()
    const { spec } = await begun(t)
    const strange = { ...spec, fruits: [{ ...spec.fruits[0]!, fruitId: 'moonberry' }] }
    expect((await t.refusal('drafts.reckon', { spec: strange })).code).toBe('notFound')
    const farOff = { ...spec, startAt: '9999-12-31T23:59:59Z' }
    expect((await t.refusal('drafts.reckon', { spec: farOff })).code).toBe('badInput')
    const negative = { ...spec, finishSugarG: -5 }
    expect((await t.refusal('drafts.reckon', { spec: negative })).code).toBe('badInput')
    t.service.close()
  })

  it('print on one page, named for the draft', async () => {
    const t = await trial()
    const { spec } = await begun(t)
    const asked = { name: 'Wiśnie / 2026', note: '', spec, size: 'A4' } as const
    const { fileName, pdfBase64 } = await t.ask('drafts.paper', asked)
    expect(fileName).toBe('Wiśnie  2026 2026-11-20.pdf')
    expect(Buffer.from(pdfBase64, 'base64').subarray(0, 5).toString()).toBe('%PDF-')
    t.service.close()
  })
})

describe('recipes', () => {
  it('keep every version, and the newest is listed', async () => {
    const t = await trial()
    const { spec } = await begun(t)
    const recipe = { id: 'r1', name: 'House cherry', note: '', spec }
    expect((await t.ask('recipes.keep', recipe)).version).toBe(1)
    expect((await t.ask('recipes.keep', { ...recipe, note: 'the good one' })).version).toBe(1)
    const sweeter = { ...spec, finishSugarG: spec.finishSugarG + 50 }
    expect((await t.ask('recipes.keep', { ...recipe, spec: sweeter })).version).toBe(2)
    const versions = await t.ask('recipes.versions', { recipeId: 'r1' })
    expect(versions.map(({ version }) => version)).toEqual([2, 1])
    expect(versions[1]?.spec).toEqual(spec)
    expect((await t.ask('recipes.list', {})).map(({ version }) => version)).toEqual([2])
    await t.ask('recipes.remove', { recipeId: 'r1' })
    expect(await t.ask('recipes.list', {})).toEqual([])
    t.service.close()
  })

  it('scale by fruit, jar and bottles', async () => {
    const t = await trial()
    const { spec } = await begun(t)
    const scale = { by: 'bottles', count: 20 } as const
    const scaled = await t.ask('recipes.scale', { spec, scale })
    expect(scaled.outcome.bottles).toBe(20)
    t.service.close()
  })
})

describe('a draft started as a batch', () => {
  it('is followed through deviations to its bottles, and kept as a recipe', async () => {
    const t = await trial()
    t.setNow('2026-06-30T08:00:00Z')
    const { spec: usual } = await begun(t)
    const vessel = (index: number) => {
      const { id, shape, capacityMl } = cellarJars[index]!
      return { jarId: id, shape, capacityMl }
    }
    const vessels = { steep: [vessel(0)], extracts: [vessel(1), vessel(2)], married: vessel(3) }
    const spec = { ...usual, vessels }
    const start = { batchId: 'b1', name: 'Cherry 2026', colour: '#7a1f2b', spec }
    await t.ask('drafts.start', start)
    expect((await t.refusal('drafts.start', start)).code).toBe('alreadyThere')
    expect((await t.ask('batches.page', { batchId: 'b1' })).summary.stage).toBe('empty')

    const atFirst = await t.ask('plans.follow', { batchId: 'b1' })
    const plan = atFirst?.plan
    const buys = plan?.moves.filter(({ kind }) => kind === 'buy') ?? []
    await t.ask('moves.record', { key: 'buy', moves: buys })
    const today = await t.ask('today.list', {})
    expect(today.batches[0]?.next).toMatchObject({ kind: 'charge', due: spec.startAt })

    let logged = 0
    const foretold: number[] = []
    for (;;) {
      const [next] = await t.ask('plans.next', {})
      if (!next) break
      const move = deviating(next.next)
      t.setNow(move.at)
      const last = move.kind === 'bottle' ? await withCount(t, move) : move
      await t.ask('moves.record', { key: `k${logged}`, moves: [last] })
      logged += 1
      const so = await t.ask('plans.follow', { batchId: 'b1' })
      if (move.kind === 'pourSpirit') foretold.push(so?.expected?.strengthPctVol ?? 0)
    }
    expect(logged).toBeGreaterThan(8)
    // Said on the day the spirit was short, months before the bottles.
    expect(foretold[0]).toBeLessThan(31)

    const { summary } = await t.ask('batches.page', { batchId: 'b1' })
    expect(summary.stage).toBe('resting')
    const followed = await t.ask('plans.follow', { batchId: 'b1' })
    expect(followed?.next).toBeUndefined()
    // What the measured jugs taught of the fruit does not reach back into the plan.
    const asPlanned = (stages: FollowedStage[] | undefined) => stages?.map((stage) => stage.planned)
    expect(asPlanned(followed?.stages)).toEqual(asPlanned(atFirst?.stages))
    const { learned } = await t.ask('fruits.page', { fruitId: 'sour_cherry' })
    expect(learned?.drainedLPerKg).toBeDefined()
    // The plan is done: from here the usual intervals speak again.
    expect(summary.next?.kind).toBe('taste')
    const bottled = followed?.stages.find(({ key }) => key === 'bottled')
    expect(bottled?.real?.liquid?.strengthPctVol).toBeCloseTo(
      summary.bottleLots[0]?.liquid?.strengthPctVol ?? 0,
      6,
    )
    expect(bottled?.real?.liquid?.strengthPctVol).toBeLessThan(
      bottled?.planned?.liquid?.strengthPctVol ?? 0,
    )

    const kept = { id: 'r1', name: 'As it was', note: '', batchId: 'b1' }
    const recipe = await t.ask('recipes.keepBatch', kept)
    expect(recipe.fromBatchId).toBe('b1')
    const again = await t.ask('drafts.reckon', { spec: recipe.spec })
    const real = bottled?.real?.liquid
    expect(again.finished?.strengthPctVol).toBeCloseTo(real?.strengthPctVol ?? 0, 0)
    const stages = await t.ask('recipes.compare', { spec: recipe.spec, batchId: 'b1' })
    expect(stages.every(({ planned, real: was }) => planned && was)).toBe(true)
    t.service.close()
  })

  it('has no plan where it was opened by hand', async () => {
    const t = await trial()
    const openedAt = '2026-09-01T08:00:00Z'
    await t.ask('batches.open', { id: 'b', name: 'B', colour: '#4a2545', note: '', openedAt })
    expect(await t.ask('plans.follow', { batchId: 'b' })).toBeNull()
    expect(await t.ask('plans.next', {})).toEqual([])
    const kept = { id: 'r', name: 'None', note: '', batchId: 'b' }
    expect((await t.refusal('recipes.keepBatch', kept)).code).toBe('noFruit')
    t.service.close()
  })

  it('is kept as no recipe where its pours come to more than one can say', async () => {
    const t = await trial()
    await withPantry(t)
    const inJar = { batchId: 'damson', jarId: 'north' }
    const at = '2026-09-02T08:00:00Z'
    const flood: Move = { at, kind: 'pourWater', ...inJar, volumeMl: 6_000_000 }
    await t.ask('moves.record', {
      key: 'flood',
      moves: [
        { at, kind: 'charge', ...inJar, lotId: 'damsons', massG: 1000, cut: 'whole' },
        { at, kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 1000 },
        flood,
        flood,
      ],
    })
    const kept = { id: 'r', name: 'Flood', note: '', batchId: 'damson' }
    expect(await t.refusal('recipes.keepBatch', kept)).toMatchObject({
      code: 'outOfRange',
      details: { quantity: 'volume', unit: 'mL', high: 10_000_000 },
    })
    expect(await t.ask('recipes.list', {})).toEqual([])
    t.service.close()
  })
})

/** Less spirit than planned, two days late; what is drawn off is measured, and less of it. */
function deviating(move: Move): Move {
  if (move.kind === 'drawOff') return { ...move, volumeMl: 800 }
  if (move.kind !== 'pourSpirit') return move
  const at = new Date(Date.parse(move.at) + 2 * 86_400_000).toISOString()
  return { ...move, at, volumeMl: 0.85 * move.volumeMl }
}

async function withCount(t: Trial, move: Extract<Move, { kind: 'bottle' }>): Promise<Move> {
  const followed = await t.ask('plans.follow', { batchId: 'b1' })
  const count = followed?.stages.find(({ key }) => key === 'bottled')?.expected?.bottles ?? 1
  return { ...move, count }
}
