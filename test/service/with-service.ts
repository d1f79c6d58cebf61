/** A service over a book in a folder of its own, with a clock that stands still unless moved. */
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import type { ErrorReply } from '../../shared/schemas/errors.ts'
import { createService } from '../../main/service/create-service.ts'
import type { Service, ServiceOptions } from '../../main/service/service.ts'

export interface Trial {
  readonly service: Service
  readonly options: ServiceOptions
  /** The answer; throws when the service refuses. */
  ask: <C extends Channel>(channel: C, request: Request<C>) => Promise<Answer<C>>
  /** The refusal; throws when the service answers. */
  refusal: <C extends Channel>(channel: C, request: Request<C>) => Promise<ErrorReply>
  setNow: (instant: string) => void
}

export async function trial(change: Partial<ServiceOptions> = {}): Promise<Trial> {
  const folder = mkdtempSync(join(tmpdir(), 'service-'))
  let now = new Date('2026-11-20T18:00:00Z')
  let serial = 0
  const options: ServiceOptions = {
    ownFile: join(folder, 'cellar.ratafia'),
    demoFile: join(folder, 'demo.ratafia'),
    startWithDemo: false,
    host: 'browser',
    version: '0.0.0',
    now: () => now,
    newId: () => `id-${(serial += 1)}`,
    fillDemo: async (dispatch) => {
      const jars = [
        { id: 'demo-jar', name: 'Demo jar', shape: 'jar', capacityMl: 4000, isRetired: false },
      ]
      await dispatch('jars.add', { jars })
    },
    ...change,
  }
  const service = await createService(options)
  return {
    service,
    options,
    ask: async (channel, request) => {
      const reply = await service.dispatch(channel, request)
      if (!reply.ok) throw new Error(`${channel}: ${reply.error.code}: ${reply.error.message}`)
      return reply.value as Answer<typeof channel>
    },
    refusal: async (channel, request) => {
      const reply = await service.dispatch(channel, request)
      if (reply.ok) throw new Error(`${channel} was answered`)
      return reply.error
    },
    setNow: (instant) => {
      now = new Date(instant)
    },
  }
}

/** Two jars, a demijohn, a batch of damsons, and a pantry for it. */
export async function withPantry({ ask }: Trial): Promise<void> {
  await ask('jars.add', {
    jars: [
      { id: 'north', name: 'North jar', shape: 'jar', capacityMl: 4000, isRetired: false },
      { id: 'south', name: 'South jar', shape: 'jar', capacityMl: 4000, isRetired: false },
      { id: 'demijohn', name: 'Demijohn', shape: 'demijohn', capacityMl: 5000, isRetired: false },
    ],
  })
  await ask('batches.open', {
    id: 'damson',
    name: 'Damson',
    colour: '#4a2545',
    note: '',
    openedAt: '2026-09-01T08:00:00Z',
  })
  await ask('moves.record', {
    key: 'pantry',
    moves: [
      {
        at: '2026-09-01T08:00:00Z',
        kind: 'buy',
        lotId: 'damsons',
        goods: { kind: 'fruit', fruitId: 'damson' },
        massG: 3000,
        priceMinor: 1200,
      },
      {
        at: '2026-09-01T08:00:00Z',
        kind: 'buy',
        lotId: 'spirit',
        goods: { kind: 'spirit', strengthPctVol: 96 },
        volumeMl: 2000,
      },
      {
        at: '2026-09-01T08:00:00Z',
        kind: 'buy',
        lotId: 'sugar',
        goods: { kind: 'sweetener', sweetenerId: 'sugar' },
        massG: 2000,
      },
    ],
  })
}
