import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fillDemo } from '../../main/demo/alder-end.ts'
import { createService } from '../../main/service/create-service.ts'
import type { Service } from '../../main/service/service.ts'
import { describeSolution, fruitOf } from '../../main/engine/index.ts'
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import { sumMatter } from '../../shared/matter.ts'
import { Stage, type BatchPage, type BatchSummary } from '../../shared/schemas/cellar.ts'
import { Move, type MoveKind } from '../../shared/schemas/moves.ts'

interface Demo {
  readonly service: Service
  readonly folder: string
  readonly ask: <C extends Channel>(channel: C, request: Request<C>) => Promise<Answer<C>>
}

async function madeAt(now: Date): Promise<Demo> {
  const folder = mkdtempSync(join(tmpdir(), 'alder-end-'))
  let serial = 0
  const service = await createService({
    ownFile: join(folder, 'cellar.ratafia'),
    demoFile: join(folder, 'demo.ratafia'),
    startWithDemo: true,
    host: 'browser',
    version: '0.0.0',
    now: () => now,
    newId: () => `id-${(serial += 1)}`,
    fillDemo,
  })
  return {
    service,
    folder,
    ask: async (channel, request) => {
      const reply = await service.dispatch(channel, request)
      if (!reply.ok) throw new Error(`${channel}: ${reply.error.code}: ${reply.error.message}`)
      return reply.value as Answer<typeof channel>
    },
  }
}

const leave = ({ service, folder }: Demo) => {
  service.close()
  rmSync(folder, { recursive: true })
}

const pagesOf = async ({ ask }: Demo): Promise<BatchPage[]> => {
  const pages: BatchPage[] = []
  for (const { batch } of await ask('batches.list', {}))
    pages.push(await ask('batches.page', { batchId: batch.id }))
  return pages
}

/** The ledger without what the service chose: ids. */
const written = (pages: readonly BatchPage[]) =>
  pages.map(({ summary, steps }) => ({
    batch: summary.batch,
    moves: steps.map(({ recorded }) => ({ version: recorded.version, move: recorded.move })),
  }))

/** Every kind that a batch's ledger can show but `crush`, which the demo takes back. */
const batchMoves = Move.options
  .map(({ shape }) => shape.kind.value)
  .filter((kind) => kind !== 'buy' && kind !== 'crush')
  .sort()

const now = new Date('2026-11-25T18:00:00Z')

