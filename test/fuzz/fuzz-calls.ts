/**
 * Calls every channel with requests drawn from its published schema, sound and broken, and looks
 * after each: did it come to a reply as data, and did a call that was refused leave the book alone?
 * After each round the ledger must add up, and a program started anew must know the same.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import fc from 'fast-check'
import type { Channel } from '../../shared/channels.ts'
import type { ErrorCode } from '../../shared/schemas/errors.ts'
import { SafekeepingJob } from '../../shared/schemas/safekeeping.ts'
import { answerCall } from '../../main/hosts/answer-call.ts'
import { contract } from '../../main/hosts/browser/contract.ts'
import { openServer } from '../../main/hosts/browser/open-server.ts'
import { createService } from '../../main/service/create-service.ts'
import type { Service, ServiceOptions } from '../../main/service/service.ts'
import { whereaboutsFile } from '../../main/cellar/whereabouts.ts'
import { beginCellar, type Asks } from './begun-cellar.ts'
import { channelFor } from './channel-weights.ts'
import { noCounts, type Fault, type FuzzCounts } from './fuzz-counts.ts'
import { knownValues } from './known-values.ts'
import { mutated, mutations } from './mutation.ts'
import { post, type Sent } from './over-http.ts'
import { mustAddUp, stateOf } from './sound-book.ts'
import { validRequest, type JsonSchema } from './valid-request.ts'
import { watchBooks } from './watched-books.ts'

export interface FuzzOptions {
  readonly calls: number
  readonly seed: number
  readonly callsPerBook?: number
  readonly onCall?: (counts: FuzzCounts) => void
}

interface Round {
  readonly seed: number
  readonly calls: number
  readonly counts: FuzzCounts
  readonly onCall: (counts: FuzzCounts) => void
}

const published = contract().channels as Record<string, { effect: string; request: JsonSchema }>
export const fuzzedChannels = Object.keys(published) as Channel[]

export async function fuzzCalls(options: FuzzOptions): Promise<FuzzCounts> {
  const { calls, seed, callsPerBook = 2000, onCall = () => {} } = options
  const counts = noCounts()
  const said = catchingErrors()
  try {
    while (counts.calls < calls) {
      const left = Math.min(callsPerBook, calls - counts.calls)
      await oneBook({ seed: seed + counts.rounds, calls: left, counts, onCall }, said)
      counts.rounds += 1
    }
  } finally {
    said.end()
  }
  return counts
}

async function oneBook(round: Round, said: SaidErrors): Promise<void> {
  const { counts, seed } = round
  const folder = mkdtempSync(join(tmpdir(), 'ratafia-fuzz-'))
  const clock = { ms: Date.UTC(2026, 10, 20, 18) }
  const options = optionsIn(folder, () => new Date(clock.ms))
  let service = await createService(options)
  const token = 'T'.repeat(43)
  const server = await openServer({ service, rendererFolder: folder, token, port: 0 })
  const known = knownValues()
  const fault = (what: Fault['what'], channel: string, call: number, told: string) =>
    void counts.faults.push({ what, channel, seed, call, told: told.slice(0, 2000) })

  const ask = asking(service)
  await beginCellar(async (channel, request) => {
    const value = await ask(channel, request)
    known.learn(areaOf(channel), value)
    known.learn(areaOf(channel), request)
    return value
  })
  const draw = drawing({ known, folder, now: () => new Date(clock.ms) })
  const books = watchBooks([options.ownFile, options.demoFile], [whereaboutsFile(options.ownFile)])
  const rowsBefore = await rowsIn(ask)

  for (let index = 0; index < round.calls; index += 1) {
    clock.ms += 1_800_000
    const { channel, request, isMutated, isOverHttp } = draw(seed, index)
    const before = books.mark()
    const began = performance.now()
    const sent: Sent = isOverHttp
      ? await post({ origin: server.origin, token, channel, request })
      : { status: 200, reply: await answerCall(service, channel, copied(request)) }
    const count = countOf(counts, channel)
    count.slowestMs = Math.max(count.slowestMs, performance.now() - began)
    const hasWritten = books.mark() !== before

    counts.calls += 1
    count.calls += 1
    counts.mutated += isMutated ? 1 : 0
    counts.overHttp += isOverHttp ? 1 : 0
    const { status, reply } = sent
    const asked = () => `${textOf(request)}\n${said.take()}`
    if (status >= 500 || reply === undefined)
      fault('status', channel, index, `${status} ${asked()}`)
    else if (reply.ok) {
      counts.accepted += 1
      count.accepted += 1
      known.learn(areaOf(channel), reply.value)
      known.learn(areaOf(channel), request)
    } else {
      counts.refused += 1
      if (reply.error.code === 'badInput') counts.refusedByContract += 1
      const isBug = reply.error.code === 'internal' || blamesNobody(channel, reply.error.code)
      if (isBug) fault('internal', channel, index, `${reply.error.message} ${asked()}`)
    }
    const mayWrite = reply?.ok && published[channel]?.effect === 'write'
    if (hasWritten && !mayWrite) fault('wrote', channel, index, asked())
    for (const told of said.crashes()) fault('crash', channel, index, `${told}\n${asked()}`)
    if (index % 250 === 249) await mustAddUp(ask, (told) => fault('unsound', channel, index, told))
    if (reply?.ok && (await whenDone(ask, reply.value)) === 'internal')
      fault('internal', channel, index, asked())
    round.onCall(counts)
  }

  await ask('cellar.openOwn', {})
  await mustAddUp(ask, (told) => fault('unsound', 'cellar.check', round.calls, told))
  counts.rows += (await rowsIn(ask)) - rowsBefore
  const inMemory = await stateOf(ask)
  books.close()
  await server.close()
  service.close()
  service = await createService(options)
  counts.restarts += 1
  const onDisk = await stateOf(asking(service))
  for (const [what, told] of Object.entries(inMemory))
    if (onDisk[what] !== told)
      fault('lost', what, round.calls, `before: ${told}\nafter a restart: ${onDisk[what]}`)
  service.close()
  counts.books += 1
  rmSync(folder, { recursive: true, force: true })
}

function optionsIn(folder: string, now: () => Date): ServiceOptions {
  let serial = 0
  return {
    ownFile: join(folder, 'cellar.ratafia'),
    demoFile: join(folder, 'demo.ratafia'),
    startWithDemo: false,
    host: 'browser',
    version: '0.0.0',
    now,
    newId: () => `id-${(serial += 1)}`,
    timeZone: 'Europe/Warsaw',
    fillDemo: async (dispatch) => {
      const jar = { id: 'jar1', name: 'Demo', shape: 'jar', capacityMl: 4000, isRetired: false }
      await dispatch('jars.add', { jars: [jar] })
    },
  }
}

const asking =
  (service: Service): Asks =>
  async (channel, request) => {
    const reply = await service.dispatch(channel, request)
    if (!reply.ok) throw new Error(`${channel}: ${reply.error.code}: ${reply.error.message}`)
    return reply.value
  }

/** Waits for what a call has begun, so that what it writes is not laid at the door of the next; how it failed. */
async function whenDone(ask: Asks, begun: unknown): Promise<string | undefined> {
  const parsed = SafekeepingJob.safeParse(begun)
  if (!parsed.success) return undefined
  let job = parsed.data
  while (job.state === 'running') {
    await pause(10)
    job = SafekeepingJob.parse(await ask('backups.job', { jobId: job.jobId }))
  }
  return job.failure
}

