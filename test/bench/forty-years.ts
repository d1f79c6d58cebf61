/**
 * A book of forty years: how long it takes to write and to open, and to show its shelf and its
 * batches, beside reading the same rows raw. `npm run bench -- forty-years [FILE]` keeps the book at FILE, and takes
 * the one that is there already.
 */
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import { createService } from '../../main/service/create-service.ts'
import type { Service } from '../../main/service/service.ts'
import { fillCellar, fortyYears, type Size } from './forty-year-cellar/fill.ts'
import { measureInBrowser } from './forty-year-cellar/in-the-browser.ts'

const now = new Date('2026-11-25T18:00:00Z')

export async function run(asked: readonly string[] = []): Promise<void> {
  const [file, years] = asked
  const size = years === undefined ? fortyYears : { ...fortyYears, years: Number(years) }
  const folder = mkdtempSync(join(tmpdir(), 'ratafia-forty-years-'))
  try {
    await measure(file ?? join(folder, 'cellar.ratafia'), size)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

async function measure(file: string, size: Size): Promise<void> {
  if (!existsSync(file)) await build(file, size)
  const opened = await timed(() => serviceOver(file))
  const service = opened.value
  const raw = readRaw(file)
  line('moves, bottle lots, bottles filled', `${raw.moves}, ${raw.lots}, ${raw.bottles}`)
  line('raw read of all moves, parsed', `${raw.movesMs.toFixed(0)} ms`)
  line('raw read of all bottle lots', `${raw.lotsMs.toFixed(1)} ms`)
  line('opening the book', told(opened.ms, raw.movesMs, 'the moves'))
  const ask = async <C extends Channel>(
    channel: C,
    request: Request<C>,
    rawMs: number,
    of: string,
  ) => {
    const first = await timed(() => answered(service, channel, request))
    const later = await repeated(() => answered(service, channel, request))
    const name = `${channel} ${JSON.stringify(request)}`
    line(name, `first ${first.ms.toFixed(0)} ms, then ${told(p95(later), rawMs, of)} (p95)`)
  }
  await ask('shelf.lots', { withGone: false }, raw.lotsMs, 'the lots')
  await ask('shelf.lots', { withGone: true }, raw.lotsMs, 'the lots')
  await ask('shelf.stock', { pastMonths: 120, forecastMonths: 36 }, raw.lotsMs, 'the lots')
  await ask('bottles.list', {}, raw.lotsMs, 'the lots')
  await ask('batches.list', {}, raw.movesMs, 'the moves')
  await ask('today.list', {}, raw.movesMs, 'the moves')
  // One with fruit in its jars, and the oldest.
  const batches = await answered(service, 'batches.list', {})
  const steeping = batches.find(({ stage }) => stage === 'steeping')
  for (const summary of [steeping, batches[0]])
    if (summary) {
      const { id: batchId } = summary.batch
      await ask('batches.page', { batchId }, raw.movesMs, 'the moves')
      await ask('batches.curve', { batchId, points: 400 }, raw.movesMs, 'the moves')
      await ask('batches.forecast', { batchId }, raw.movesMs, 'the moves')
    }
  await ask('season.calendar', {}, raw.movesMs, 'the moves')
  await ask('season.compare', {}, raw.movesMs, 'the moves')
  await ask('cellar.costs', {}, raw.movesMs, 'the moves')
  const page = { from: 0, count: 100 }
  await ask('moves.list', { ...page, filter: {} }, raw.movesMs, 'the moves')
  await ask('moves.list', { ...page, filter: { text: 'damson' } }, raw.movesMs, 'the moves')
  await askAmending(service)
  const lot = raw.fullLotId
  await ask('shelf.page', { bottleLotId: lot }, raw.movesMs, 'the moves')
  await ask('lineage.of', { bottleLotId: lot }, raw.movesMs, 'the moves')
  const drawn = await repeated((nth) =>
    answered(service, 'moves.record', {
      key: `bench-${Date.now()}-${nth}`,
      moves: [{ kind: 'drawBottle', at: now.toISOString(), bottleLotId: lot, count: 1 }],
    }),
  )
  line('moves.record, one bottle drawn', `${p95(drawn).toFixed(1)} ms (p95)`)
  const after = await timed(() => answered(service, 'shelf.lots', { withGone: false }))
  line('shelf.lots right after it', told(after.ms, raw.lotsMs, 'the lots'))
  const undo = await timed(() =>
    answered(service, 'moves.undo', { key: `bench-undo-${Date.now()}` }),
  )
  line('moves.undo, one of them taken back', `${undo.ms.toFixed(1)} ms`)
  const today = await timed(() => answered(service, 'today.list', {}))
  line('today.list right after it', told(today.ms, raw.movesMs, 'the moves'))
  line('memory of the process', `${(process.memoryUsage.rss() / 1e6).toFixed(0)} MB`)
  service.close()
  await measurePages(file)
}

async function measurePages(file: string): Promise<void> {
  const seen = await measureInBrowser(file)
  line('from the start of the program to its link', `${seen.linkMs.toFixed(0)} ms`)
  line('from the start of the program to Today in the browser', `${seen.todayMs.toFixed(0)} ms`)
  line(
    'from a press until the next screen is there, whole',
    `${p95(seen.screensMs).toFixed(0)} ms (p95)`,
  )
  const { length } = seen.interactionsMs
  line(
    `${length} presses and keys, until painted`,
    `${p95(seen.interactionsMs).toFixed(0)} ms (p95)`,
  )
  line('memory of the page', `${(seen.heapBytes / 1e6).toFixed(0)} MB of heap`)
}

/** What a tenth less water would come to, in a recent move and in the oldest of them. */
async function askAmending(service: Service): Promise<void> {
  const filter = { kind: 'pourWater' as const }
  const { total } = await answered(service, 'moves.list', { filter, from: 0, count: 1 })
  for (const [name, from] of [
    ['recent', 0],
    ['oldest', total - 1],
  ] as const) {
    const { rows } = await answered(service, 'moves.list', { filter, from, count: 1 })
    const recorded = rows[0]?.recorded
    if (recorded?.move.kind !== 'pourWater') continue
    const move = { ...recorded.move, volumeMl: 0.9 * recorded.move.volumeMl }
    const seen = await timed(() =>
      answered(service, 'moves.previewAmend', { moveId: recorded.id, move }),
    )
    line(`moves.previewAmend, the ${name} water poured`, `${seen.ms.toFixed(0)} ms`)
  }
}

async function build(file: string, size: Size): Promise<void> {
  const service = await serviceOver(file)
  const start = performance.now()
  const seconds = () => ((performance.now() - start) / 1000).toFixed(0)
  const moves = await fillCellar(service.dispatch, now, size, (year, written) =>
    console.log(`  ${year}: ${written} moves so far, ${seconds()} s`),
  )
  line('building the book', `${seconds()} s for ${moves} moves`)
  service.close()
}

async function serviceOver(file: string): Promise<Service> {
  let serial = 0
  return createService({
    ownFile: file,
    demoFile: `${file}.demo`,
    startWithDemo: false,
    host: 'browser',
    version: '0.0.0',
    now: () => now,
    newId: () => `${Date.now().toString(36)}-${(serial += 1).toString(36)}`,
    fillDemo: async () => undefined,
  })
}

function readRaw(file: string) {
  const book = new Database(file, { readonly: true })
  const read = (sql: string) => {
    const start = performance.now()
    const rows = book.prepare(sql).raw().all() as unknown[][]
    return { rows, ms: performance.now() - start }
  }
  const start = performance.now()
  const moves = read('SELECT seq, id, version, payload FROM move').rows
  for (const [, , , payload] of moves) JSON.parse(payload as string)
  const movesMs = performance.now() - start
  read('SELECT * FROM bottle_lot')
  const lots = read('SELECT * FROM bottle_lot JOIN bottle_place ON bottle_lot_id = id')
  const [[count, bottles]] = read('SELECT count(*), sum(filled_count) FROM bottle_lot').rows as [
    [number, number],
  ]
  const [[fullLotId]] = read('SELECT id FROM bottle_lot ORDER BY count DESC, id LIMIT 1').rows as [
    [string],
  ]
  book.close()
  return { moves: moves.length, movesMs, lots: count, bottles, lotsMs: lots.ms, fullLotId }
}

async function answered<C extends Channel>(
  service: Service,
  channel: C,
  request: Request<C>,
): Promise<Answer<C>> {
  const reply = await service.dispatch(channel, request)
  if (!reply.ok) throw new Error(`${channel}: ${reply.error.message}`)
  return reply.value as Answer<C>
}

const repeats = 20

/** Milliseconds of each of some askings one after another. */
async function repeated(act: (nth: number) => Promise<unknown>): Promise<number[]> {
  const times: number[] = []
  for (let nth = 0; nth < repeats; nth += 1) times.push((await timed(() => act(nth))).ms)
  return times
}

/** Nineteen in twenty take no longer. */
const p95 = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[Math.ceil(0.95 * times.length) - 1] ?? Number.NaN

async function timed<T>(act: () => Promise<T>): Promise<{ ms: number; value: T }> {
  const start = performance.now()
  const value = await act()
  return { ms: performance.now() - start, value }
}

const told = (ms: number, rawMs: number, of: string) =>
  `${ms.toFixed(0)} ms, ${(ms / rawMs).toFixed(1)} times a raw read of ${of}`

const line = (name: string, value: string): void => console.log(`${name.padEnd(64)} ${value}`)