describe('fillDemo', () => {
  let demo: Demo
  let batches: BatchSummary[]
  let pages: BatchPage[]
  beforeAll(async () => {
    demo = await madeAt(now)
    batches = await demo.ask('batches.list', {})
    pages = await pagesOf(demo)
  }, 120_000)
  afterAll(() => leave(demo))

  it('tells forty batches of fifteen kinds and more over six seasons', async () => {
    expect(await demo.ask('cellar.status', {})).toMatchObject({ isDemo: true, isEmpty: false })
    expect(batches.length).toBeGreaterThanOrEqual(40)
    expect(new Set(batches.flatMap(({ fruitIds }) => fruitIds)).size).toBeGreaterThanOrEqual(15)
    const years = new Set(batches.map(({ batch }) => batch.openedAt.slice(0, 4)))
    expect([...years].sort()).toEqual(['2021', '2022', '2023', '2024', '2025', '2026'])
  })

  it('has a batch at every stage today', () => {
    const stages = new Set(batches.map(({ stage }) => stage))
    expect([...stages].sort()).toEqual(Stage.options.filter((each) => each !== 'empty').sort())
  })

  it('has no batch of rhubarb', () => {
    expect(batches.flatMap(({ fruitIds }) => fruitIds)).not.toContain('rhubarb')
  })

  it('writes nothing that lies in the future or was refused, and books that add up', async () => {
    for (const { steps } of pages)
      for (const { recorded } of steps)
        expect(Date.parse(recorded.move.at)).toBeLessThanOrEqual(now.getTime())
    const check = await demo.ask('cellar.check', {})
    expect(check).toMatchObject({
      integrity: 'ok',
      lotsDiffering: [],
      bottleLotsDiffering: [],
      refusedMoves: [],
    })
    expect(check.moveCount).toBeGreaterThan(900)
    const { missing, bought } = await demo.ask('cellar.balance', {})
    expect(bought.ethanolG).toBeGreaterThan(20_000)
    for (const grams of Object.values(missing)) expect(Math.abs(grams)).toBeLessThan(1e-6)
  })

  it('never fills a jar past its safe line', async () => {
    const capacityMl = new Map(
      (await demo.ask('jars.list', {})).map(({ jar }) => [jar.id, jar.capacityMl]),
    )
    expect(capacityMl.size).toBe(12)
    const fills = pages.flatMap(({ steps }) => steps.flatMap(({ after }) => after))
    expect(fills.length).toBeGreaterThan(500)
    for (const { jarId, fillMl } of fills)
      expect(fillMl).toBeLessThanOrEqual(0.95 * (capacityMl.get(jarId) ?? 0))
  })

  it('finishes every batch about as strong and as sweet as its fruit is usually made', () => {
    const finished = pages.filter(
      ({ summary }) => summary.bottleLots.length > 0 && summary.fruitIds.length > 0,
    )
    expect(finished.length).toBeGreaterThan(25)
    for (const { summary } of finished) {
      const fruit = fruitOf(summary.fruitIds[0] as string)
      const liquid = summary.bottleLots[0]?.liquid
      const strength = fruit.finishedStrengthPctVol
      const sugar = fruit.finishedSugarGPerL
      expect(liquid?.strengthPctVol).toBeGreaterThan(strength?.low as number)
      expect(liquid?.strengthPctVol).toBeLessThan(strength?.high as number)
      expect(liquid?.sugarGPerL).toBeGreaterThan(0.9 * (sugar?.low as number))
      expect(liquid?.sugarGPerL).toBeLessThan(1.1 * (sugar?.high as number))
    }
  })

  it('steeps the fruit of a batch in one jar, in spirit of 50 to 80 % vol', () => {
    const begun = pages.filter(
      ({ summary }) => summary.fruitIds.length > 0 && summary.stage !== 'layered',
    )
    expect(begun.length).toBeGreaterThan(35)
    for (const { steps } of begun) {
      const firstDraw = steps.findIndex(({ recorded }) => recorded.move.kind === 'drawOff')
      const steeping = firstDraw < 0 ? steps : steps.slice(0, firstDraw)
      const poured = steeping.flatMap(({ recorded: { move }, transfers }) =>
        move.kind === 'pourSpirit' || move.kind === 'pourWater' ? transfers : [],
      )
      const { strengthPctVol } = describeSolution(sumMatter(poured.map(({ matter }) => matter)))
      expect(strengthPctVol).toBeGreaterThan(50)
      expect(strengthPctVol).toBeLessThan(80)
      const jarIds = steeping.flatMap(({ recorded: { move } }) =>
        move.kind === 'charge' ? [move.jarId] : [],
      )
      expect(new Set(jarIds).size).toBe(1)
    }
  })

  it('reads every instrument, noisily, and believes all but what sugar misled', () => {
    const readings = pages.flatMap(({ steps }) =>
      steps.flatMap(({ recorded: { move }, interpretation, after }) =>
        move.kind === 'read' ? [{ move, interpretation, liquid: after[0]?.liquid }] : [],
      ),
    )
    const instruments = new Set(readings.map(({ move }) => move.reading.instrument))
    expect([...instruments].sort()).toEqual([
      'alcoholometer',
      'boilOff',
      'hydrometerAndRefractometer',
      'measuringJug',
    ])
    const doubtful = readings.filter(({ interpretation }) => interpretation?.doubts.length)
    expect(doubtful.length).toBeGreaterThanOrEqual(1)
    for (const { interpretation } of doubtful)
      expect(interpretation?.doubts).toEqual(['instrumentMisledBySugar'])
    const believed = readings.filter(({ interpretation }) => !interpretation?.doubts.length)
    const errors = believed.flatMap(({ interpretation, liquid }) =>
      interpretation?.strengthPctVol === undefined || !liquid
        ? []
        : [interpretation.strengthPctVol - liquid.strengthPctVol],
    )
    expect(errors.length).toBeGreaterThan(100)
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(1.5)
    expect(Math.max(...errors.map(Math.abs))).toBeGreaterThan(0.3)
  })

  it('uses every kind of move, and mends mistakes as real books do', async () => {
    const steps = pages.flatMap((page) => page.steps)
    const kinds = new Set<MoveKind>(steps.map(({ recorded }) => recorded.move.kind))
    expect([...kinds].sort()).toEqual(batchMoves)
    const amended = steps.filter(({ recorded }) => recorded.version > 1)
    expect(amended.length).toBeGreaterThanOrEqual(2)
    const [first] = amended
    const history = await demo.ask('moves.history', { moveId: first?.recorded.id as string })
    expect(history.length).toBeGreaterThanOrEqual(2)
    expect(steps.map(({ recorded }) => recorded.move.note)).toContain(
      'Crushed the jar beside this one, not this. Taken back.',
    )
  })

  it('keeps bottles of every season, and some batches are drunk up', async () => {
    const lots = await demo.ask('bottles.list', {})
    expect(lots.reduce((sum, { count }) => sum + count, 0)).toBeGreaterThan(50)
    const kept = new Set(
      lots.filter(({ count }) => count > 0).map(({ bottledAt }) => bottledAt.slice(0, 4)),
    )
    expect(kept.size).toBeGreaterThanOrEqual(4)
    expect(batches.filter(({ stage }) => stage === 'finished').length).toBeGreaterThanOrEqual(3)
  })

  it('lays bottles on three shelves, some of them carried, broken and counted', async () => {
    const { lots, opened } = await demo.ask('shelf.lots', { withGone: false })
    const places = new Set(lots.flatMap(({ lot }) => lot.places.map(({ shelfId }) => shelfId)))
    expect([...places].sort()).toEqual(['pantry', 'rack', 'sill'])
    expect(new Set(lots.map(({ window }) => window.phase))).toEqual(
      new Set(['young', 'ready', 'fading']),
    )
    expect(opened.length).toBeGreaterThanOrEqual(3)
    for (const { liquid, bottleSizeMl } of opened) {
      expect(liquid?.volumeMl).toBeLessThan(bottleSizeMl)
      expect(liquid?.volumeMl).toBeGreaterThan(100)
    }
    const moves = pages.flatMap(({ steps }) => steps.map(({ recorded }) => recorded.move))
    expect(moves.filter(({ kind }) => kind === 'shelve').length).toBeGreaterThan(10)
    const counted = moves.filter((move) => move.kind === 'correct' && 'shelfId' in move.found)
    expect(counted.length).toBeGreaterThanOrEqual(1)
  })

  it('tastes over the years as its liqueurs ripen and fade', () => {
    const glasses = pages.flatMap(({ steps }) =>
      steps.flatMap(({ recorded: { move } }) => (move.kind === 'taste' ? [move] : [])),
    )
    expect(glasses.length).toBeGreaterThanOrEqual(40)
    expect(glasses.length).toBeLessThanOrEqual(70)
    const heat = (verdict: string) => {
      const scores = glasses.flatMap((glass) =>
        glass.verdict === verdict ? [glass.scores.heat ?? 0] : [],
      )
      expect(scores.length).toBeGreaterThanOrEqual(5)
      return scores.reduce((sum, score) => sum + score, 0) / scores.length
    }
    expect(heat('young')).toBeGreaterThan(heat('ready'))
  })

  it('asks prices of the market and none of the hedge', async () => {
    const lots = await demo.ask('pantry.list', {})
    const priced = lots.filter(({ priceMinor }) => priceMinor !== undefined)
    expect(priced.length).toBeGreaterThan(lots.length / 2)
    const sloes = lots.filter(({ goods }) => goods.kind === 'fruit' && goods.fruitId === 'sloe')
    expect(sloes.length).toBeGreaterThan(0)
    for (const { priceMinor } of sloes) expect(priceMinor).toBeUndefined()
  })

  it('is the same book when it is made again on the same day', async () => {
    const again = await madeAt(now)
    expect(written(await pagesOf(again))).toEqual(written(pages))
    leave(again)
  }, 120_000)

  it.each(['2027-03-15T07:10:00Z', '2027-08-10T21:00:00Z'])(
    'can be made on any other day, such as %s',
    async (day) => {
      const other = await madeAt(new Date(day))
      const stages = new Set((await other.ask('batches.list', {})).map(({ stage }) => stage))
      expect([...stages].sort()).toEqual(Stage.options.filter((each) => each !== 'empty').sort())
      leave(other)
    },
    120_000,
  )
})