const areaOf = (channel: string) => channel.split('.')[0] ?? channel

const rowsIn = async (ask: Asks) =>
  ((await ask('cellar.check', {})) as { moveCount: number }).moveCount

function drawing(around: Parameters<typeof validRequest>[2]) {
  const requests = new Map<string, fc.Arbitrary<unknown>>()
  const requestOf = (channel: string) => {
    const found =
      requests.get(channel) ??
      validRequest(published[channel]?.request ?? {}, areaOf(channel), around)
    requests.set(channel, found)
    return found
  }
  const chances = fc.tuple(fc.nat(0x7fff_ffff), fc.nat(99), fc.nat(99), mutations)
  return (seed: number, index: number) => {
    // The same seed draws the same, as long as the book has come to the same.
    const settings = { seed: (seed * 1_000_003 + index) | 0, numRuns: 1, unbiased: true }
    const [drawn] = fc.sample(chances, settings)
    if (!drawn) throw new Error('nothing was drawn')
    const [which, forMutation, forHttp, changes] = drawn
    const channel = channelFor(fuzzedChannels, which)
    const [sound] = fc.sample(requestOf(channel), settings)
    const isMutated = forMutation < 40
    const request = isMutated ? mutated(sound, changes) : sound
    return { channel, request, isMutated, isOverHttp: forHttp < 10 }
  }
}

/** Their numbers stand in the book: a batch may hold more than a recipe can say. */
const asksOfTheBook = new Set(['recipes.keepBatch'])

/** A number that cannot be, refused where none was asked with, is the program's own. */
const blamesNobody = (channel: string, code: ErrorCode): boolean =>
  !asksOfTheBook.has(channel) &&
  ['outOfRange', 'noSuchMixture', 'ambiguous'].includes(code) &&
  !/"type":"(number|integer)"/.test(JSON.stringify(published[channel]?.request))

/** IPC hands over a copy; what is nested too deep for one is handed over as it is. */
function copied(request: unknown): unknown {
  try {
    return structuredClone(request)
  } catch {
    return request
  }
}

function countOf({ byChannel }: FuzzCounts, channel: string) {
  const count = byChannel.get(channel) ?? { calls: 0, accepted: 0, slowestMs: 0 }
  byChannel.set(channel, count)
  return count
}

function textOf(request: unknown): string {
  try {
    return JSON.stringify(request, (_key, value: unknown) =>
      typeof value === 'string' && value.length > 200 ? `${value.slice(0, 50)}…` : value,
    ).slice(0, 1500)
  } catch (error) {
    return `(no JSON: ${String(error)})`
  }
}

interface SaidErrors {
  /** What was said to the log since the last time. */
  take: () => string
  crashes: () => string[]
  end: () => void
}

/** Errors nobody caught, and what the service says of those it caught last of all. */
function catchingErrors(): SaidErrors {
  const said: string[] = []
  const crashed: string[] = []
  const log = console.error
  console.error = (...words: unknown[]) =>
    void said.push(
      words.map((word) => (word instanceof Error ? word.stack : String(word))).join(' '),
    )
  const crash = (error: unknown) =>
    void crashed.push(error instanceof Error ? (error.stack ?? error.message) : String(error))
  process.on('uncaughtException', crash)
  process.on('unhandledRejection', crash)
  return {
    take: () => said.splice(0).join('\n'),
    crashes: () => crashed.splice(0),
    end: () => {
      console.error = log
      process.off('uncaughtException', crash)
      process.off('unhandledRejection', crash)
    },
  }
}
