/** The demo's next season: planned, looked over by the independent checker, and run as drafts. */
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import { fillDemo } from '../../main/demo/alder-end.ts'
import { createService } from '../../main/service/create-service.ts'
import { faultsOf } from '../engine/season/checked-plan.ts'

async function demo() {
  const folder = mkdtempSync(join(tmpdir(), 'next-season-'))
  let serial = 0
  const service = await createService({
    ownFile: join(folder, 'own.ratafia'),
    demoFile: join(folder, 'demo.ratafia'),
    startWithDemo: true,
    host: 'browser',
    version: '0.0.0',
    now: () => new Date('2026-11-25T18:00:00Z'),
    newId: () => `id-${(serial += 1)}`,
    fillDemo,
  })
  const ask = async <C extends Channel>(channel: C, request: Request<C>): Promise<Answer<C>> => {
    const reply = await service.dispatch(channel, request)
    if (!reply.ok) throw new Error(`${channel}: ${reply.error.message}`)
    return reply.value as Answer<C>
  }
  return { ask, close: () => service.close() }
}

describe('next season at Alder End', () => {
  it('is planned without a fault, and its drafts keep what it promises', async () => {
    const { ask, close } = await demo()
    const usual = await ask('season.wishes', {})
    // Most bottles of the house hold half a litre, though the last ones filled were small.
    expect(usual.bottleSizeMl).toBe(500)
    const more = ['sour_cherry', 'raspberry', 'damson', 'blackcurrant', 'sloe']
    const wishes = more.map((kindId) => ({
      id: `more-${kindId}`,
      kindId,
      purpose: 'drink' as const,
      priority: 'should' as const,
      atLeastMl: 4000,
      note: '',
    }))
    const request = { jobId: 'job', isExplained: false, timeLimitSeconds: 10 }
    await ask('season.startPlan', { ...request, wishes: { ...usual, wishes } })
    let job = await ask('season.planState', { jobId: 'job' })
    while (job.state === 'running') {
      await new Promise((resolve) => setTimeout(resolve, 50))
      job = await ask('season.planState', { jobId: 'job' })
    }
    const plan = job.plan!
    const fruits = new Map((await ask('fruits.list', {})).map((fruit) => [fruit.id, fruit]))
    const pantry = await ask('pantry.list', {})
    const jars = await ask('jars.list', {})
    const inPantry = (kind: string, of: (lot: (typeof pantry)[number]) => number) =>
      pantry.filter(({ goods }) => goods.kind === kind).reduce((sum, lot) => sum + of(lot), 0)
    const faults = faultsOf(plan, {
      fruitOf: (id) => fruits.get(id)!,
      spiritMl: inPantry('spirit', ({ volumeMl = 0 }) => (volumeMl > 1 ? volumeMl : 0)),
      sweetenerG: (id) =>
        inPantry('sweetener', ({ goods, massG }) =>
          goods.kind === 'sweetener' && goods.sweetenerId === id && massG > 1 ? massG : 0,
        ),
      pantryFruitG: (id) =>
        inPantry('fruit', ({ goods, massG }) =>
          goods.kind === 'fruit' && goods.fruitId === id ? massG : 0,
        ),
      batchIn: (id) => jars.find(({ jar }) => jar.id === id)?.contents?.batchId,
    })
    expect(faults).toEqual([])
    expect(plan.batches.length).toBeGreaterThanOrEqual(8)
    const missed = plan.batches.filter(({ replay }) => !replay.isWithinBand)
    expect(missed.map(({ key, volumeMl, replay }) => ({ key, volumeMl, replay }))).toEqual([])
    for (const { replay, volumeMl, bottleSizeMl } of plan.batches) {
      expect(replay.bottles).toBeGreaterThanOrEqual(Math.floor(volumeMl.low / bottleSizeMl))
      expect(replay.bottles).toBeLessThanOrEqual(Math.floor(volumeMl.high / bottleSizeMl))
    }
    close()
  })
})
